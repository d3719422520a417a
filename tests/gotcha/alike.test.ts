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
    expect(right).toBeGreaterThanOrEqual(95);
    expect(wrong).toBeLessThanOrEqual(3);
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

  const offered = (
    one: Partial<Gotcha> & { symptom: string },
    other: Partial<Gotcha> & { symptom: string },
  ) => alikes([newGotcha({ id: "a", noted, ...one }), newGotcha({ id: "b", noted, ...other })]).length === 1;

  test.each([
    ["The inlet valve spring is weak and the valve floats", "The valve floats as the exhaust spring is weak"],
    ["Left cone too tight", "Too tight a cone on the right"],
    ["Front bearing cap cracked", "Cracked cap of the rear bearing"],
    ["The drain plug of the filter bowl is seized", "Filter bowl: drain plug loose"],
    ["Intake flange gasket blocks the oil way", "Oil way blocked by the exhaust flange gasket"],
  ])("not where one says the contrary: %s, %s", (one, other) => {
    expect(offered({ symptom: one }, { symptom: other })).toBe(false);
    // The same sentence with itself is, so that it is the contrary that tells.
    expect(offered({ symptom: one }, { symptom: one })).toBe(true);
  });

  test("not where both begin alike and then say other things", () => {
    const [begun, other] = [
      "Governor spring 44-018 is stretched",
      "Governor spring 44-018 hooks in two holes",
    ];
    expect(offered({ symptom: begun }, { symptom: other })).toBe(false);
    expect(offered({ symptom: "Governor spring 44-018" }, { symptom: begun })).toBe(true);
  });

  test("where both say why, the same reason makes them the same, and another reason does not", () => {
    const stalls = {
      symptom: "Engine stops after ten minutes",
      mechanism: "Vent of the tank cap is blocked",
    };
    const starves = { symptom: "Starved of petrol on long runs", mechanism: "Blocked vent in the tank cap" };
    const gauze = { symptom: "Engine stops after ten minutes", mechanism: "Rust on the filter gauze" };
    expect(offered(stalls, starves)).toBe(true);
    expect(offered(stalls, gauze)).toBe(false);
    expect(offered(stalls, { symptom: stalls.symptom })).toBe(true);
  });

  test("not of an original part and of a reproduction", () => {
    const say = (make: "original" | "reproduction") => ({
      symptom: "Impeller bore is too small",
      appliesTo: [newScope({ item: "Impeller", make })],
    });
    expect(offered(say("original"), say("original"))).toBe(true);
    expect(offered(say("original"), say("reproduction"))).toBe(false);
  });

  test("one's assembly may be another's part", () => {
    const symptom = "Leaks more after it was lapped";
    const on = (assembly: string, item = "") => ({ symptom, appliesTo: [newScope({ assembly, item })] });
    expect(offered(on("Foot valve"), on("Plunger and barrel", "Foot valve"))).toBe(true);
    expect(offered(on("Foot valve"), on("Plunger and barrel", "Cotter"))).toBe(false);
  });
});
