import { describe, expect, test } from "vitest";
import { type Gotcha, newGotcha, newScope } from "#lib/build/index.ts";
import { alikes } from "#lib/gotcha/index.ts";
import { random } from "./random.ts";
import { rowsOf } from "./second/openings.ts";
import { nearOf, rewordedOf } from "./second/pairs.ts";
import { readSecondBook } from "./second/read.ts";

/** Pairs by their ids, each the same way round, with how alike they are. */
const told = (pairs: ReturnType<typeof alikes>) =>
  new Map(pairs.map(({ ids, likeness }) => [ids.toSorted().join(" "), likeness]));

/** Every entry with every other: what is written alone is compared with the whole book. */
const allPairs = (gotchas: readonly Gotcha[]) =>
  told(
    gotchas
      .filter(({ gone, joinedInto }) => gone === null && joinedInto === null)
      .flatMap((one) => alikes(gotchas, one)),
  );

/** A book of sentences out of few words, by chance, so that many are alike; some in other assemblies, some joined. */
function bookOf(seed: number, size: number): Gotcha[] {
  const dice = random(seed);
  const words = [
    ...Array.from({ length: dice.pick([12, 40, 200]) }, (_, at) => `word${at}`),
    ...["left", "right", "loose", "seized", "leaks", "upside down", "gudgeon pin", "wrist pin"],
  ];
  const sentence = () => Array.from({ length: dice.whole(0, 9) }, () => dice.pick(words)).join(" ");
  return Array.from({ length: size }, (_, at) =>
    newGotcha({
      id: `g${at}`,
      symptom: sentence(),
      mechanism: dice.chance(0.4) ? sentence() : "",
      noted: "2026-01-01T00:00:00.000Z",
      appliesTo: dice.chance(0.3)
        ? []
        : [newScope({ assembly: dice.pick(["Pump", "Water pump", "Gearbox"]) })],
      joinedInto: dice.chance(0.05) ? "g0" : null,
      notSame: dice.chance(0.1) ? [`g${dice.whole(0, size - 1)}`] : [],
    }),
  );
}

describe("the page of duplicates offers what comparing every pair would", () => {
  test.each([1, 2, 3, 4, 5, 6, 7, 8])("in a book by chance, %i", (seed) => {
    const book = bookOf(seed, 120);
    const [few, all] = [told(alikes(book)), allPairs(book)];
    expect([...few.keys()].sort()).toEqual([...all.keys()].sort());
    for (const [pair, likeness] of few) expect(likeness).toBeCloseTo(all.get(pair) ?? 0, 9);
  });

  test("in the second book, with its reworded and its near ones", () => {
    const second = readSecondBook();
    const written = rewordedOf(second).map((one) => one.written);
    const near = nearOf(second).others.filter((one) => one.id.endsWith("-near"));
    // Its first hundred, clocks all, since every pair of them is compared.
    const book = [...rowsOf(second).gotchas, ...written, ...near].filter((one) => one.id < "lesson-100");
    expect(book.length).toBeGreaterThan(120);
    expect([...told(alikes(book)).keys()].sort()).toEqual([...allPairs(book).keys()].sort());
  });
});
