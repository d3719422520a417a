import type { Entry, EntryFinding } from "./entry.ts";
import type { Sight } from "./sight.ts";

/** What a rule says; its id, and its source where the finding names none of its own, are added by the caller. */
export type Remark = Omit<EntryFinding, "rule" | "source"> & { source?: string };

/** What the first of several ways of looking has to say, if any. */
export function firstOf(sight: Sight, ...ways: ((sight: Sight) => Remark[])[]): Remark[] {
  for (const way of ways) {
    const [remark] = way(sight);
    if (remark) return [remark];
  }
  return [];
}

/** One rule about measured values: what it is for, how it finds, and examples that are its tests. */
export interface EntryRule {
  id: string;
  /** What it asks, as a heading. */
  title: string;
  /** Why it asks: two or three sentences for a restorer. */
  explanation: string;
  /** A standard, a table, or "common practice, no source". */
  source: string;
  check: (sight: Sight) => Remark[];
  examples: readonly EntryExample[];
}

/** An entry, and how many findings of this rule it has. */
export interface EntryExample {
  says: string;
  entry: Omit<Entry, "id" | "context"> & { context?: Entry["context"] };
  finds: 0 | 1;
}
