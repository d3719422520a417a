import { check } from "#lib/check/index.ts";
import { compile } from "#lib/procedure/index.ts";
import { documentWith } from "./many.ts";
import { type BenchLine, ms, time } from "./measure.ts";

export const compileLine: BenchLine = {
  name: "compile and check a build",
  measure: async () => {
    const run = (count: number) => {
      const document = documentWith(count, count * 5);
      return time(7, () => check(compile(document), document));
    };
    const [small, large] = [await run(2000), await run(4000)];
    return [
      `2,000 marks ${ms(small)}; 4,000 marks ${ms(large)}`,
      `twice the marks take ${(large / small).toFixed(2)} times as long`,
    ];
  },
};
