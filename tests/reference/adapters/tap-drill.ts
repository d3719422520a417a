import { quantitiesOf, read } from "#lib/quantity/index.ts";
import {
  compareThreads,
  drillNamed,
  tapDrillFor,
  tapDrillSuits,
  threadPercent,
  threadPercentOf,
} from "#lib/reference/index.ts";
import { designations, first, inUnit, threads } from "../read/figures.ts";
import type { Adapter, Answer } from "../row.ts";

/** The drill of a sentence in mm: "drill No. 3", "with a 6.5 mm drill". */
function drillIn(text: string): number | undefined {
  const drill = designations(text).find((one) => one.type === "drill");
  if (drill?.type === "drill")
    return drillNamed(drill.scale === "number" ? `No. ${drill.size}` : `letter ${drill.size}`)?.mm;
  const [size] = quantitiesOf(read(text)).filter(({ dimension }) => dimension === "length");
  return size && inUnit(size, "mm");
}

function percentage(input: Record<string, unknown>, text: string): Answer {
  const figures = [input.D_mm, input.drill_mm, input.P_mm].map(Number) as [number, number, number];
  if (figures.every(Number.isFinite)) return { thread_percent: threadPercentOf(...figures) };
  const drill = drillIn(text);
  return { thread_percent: drill && threadPercent(first(threads(text), "the thread"), drill) };
}

export const adapter: Adapter = ({ input, expected }) => {
  const { text } = input;
  const [one, other] = threads(text);
  if (one && other) {
    const { interchangeable, differ } = compareThreads(one, other);
    return { consistent: interchangeable, reason: `${differ.join(", ")} differs` };
  }
  if ("thread_percent" in expected) return percentage(input, text);
  const thread = first(one ? [one] : [], "the thread");
  if (/^tapping drill for/.test(text)) {
    const found = tapDrillFor(thread);
    return { drill: found?.drill.name, mm: found?.drill.mm };
  }
  const verdict = tapDrillSuits(thread, drillIn(text) ?? Number.NaN);
  return { consistent: verdict.suits, reason: verdict.why };
};
