import {
  gradesByLines,
  markSuitsThread,
  nominalStrength,
  sizeOf,
  strengthClass,
} from "#lib/reference/index.ts";
import { threads } from "../read/figures.ts";
import type { Adapter, Answer } from "../row.ts";

/** A diameter in mm inside a range as tables write it: "d > 16 mm", "M5 to M36", "over 3/4 to 1-1/2". */
function diameterIn(range: string): number | undefined {
  const limit = /([<>])=? ?(\d+)/.exec(range);
  if (limit) return Number(limit[2]) + (limit[1] === ">" ? 1 : 0);
  const top = /(?:to|up to|incl\.?) (M?[\d/-]+)/.exec(range)?.[1];
  if (top === undefined) return undefined;
  return top.startsWith("M") ? Number(top.slice(1)) : sizeOf(top) * 25.4;
}

function classRow(name: string, range: string): Answer {
  const row = strengthClass(name, diameterIn(range));
  return {
    Rm_min_MPa: row?.tensile,
    yield_min_MPa: row?.yield,
    proof_MPa: row?.proof,
    proof_ksi: row?.ksi?.proof,
    yield_ksi: row?.ksi?.yield,
    tensile_ksi: row?.ksi?.tensile,
  };
}

function head(text: string): Answer {
  const lines = /with (\d) radial|(no) radial/.exec(text);
  const mark = /marked (\d{1,2}\.\d)/.exec(text)?.[1];
  const [thread] = threads(text);
  if (thread && (mark || lines)) {
    const { suits, why } = markSuitsThread(mark ? "ISO 898-1" : "SAE J429", thread.native);
    return { flag: suits ? "fits" : "suspect", reason: why };
  }
  const [grade] = gradesByLines(Number(lines?.[1] ?? 0));
  return { grade: grade?.grade, metric_near: grade?.metricNear };
}

export const adapter: Adapter = ({ input }) => {
  const name = `${input.class ?? input.grade ?? /(?:class|grade) ([\d.]+)/.exec(input.text)?.[1]}`;
  if (/nominal strength/.test(input.text)) {
    const nominal = nominalStrength(/(\d{1,2}\.\d)/.exec(input.text)?.[1] ?? "");
    return { Rm_nom_MPa: nominal?.tensile, yield_nom_MPa: nominal?.yield };
  }
  if (/head/.test(input.text)) return head(input.text);
  return classRow(name, `${input.range ?? input.range_in ?? input.text}`);
};
