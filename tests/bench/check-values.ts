import { checkEntries, type Entry } from "#lib/check/index.ts";
import { type BenchLine, ms, time } from "./measure.ts";

/** So many different measured values; no text of one turn is met in another. */
function values(count: number, turn: number): Entry[] {
  return Array.from({ length: count }, (_, i): Entry => {
    const size = (10 + turn * 40 + i / 1000).toFixed(3);
    return {
      id: i,
      text: `${size} mm`,
      what: "pin diameter",
      context: {
        part: "pin",
        instrument: "micrometer",
        spec: `${(Number(size) - 0.01).toFixed(3)}-${(Number(size) + 0.01).toFixed(3)} mm`,
        related: [
          { what: "reamed hole", text: `${(Number(size) + 0.02).toFixed(3)} mm` },
          { what: "fit", text: "sliding" },
        ],
      },
    };
  });
}

export const checkValuesLine: BenchLine = {
  name: "check measured values",
  measure: async () => {
    const run = (count: number) => {
      let turn = 0;
      return time(3, () => checkEntries(values(count, turn++)));
    };
    const [small, large] = [await run(10_000), await run(20_000)];
    return [
      `10,000 values ${ms(small)}; 20,000 values ${ms(large)}`,
      `twice the values take ${(large / small).toFixed(2)} times as long`,
    ];
  },
};
