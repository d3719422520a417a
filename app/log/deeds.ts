import { newEdit, newItem, newStill, present, type Still } from "#lib/build/index.ts";
import { type Field, fieldsVersion, type KindName, kindOf, type Mark, newMark } from "#lib/mark/index.ts";
import { read, readerVersion } from "#lib/quantity/index.ts";
import type { UsualCaution } from "#lib/reference/hazards/index.ts";
import { timecode } from "#lib/time/index.ts";
import type { BuildSession, Change } from "../session/build-session.ts";

/** What the restorer does on the log sheet, as changes of rows. Each is one command in the history. */

const now = () => new Date().toISOString();

/** Drops a mark: on a recording at a moment of its clock, or without film at the end of the sitting's. */
export function dropMark(
  session: BuildSession,
  given: { sittingId: string; recordingId: string | null; at: number | null; kind: KindName | "" },
): Mark {
  const { document } = session;
  const without = document.marks.filter((mark) => mark.sittingId === given.sittingId && mark.at === null);
  const rank = given.at === null ? Math.max(0, ...without.map((mark) => mark.rank)) + 1 : 0;
  const mark = newMark({
    id: crypto.randomUUID(),
    buildId: document.build.id,
    rank,
    ...given,
    fields: { v: fieldsVersion },
  });
  session.change(`${kindOf(given.kind).word} ${sayWhere(mark)}`, [{ table: "mark", row: mark }]);
  return mark;
}

/**
 * Puts a usual caution to a mark, because the restorer asked for it: a caution at the same moment, which prints before
 * the step. Without film no time says where it belongs, so that is said by hand.
 */
export function addUsualCaution(session: BuildSession, mark: Mark, step: string, usual: UsualCaution): void {
  const { hazard, consequence, avoid, defer, harms, severity, likelihood, source } = usual;
  const caution = newMark({
    id: crypto.randomUUID(),
    buildId: mark.buildId,
    sittingId: mark.sittingId,
    recordingId: mark.recordingId,
    at: mark.at,
    rank: mark.rank,
    kind: "caution",
    fields: {
      v: fieldsVersion,
      words: hazard,
      consequence,
      avoid: [avoid, defer].filter(Boolean).join(" "),
      harms,
      severity,
      likelihood,
      sourceNote: source,
    },
  });
  const { id, buildId } = caution;
  const belongs = newEdit({
    id: `belongs-${id}`,
    buildId,
    markId: id,
    edit: "belongs",
    value: step,
    basis: hazard,
  });
  session.change(`Usual caution: ${usual.name}`, [
    { table: "mark", row: caution },
    { table: "edit", row: belongs },
  ]);
}

function sayWhere(mark: Mark): string {
  return mark.at === null ? "without film" : `at ${timecode(mark.at)}`;
}

/** Strikes a mark out. It stays on disk, and undo brings it back. */
export function strikeOut(session: BuildSession, id: string): void {
  const mark = markOf(session, id);
  if (!mark) return;
  const label = `${kindOf(mark.kind).word} ${sayWhere(mark)} struck out`;
  session.change(label, [{ table: "mark", row: { ...mark, gone: now() } }]);
}

export function markOf(session: BuildSession, id: string): Mark | undefined {
  return session.row("mark", id) as unknown as Mark | undefined;
}

/** Changes columns of a mark. */
export function changeMark(session: BuildSession, id: string, label: string, columns: Partial<Mark>): void {
  const mark = markOf(session, id);
  if (mark) session.change(label, [{ table: "mark", row: { ...mark, ...columns } }]);
}

