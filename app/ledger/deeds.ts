import { type Kit, type KitNote, newKit, sittingsInOrder } from "#lib/build/index.ts";
import { fieldsVersion, newMark } from "#lib/mark/index.ts";
import type { BuildSession } from "../session/build-session.ts";

/** What the restorer does on the parts sheet, as changes of rows. Each is one command in the history. */

/** Marks without film, at the end of the last sitting, what was done with a part at the bench. */
export function markPart(
  session: BuildSession,
  part: { item: string; name: string },
  event: "fitted" | "torqued" | "left out" | "scrapped",
): void {
  const { document } = session;
  const sitting = sittingsInOrder(document).at(-1);
  if (!sitting) return;
  const named = document.items.some((one) => one.id === part.item) ? { itemId: part.item } : {};
  const fields = { v: fieldsVersion, item: part.name, ...named, event };
  const mark = newMark({
    id: crypto.randomUUID(),
    buildId: document.build.id,
    sittingId: sitting.id,
    rank: Math.max(0, ...document.marks.filter((one) => one.at === null).map((one) => one.rank)) + 1,
    kind: "part",
    fields,
  });
  session.change(`${part.name}: ${event}`, [{ table: "mark", row: mark }]);
}

/** Keeps the restorer's word under a key: an answer of the survey, of the assembly, or at a hold point. */
export function keepWord(session: BuildSession, key: string, reason: string): void {
  const known = session.document.answers.find((one) => one.key === key && one.evidence === "");
  const gone = reason.trim() === "" ? new Date().toISOString() : null;
  if (!known && gone) return;
  session.change(gone ? "An answer taken back" : "An answer", [
    {
      table: "answer",
      row: {
        id: known?.id ?? crypto.randomUUID(),
        buildId: session.document.build.id,
        key,
        evidence: "",
        reason: gone ? (known?.reason ?? "") : reason.trim(),
        gone,
        rev: known?.rev ?? 0,
      },
    },
  ]);
}

export function addKit(session: BuildSession, given: Pick<Kit, "name" | "supplier" | "text">): void {
  const kit = newKit({ id: crypto.randomUUID(), buildId: session.document.build.id, ...given });
  session.change(`Kit: ${given.name}`, [{ table: "kit", row: kit }]);
}

export function changeKit(session: BuildSession, kit: Kit, columns: Partial<Kit>): void {
  session.change(`Kit: ${kit.name}`, [{ table: "kit", row: { ...kit, ...columns } }]);
}

/** Keeps what is said of one line of a kit. */
export function noteKitLine(session: BuildSession, kit: Kit, typed: string, note: KitNote): void {
  const filled = Object.fromEntries(
    Object.entries(note).filter(([, value]) => value !== "" && value !== undefined),
  );
  const { [typed]: _, ...others } = kit.lines;
  changeKit(session, kit, {
    lines: Object.keys(filled).length > 0 ? { ...others, [typed]: filled } : others,
  });
}

/** Makes a gotcha of a kit part that must not be used: it bites whoever buys that kit next. */
export function gotchaFromKit(session: BuildSession, kit: Kit, name: string, why: string): void {
  const { document } = session;
  const sitting = sittingsInOrder(document).at(-1);
  if (!sitting) return;
  const mark = newMark({
    id: crypto.randomUUID(),
    buildId: document.build.id,
    sittingId: sitting.id,
    rank: Math.max(0, ...document.marks.filter((one) => one.at === null).map((one) => one.rank)) + 1,
    kind: "gotcha",
    fields: { v: fieldsVersion, words: `Do not use the ${name} of the kit “${kit.name}”.`, why },
  });
  session.change(`Gotcha: ${name}`, [{ table: "mark", row: mark }]);
}
