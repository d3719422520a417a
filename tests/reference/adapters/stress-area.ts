import { proofLoad, stressArea, stressAreaInch } from "#lib/reference/index.ts";
import { designations, first, threads } from "../read/figures.ts";
import type { Adapter } from "../row.ts";

export const adapter: Adapter = ({ input }) => {
  if (typeof input.D_in === "number" && typeof input.tpi === "number")
    return { At_in2: stressAreaInch(input.D_in, input.tpi) };
  const thread = first(
    threads(input.text, ({ system }) => system === "ISO metric" || system === "UN"),
    "the thread",
  );
  const area = stressArea(thread)?.mm2;
  const strength = designations(input.text)
    .map((one) => (one.type === "thread" ? one.strength : one.type === "strength" ? one.grade : undefined))
    .find((one) => one !== undefined);
  const load = strength === undefined ? undefined : proofLoad(thread, strength)?.newtons;
  return {
    As_mm2: area,
    As_computed_mm2: area,
    At_in2: area && area / 25.4 ** 2,
    kN: load && load / 1000,
    lbf: load && load / 4.4482216152605,
  };
};
