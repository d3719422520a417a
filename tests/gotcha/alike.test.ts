import { describe, expect, test } from "vitest";
import { type Gotcha, newGotcha, newScope } from "#lib/build/index.ts";
import { alikeFrom, alikes } from "#lib/gotcha/index.ts";
import { measureNear, measureReworded } from "./measure.ts";
import { reworded } from "./reworded.ts";

const noted = "2026-01-01T00:00:00.000Z";

/** The book with every gotcha said once, and the second tellings of them. */
function tellings() {
  const first: Gotcha[] = [];
  const second: Gotcha[] = [];
  for (const [assembly, pairs] of Object.entries(reworded)) {
    for (const [index, words] of pairs.entries()) {
      const about = { noted, appliesTo: [newScope({ assembly })] };
      first.push(newGotcha({ id: `${assembly} ${index}`, symptom: words[0], ...about }));
      second.push(newGotcha({ id: `${assembly} ${index} again`, symptom: words[1], ...about }));
    }
  }
  return { first, second };
}

/** Pairs of the same assembly that are different: each gotcha with the three after it in its list. */
function nearPairs(first: readonly Gotcha[]): [string, string][] {
  return first.flatMap((one, at) => {
    const group = Math.floor(at / 10) * 10;
    return [1, 2, 3].map((step): [string, string] => [
      one.id,
      first[group + ((at - group + step) % 10)]?.id ?? "",
    ]);
  });
}

describe("entries that may say the same", () => {
  test("a hundred reworded pairs against three hundred near ones", () => {
    const { first, second } = tellings();
    const again = second.map((written) => ({ written, same: written.id.replace(" again", "") }));
    const { right, first: firstOffered, missed } = measureReworded(first, again);
    const near = nearPairs(first);
    expect(near).toHaveLength(300);
    const wrong = measureNear(first, near).length;
    console.log(
      `offered ${right} of 100 (first ${firstOffered}), wrongly offered ${wrong} of 300, at ${alikeFrom}; missed: ${missed.join("; ")}`,
    );
    expect(right).toBeGreaterThanOrEqual(90);
    expect(wrong).toBeLessThanOrEqual(6);
  });

  test("never those of different assemblies or makers, nor what the restorer has told apart", () => {
    const say = (id: string, given: Partial<Gotcha>) =>
      newGotcha({ id, symptom: "The gasket blocks the oil way", noted, ...given });
    const here = say("a", { appliesTo: [newScope({ assembly: "Water pump", maker: "Ostrey" })] });
    const same = say("b", { appliesTo: [newScope({ assembly: "Circulating pump" })] });
    const elsewhere = say("c", { appliesTo: [newScope({ assembly: "Gearbox" })] });
    const other = say("d", { appliesTo: [newScope({ assembly: "Water pump", maker: "Tolvik" })] });
    expect(alikes([here, same, elsewhere]).map((pair) => pair.ids)).toEqual([["a", "b"]]);
    expect(alikes([here, other])).toEqual([]);
    expect(alikes([{ ...here, notSame: ["b"] }, same])).toEqual([]);
    expect(alikes([here, { ...same, joinedInto: "a" }])).toEqual([]);
  });
});