/** Keeps what was typed into a field. A part's name that is known already is tied to its item. */
export function writeField(session: BuildSession, id: string, field: Field, text: string): void {
  const mark = markOf(session, id);
  if (!mark) return;
  const fields = { ...mark.fields };
  if (field.form === "quantity") {
    const reading = read(text, { decimal: session.document.build.decimal });
    fields[field.name] = text === "" ? undefined : { typed: text, read: reading, reader: readerVersion };
  } else {
    fields[field.name] = text === "" ? undefined : text;
  }
  if (field.form === "item") fields.itemId = itemNamed(session, text)?.id;
  // An empty field is left out, as if it had never been written in.
  const kept = Object.fromEntries(Object.entries(fields).filter(([, value]) => value !== undefined));
  changeMark(session, id, `${kindOf(mark.kind).word}: ${field.label.toLowerCase()}`, {
    fields: { ...kept, v: fields.v },
  });
}

/** Gives the part named in a mark an identity of its own, where it has none yet. */
export function settleItem(session: BuildSession, id: string): void {
  const mark = markOf(session, id);
  const name = typeof mark?.fields.item === "string" ? mark.fields.item.trim() : "";
  if (!mark || name === "" || mark.fields.itemId) return;
  const known = itemNamed(session, name);
  const item = known ?? newItem({ id: crypto.randomUUID(), machineId: session.document.machine.id, name });
  const changes: Change[] = known ? [] : [{ table: "item", row: item }];
  changes.push({ table: "mark", row: { ...mark, fields: { ...mark.fields, itemId: item.id } } });
  session.change(`Part named: ${name}`, changes);
}

/** The part of that name, however it is written. */
export function itemNamed(session: BuildSession, text: string) {
  const fold = (name: string) => name.trim().toLowerCase().replace(/\s+/g, " ");
  const wanted = fold(text);
  return wanted === ""
    ? undefined
    : present(session.document.items).find((item) => fold(item.name) === wanted);
}

/** Sorts a mark into a kind. What was written under another kind stays with it. */
export function sortInto(session: BuildSession, id: string, kind: KindName | ""): void {
  changeMark(session, id, `Sorted: ${kindOf(kind).word}`, { kind });
}

/** Lets a mark close deferred ones, or no longer. */
export function setCloses(session: BuildSession, id: string, closes: string[]): void {
  const mark = markOf(session, id);
  if (mark) changeMark(session, id, "Closes a deferred item", { fields: { ...mark.fields, closes } });
}

/** A picture as the program has put it away. */
export interface Baked {
  sha256: string;
  width: number;
  height: number;
}

/** Why a picture could not be kept, for the person. */
export class PictureRefused extends Error {}

/** Sends a picture to be put away: turned upright, place and camera data taken off. */
export async function bake(picture: Blob): Promise<Baked> {
  const response = await fetch("/media/stills", { method: "POST", body: picture });
  const answer = (await response.json()) as Baked & { found?: string; todo?: string };
  if (!response.ok)
    throw new PictureRefused(`${answer.found ?? "The picture was not kept."} ${answer.todo ?? ""}`);
  return answer;
}

/** Adds a still to a mark, or replaces one. */
export function putStill(
  session: BuildSession,
  mark: Mark,
  baked: Baked,
  from: { source: Still["source"]; recordingId: string | null; at: number | null },
  replaces?: Still,
): void {
  const others = present(session.document.stills).filter((still) => still.markId === mark.id);
  const still: Still = {
    ...(replaces ??
      newStill({
        id: crypto.randomUUID(),
        buildId: mark.buildId,
        markId: mark.id,
        rank: Math.max(0, ...others.map((one) => one.rank)) + 1,
      })),
    ...from,
    ...baked,
    // New picture, new words: what the old one showed may not be in it.
    alt: "",
  };
  session.change(from.source === "frame" ? `Still at ${timecode(from.at ?? 0)}` : "Photograph", [
    { table: "still", row: still },
  ]);
}

export function changeStill(
  session: BuildSession,
  still: Still,
  label: string,
  columns: Partial<Still>,
): void {
  session.change(label, [{ table: "still", row: { ...still, ...columns } }]);
}

export function strikeOutStill(session: BuildSession, still: Still): void {
  changeStill(session, still, "Still struck out", { gone: now() });
}
