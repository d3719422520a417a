import type { Span } from "./span.ts";

/**
 * The stretches between the first and the last of some spans of one clock that none of them covers, in order.
 *
 * @param atLeast shorter ones are left out, in seconds
 */
export function gapsBetween(spans: readonly Span[], atLeast = 0): Span[] {
  const gaps: Span[] = [];
  let covered = Number.NaN;
  for (const { start, end } of [...spans].sort((a, b) => a.start - b.start)) {
    if (start - covered >= atLeast && start > covered) gaps.push({ start: covered, end: start });
    covered = Number.isNaN(covered) ? end : Math.max(covered, end);
  }
  return gaps;
}
