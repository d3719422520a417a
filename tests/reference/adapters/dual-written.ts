import { disagreement, type Quantity, quantitiesOf, read, unitByCode } from "#lib/quantity/index.ts";
import { slipsOf } from "#lib/reference/index.ts";
import { inUnit } from "../read/figures.ts";
import type { Adapter } from "../row.ts";

/** A unit that was settled by the conversion beside it is said: "imperial pint meant". */
function settled({ unit, ucum }: Quantity): string | null {
  const alone = read(`1 ${unit}`);
  return alone.kind === "question" ? `${unitByCode(ucum)?.spellings.join(", ")} meant` : null;
}

export const adapter: Adapter = ({ input }) => {
  const asked = read(input.text);
  const reading = asked.kind === "question" ? (asked.candidates[0] ?? asked) : asked;
  const [first, second] = quantitiesOf(reading);
  if (!first || !second) return { question: "the two figures were not read as one value" };
  const ratio = second.value.number / inUnit(first, second.ucum);
  const consistent = disagreement(reading) === null;
  const slip = consistent ? settled(first) : (slipsOf(ratio, first.dimension)[0]?.words ?? null);
  return {
    ...(asked.kind === "question" && { question: asked.ask }),
    consistent,
    second_over_converted_first: ratio,
    likely_slip: slip,
  };
};
