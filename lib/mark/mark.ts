import { z } from "zod";
import { type Fields, fieldsVersion, type KindName, type KindOfMark, kindNames } from "./define.ts";
import { action } from "./kinds/action.ts";
import { caution } from "./kinds/caution.ts";
import { consumable } from "./kinds/consumable.ts";
import { deferred } from "./kinds/deferred.ts";
import { gotcha } from "./kinds/gotcha.ts";
import { measurement } from "./kinds/measurement.ts";
import { part } from "./kinds/part.ts";
import { tool } from "./kinds/tool.ts";
import { unsorted } from "./kinds/unsorted.ts";

/** Every kind of mark, in the order of the log sheet's keys; the unsorted one last. */
export const kinds: readonly KindOfMark[] = [
  action,
  part,
  measurement,
  caution,
  gotcha,
  deferred,
  tool,
  consumable,
  unsorted,
];

const byName = new Map<string, KindOfMark>(kinds.map((kind) => [kind.kind, kind]));

/** The kind of that name. A name from a later version of the program reads as unsorted: kept, not printed. */
export function kindOf(name: string): KindOfMark {
  return byName.get(name) ?? unsorted;
}

/** A moment or span that matters, with its kind and that kind's fields. */
export interface Mark {
  id: string;
  buildId: string;
  sittingId: string;
  /** The recording it lies on; null for one made without film. */
  recordingId: string | null;
  /** Seconds of the recording's clock: the middle of the interval of the frame it means. Null without film. */
  at: number | null;
  /** Where a span ends, same clock; null for a moment. */
  until: number | null;
  /** Its place among marks of the same moment, and among those without film. */
  rank: number;
  kind: KindName | "";
  fields: Fields;
  /** When it was struck out, ISO 8601 in UTC. It stays on disk, since others may refer to it. */
  gone: string | null;
  /** Counts the changes of this row; a write made on an older one is refused. */
  rev: number;
}

const time = z.number().min(0).max(1e7);
const id = z
  .string()
  .min(1)
  .max(100)
  .refine((text) => !/[\p{Cc}\p{Cs}]/u.test(text), { error: "an id holds no control characters" });

/** Fields of a later version are kept as they are, but for what no form has: a nest that the database cannot read. */
const mostNested = 20;

/** Checks a mark row and the fields of its kind. Messages say where and what was found. */
export const markRow: z.ZodType<Mark> = z
  .object({
    id,
    buildId: z.string().min(1).max(100),
    sittingId: z.string().min(1).max(100),
    recordingId: z.string().max(100).nullable(),
    at: time.nullable(),
    until: time.nullable(),
    rank: z.number().min(-1e12).max(1e12),
    kind: z.enum([...kindNames, ""]),
    fields: z.looseObject({ v: z.literal(fieldsVersion) }),
    gone: z.string().max(40).nullable(),
    rev: z.number().int().min(0),
  })
  .superRefine((mark, context) => {
    if (isNestedDeeper(mark.fields, mostNested)) {
      context.addIssue({ code: "custom", message: `nested more than ${mostNested} deep`, path: ["fields"] });
      return;
    }
    const result = kindOf(mark.kind).stored.safeParse(mark.fields);
    for (const issue of result.error?.issues ?? []) {
      context.addIssue({ code: "custom", message: issue.message, path: ["fields", ...issue.path] });
    }
    if (mark.until !== null && (mark.at === null || mark.until < mark.at)) {
      context.addIssue({ code: "custom", message: "a span ends before it begins", path: ["until"] });
    }
  }) as unknown as z.ZodType<Mark>;

/** Walks no deeper than it has to, so that no nest is too deep for it. */
function isNestedDeeper(value: unknown, most: number): boolean {
  if (typeof value !== "object" || value === null) return false;
  return most === 0 || Object.values(value).some((inner) => isNestedDeeper(inner, most - 1));
}

/** Fields of a mark of that kind that a finished one needs and this one has not: name and what is missing. */
export function missingFields(mark: Mark): { field: string; message: string }[] {
  const result = kindOf(mark.kind).complete.safeParse(mark.fields);
  return (result.error?.issues ?? []).map((issue) => ({
    field: String(issue.path[0] ?? "words"),
    message: issue.message,
  }));
}

/** A field's words, trimmed, or the empty text. */
export function wordsOf(mark: Mark, field = "words"): string {
  const value = mark.fields[field];
  return typeof value === "string" ? value.trim() : "";
}

/** The letters typed into a quantity field, trimmed, or the empty text. */
export function typedOf(mark: Mark, field: string): string {
  const value = mark.fields[field] as { typed?: unknown } | undefined;
  return typeof value?.typed === "string" ? value.typed.trim() : "";
}

/** A new mark of that kind; the caller gives the id, so that repeating the command that adds it is harmless. */
export function newMark(given: Partial<Mark> & Pick<Mark, "id" | "buildId" | "sittingId">): Mark {
  return {
    recordingId: null,
    at: null,
    until: null,
    rank: 0,
    kind: "",
    fields: { v: fieldsVersion },
    gone: null,
    rev: 0,
    ...given,
  };
}
