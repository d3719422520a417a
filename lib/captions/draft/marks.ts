import { type Fields, fieldsVersion, type KindName } from "#lib/mark/index.ts";
import { read, readerVersion } from "#lib/quantity/index.ts";
import type { Cue } from "../read/types.ts";
import { contextOf, type DraftOptions } from "./context.ts";
import { type DraftIdentity, identityOf } from "./decisions.ts";
import { draftFrom } from "./draft.ts";
import type { English } from "./english.ts";
import type { Draft, MeasurementFields, PartFields, Sureness } from "./types.ts";

/** A draft as a mark would be stored, with what it comes from and what it is known by. */
export interface DraftMark {
  identity: DraftIdentity;
  kind: KindName;
  /** Seconds of the captions' clock. */
  at: number;
  until: number;
  /** The fields of its kind, ready for a mark; nothing counts before the restorer has accepted it. */
  fields: Fields;
  /** The words it comes from, to the letter. */
  quote: string;
  reason: string;
  sureness: Sureness;
}

/** Drafts the marks of a recording from its captions. Pure: the same captions give the same drafts with the same identity. */
export function toDraftMarks(
  cues: readonly Cue[],
  options: DraftOptions & { recordingId: string },
): DraftMark[] {
  const context = contextOf(cues, options);
  return draftFrom(context).map((draft) => ({
    identity: identityOf(draft, options.recordingId),
    kind: draft.kind,
    at: draft.start,
    until: draft.end,
    fields: fieldsOf(draft, context.english),
    quote: draft.quote,
    reason: draft.reason,
    sureness: draft.sureness,
  }));
}

/** The fields of a draft as lib/mark has them. */
function fieldsOf(draft: Draft, english: English): Fields {
  switch (draft.kind) {
    case "measurement":
      return measurementFields(draft.fields, english);
    case "part":
      return partFields(draft.fields);
    case "caution":
      return {
        v: fieldsVersion,
        words: draft.fields.summary,
        ...(draft.fields.because ? { consequence: draft.fields.because } : {}),
        ...(draft.fields.harms ? { harms: draft.fields.harms } : {}),
        ...(draft.fields.order ? { avoid: draft.fields.summary } : {}),
      };
    case "gotcha":
      return { v: fieldsVersion, words: draft.quote, ...item(draft.fields.about) };
    case "deferred":
      return {
        v: fieldsVersion,
        words: draft.fields.summary,
        ...(draft.fields.because ? { waitsFor: draft.fields.because } : {}),
        ...item(draft.fields.about),
      };
    default:
      return { v: fieldsVersion, words: draft.fields.name };
  }
}

function measurementFields(fields: MeasurementFields, english: English): Fields {
  const value = {
    typed: fields.typed,
    read: read(fields.typed, { region: english, decimal: "." }),
    reader: readerVersion,
  };
  return {
    v: fieldsVersion,
    words: fields.of,
    [fields.role]: value,
    ...(fields.instrument ? { instrument: fields.instrument } : {}),
    ...(fields.source ? { source: fields.source } : {}),
  };
}

/** What was done with a part, in the words of the ledger. */
const events: Readonly<Record<string, string>> = {
  make: "made",
  replace: "replaced",
  repair: "repaired",
  reuse: "fitted",
  clean: "cleaned",
  fit: "fitted",
  adjust: "repaired",
  remove: "removed",
};

function partFields(fields: PartFields): Fields {
  const event = events[fields.action ?? ""];
  const notes = [fields.action === "reuse" ? "used again" : "", fields.condition ?? ""].filter(
    (note) => note !== "",
  );
  return {
    v: fieldsVersion,
    item: fields.name,
    ...(event ? { event } : {}),
    ...(fields.qty ? { count: `${fields.qty}` } : {}),
    ...(notes.length > 0 ? { words: notes.join("; ") } : {}),
    ...(fields.number ? { partNumber: fields.number } : {}),
    ...(fields.size ? { size: fields.size } : {}),
    ...(fields.material ? { material: fields.material } : {}),
  };
}

const item = (name: string) => (name === "" ? {} : { item: name });
