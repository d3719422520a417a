import { z } from "zod";

/**
 * One field of a kind of mark, as the restorer meets it. `form` says what may be written there:
 *
 * - `line`, `text`: words, on one line or several;
 * - `quantity`: a value with its unit, kept as typed beside what was read from it;
 * - `choice`: one of `choices` (a value that is none of them is kept, and shown as it is);
 * - `count`: how many, kept as typed;
 * - `item`: the name of a part with an identity of its own; the id of the item stands beside it.
 */
export interface Field {
  name: string;
  label: string;
  form: "line" | "text" | "quantity" | "choice" | "count" | "item";
  choices?: readonly Choice[];
  /** What an empty choice means, where it means something. */
  blank?: string;
  /** What the field asks for, where the label alone would leave a stranger guessing. */
  hint?: string;
  /** Asked for only now and then: the form keeps it out of the way until it is wanted or filled in. */
  seldom?: true;
}

export interface Choice {
  value: string;
  label: string;
}

/** A typed value: the letters of the restorer, what was read from them, and by which version of the reader. */
export const typedValue = z.object({
  typed: z.string().max(2000),
  read: z.unknown().optional(),
  reader: z.number().int().optional(),
});
export type TypedValue = z.infer<typeof typedValue>;

const words = z.string().max(20_000);

/** What a field may hold on disk: everything optional, nothing refused that a person could have typed. */
export function storedField(field: Field): z.ZodType {
  if (field.form === "quantity") return typedValue.optional();
  return words.optional();
}
