import { readMediaFragment } from "#lib/time/index.ts";
import type { Adapter } from "../row.ts";

const form = "NPT clock form";

export const adapter: Adapter = ({ input }) => {
  if (input.rule === form) return clockForm();
  const read = readMediaFragment(`${input.fragment}`, (input.media_end_s as number | undefined) ?? Infinity);
  if (!read) return { valid: false, action: "ignored" };
  return { start: read.start, end: read.end ?? "media end" };
};

/** The digits that are read, found by trying. */
function clockForm() {
  const reads = (text: string) => readMediaFragment(`t=${text}`)?.start ?? null;
  const twoDigits = reads("1:00:05") === 3605 && reads("1:0:05") === null && reads("1:00:5") === null;
  const anyHours = reads("0:00:01") === 1 && reads("100:00:00") === 360_000;
  const anyFraction = reads("1.5") === 1.5 && reads("0:00:01.12345") === 1.12345;
  return {
    minutes_and_seconds_digits: twoDigits ? 2 : "other",
    hours_digits: anyHours ? "any" : "other",
    fraction_digits: anyFraction ? "any" : "other",
    default_unit: reads("npt:7") === reads("7") ? "npt" : "other",
  };
}
