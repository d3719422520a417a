import type { Draft } from "./types.ts";

/** A draft as the command line prints it: `t` and `t_end` in seconds, fields named in small letters. */
export interface PlainMark {
  t: number;
  t_end: number;
  kind: string;
  quote: string;
  fields: Record<string, unknown>;
}

/** Writes drafts in the plain form. */
export function toPlainMarks(drafts: readonly Draft[]): PlainMark[] {
  return drafts.map((draft) => ({
    t: draft.start,
    t_end: draft.end,
    kind: draft.kind,
    quote: draft.quote,
    fields: { ...fieldsOf(draft), reason: draft.reason, sureness: draft.sureness },
  }));
}

function fieldsOf(draft: Draft): Record<string, unknown> {
  if (draft.kind !== "measurement") return { ...draft.fields };
  const { valueSi, highSi, ...fields } = draft.fields;
  return { ...fields, value_si: valueSi, ...(highSi === undefined ? {} : { high_si: highSi }) };
}
