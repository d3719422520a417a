import { newGotcha, newScope } from "#lib/build/index.ts";
import { alikes } from "#lib/gotcha/index.ts";
import { random } from "../gotcha/random.ts";
import { rowsOf } from "../gotcha/second/openings.ts";
import { readSecondBook } from "../gotcha/second/read.ts";
import { type BenchLine, ms, time } from "./measure.ts";

/** A book of that many: the words of the second book's gotchas, mixed by chance, over two hundred assemblies. */
function largeBook(size: number) {
  const dice = random(11);
  const words = rowsOf(readSecondBook()).gotchas.flatMap((one) => one.symptom.split(" "));
  return Array.from({ length: size }, (_, at) =>
    newGotcha({
      id: `gotcha-${at}`,
      symptom: Array.from({ length: 10 }, () => dice.pick(words)).join(" "),
      noted: "2026-01-01T00:00:00.000Z",
      appliesTo: [newScope({ maker: `Maker ${at % 7}`, assembly: `Assembly ${at % 200}` })],
    }),
  );
}

export const duplicatesLine: BenchLine = {
  name: "entries that may say the same, over a whole book of gotchas",
  measure: async () => {
    const said: string[] = [];
    for (const size of [1000, 2000, 4000]) {
      const book = largeBook(size);
      const ours = await time(3, () => alikes(book));
      // One entry against all others is the work of one row of all pairs; half the rows are the whole.
      const one = await time(9, () => alikes(book, book[0]));
      said.push(`${size} entries: ${ms(ours)}; writing one: ${ms(one)}`);
    }
    return said;
  },
};
