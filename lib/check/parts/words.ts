import type { LedgerEvent } from "#lib/procedure/index.ts";

/** " at 1:02", or nothing for what was not filmed. */
export function atMoment(event: Pick<LedgerEvent, "written"> | undefined): string {
  return event?.written ? ` at ${event.written}` : "";
}

/** "one piece", "3 pieces". */
export function pieces(count: number): string {
  return count === 1 ? "one piece" : `${count} pieces`;
}

/** Marks for sketches: the action that begins assembly, and a part's coming off and going on. */
export const assembly = (at: number) =>
  [at, "action", { words: "Put it together", stage: "assemble" }] as const;
export const off = (at: number, item: string, fields: Record<string, unknown> = {}) =>
  [at, "part", { item, event: "removed", count: "1", ...fields }] as const;
export const on = (at: number, item: string, fields: Record<string, unknown> = {}) =>
  [at, "part", { item, event: "fitted", count: "1", ...fields }] as const;
