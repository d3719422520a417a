import { itemFields } from "./machine.mjs";

/**
 * The notation in which the job is written: one short function for each kind of mark. A moment is in seconds
 * of the recording's clock, or null for a mark without film. `name` is a handle for `closes` and for stills;
 * it becomes an id later.
 */
const mark = (kind, at, fields, { name, closes } = {}) => ({ kind, at, fields, name, closes: closes ?? [] });

export const action = (at, name, words, { closes, ...fields } = {}) =>
  mark("action", at, { words, ...fields }, { name, closes });

/** One part: what was done with it, how many, and what else the ledger should know. */
export const part = (at, item, event, count, fields = {}) =>
  mark("part", at, { ...itemFields(item), event, count: String(count), ...fields });

/** A characteristic and its values, each as typed. */
export function measurement(at, words, { name, closes, of, ...fields }) {
  const quantities = ["asFound", "specified", "limit", "asFitted"];
  const typed = Object.fromEntries(
    Object.entries(fields).map(([field, text]) => [
      field,
      quantities.includes(field) ? { typed: text } : text,
    ]),
  );
  return mark("measurement", at, { words, ...(of ? itemFields(of) : {}), ...typed }, { name, closes });
}

export const caution = (at, words, fields) => mark("caution", at, { words, ...fields });

export const gotcha = (at, words, { on, ...fields }) =>
  mark("gotcha", at, { words, ...(on ? itemFields(on) : {}), ...fields });

export const deferred = (at, name, words, { of, ...fields }) =>
  mark("deferred", at, { words, ...(of ? itemFields(of) : {}), ...fields }, { name });

export const tool = (at, words, size, note = "") =>
  mark("tool", at, note === "" ? { words, size } : { words, size, note });

export const consumable = (at, words, amount, note = "") =>
  mark("consumable", at, note === "" ? { words, amount } : { words, amount, note });
