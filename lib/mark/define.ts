import { z } from "zod";
import { type Field, storedField } from "./field.ts";

/** The names of the kinds; the empty one is a mark not yet sorted. */
export const kindNames = [
  "action",
  "part",
  "measurement",
  "caution",
  "gotcha",
  "deferred",
  "tool",
  "consumable",
] as const;
export type KindName = (typeof kindNames)[number];

/** The version of the `fields` of every kind. A change of their meaning raises it and adds an upgrade. */
export const fieldsVersion = 1;

/** What a mark carries beside its common columns, as it lies on disk. */
export interface Fields {
  v: number;
  /** The words of the mark: what is done, measured, dangerous … by its kind. */
  words?: string;
  /** The item that the field `item` names, once it is known. */
  itemId?: string;
  /** The words of the captions that it was drafted from, to the letter. */
  said?: string;
  /** Marks, in any build of the machine, that this one closes. */
  closes?: string[];
  [field: string]: unknown;
}

export interface KindOfMark {
  kind: KindName | "";
  /** The printed word for it. */
  word: string;
  /** The key that drops one, until the restorer chooses another. */
  key: string;
  /** Its place among marks of one moment: people warn, then act, then say with what. */
  order: number;
  fields: readonly Field[];
  /** Everything optional: what may be kept. Fields of another kind stay, so that sorting loses nothing. */
  stored: z.ZodType<Fields>;
  /** What a finished mark has. What is missing from it is a finding, never a refusal. */
  complete: z.ZodType;
}

/** A text that must be there in the end. `what` words the finding: "an instruction". */
export function required(what: string): z.ZodType {
  const message = `${what} is missing`;
  return z.string({ error: message }).trim().min(1, { error: message });
}

/** Makes a kind of its fields and of those among them that a finished mark needs. */
export function defineKind(
  kind: Omit<KindOfMark, "stored" | "complete"> & { needs: Record<string, z.ZodType> },
): KindOfMark {
  const { needs, ...rest } = kind;
  const stored = z.looseObject({
    v: z.literal(fieldsVersion),
    ...Object.fromEntries(kind.fields.map((field) => [field.name, storedField(field)])),
    itemId: z.string().max(100).optional(),
    said: z.string().max(20_000).optional(),
    closes: z.array(z.string().max(100)).max(1000).optional(),
  });
  return { ...rest, stored: stored as unknown as z.ZodType<Fields>, complete: z.looseObject(needs) };
}
