import { quantitiesOf, read } from "#lib/quantity/index.ts";
import { drillNamed, drillsNear } from "#lib/reference/index.ts";
import { designations, first, inUnit } from "../read/figures.ts";
import type { Adapter } from "../row.ts";

export const adapter: Adapter = ({ input }) => {
  const drill = designations(input.text).find((one) => one.type === "drill");
  const named =
    drill?.type === "drill"
      ? drillNamed(drill.scale === "number" ? `No. ${drill.size}` : `letter ${drill.size}`)
      : undefined;
  const mm =
    named?.mm ??
    first(drillsNear(inUnit(first(quantitiesOf(read(input.text)), "a size"), "mm")), "a drill").mm;
  return { decimal_in: mm / 25.4, mm };
};
