import { check } from "#lib/check/index.ts";
import { compile } from "#lib/procedure/index.ts";
import { toPdf } from "#lib/publish/index.ts";
import { documentWith } from "./many.ts";
import { type BenchLine, ms, time } from "./measure.ts";

export const printLine: BenchLine = {
  name: "PDF of a procedure, child process included",
  measure: async () => {
    const run = (steps: number) => {
      const document = documentWith(steps * 9, steps * 30);
      const checked = check(compile(document), document);
      return time(3, () => toPdf(checked, { stills: async () => null, printedOn: "2026-05-03" }));
    };
    const [small, large] = [await run(20), await run(200)];
    return [
      `20 steps ${ms(small)}; 200 steps ${ms(large)}`,
      `ten times the steps take ${(large / small).toFixed(1)} times as long`,
    ];
  },
};
