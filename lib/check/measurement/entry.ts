import { z } from "zod";
import type { Severity } from "#lib/finding/index.ts";

const words = z.string().max(5000);

/** What is known beside a measured value. What is not known is left out, never guessed. */
const context = z.object({
  part: words.optional(),
  material: words.optional(),
  instrument: words.optional(),
  /** Thread and class of strength: "M5, 8.8". */
  fastener: words.optional(),
  /** What the value should be, with its limits: "0.35-0.45 mm". */
  spec: words.optional(),
  /** The limit at which the part is renewed. */
  limit: words.optional(),
  /** What the restorer decided: "accepted", "renewed". */
  verdict: words.optional(),
  /** Other values and remarks of the same place. */
  related: z
    .array(z.object({ what: words, text: words }))
    .max(1000)
    .optional(),
});

/** One measured value, as typed, with what is known beside it. */
export const entry = z.object({
  id: z.union([z.string().max(200), z.number()]).optional(),
  text: words,
  what: words,
  context: context.default({}),
});
export type Entry = z.infer<typeof entry>;
export type EntryContext = z.infer<typeof context>;

/** What a rule says of an entry. */
export interface EntryFinding {
  rule: string;
  severity: Severity;
  found: string;
  expected: string;
  /** What may have been meant: "0.015 in?". */
  meant?: string;
  source: string;
}
