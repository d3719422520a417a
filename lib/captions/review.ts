import { characteristicValues, type Mark, typedOf, wordsOf } from "#lib/mark/index.ts";
import { quantitiesOf, read, toSI } from "#lib/quantity/index.ts";
import { type DraftDecision, type DraftMark, matchDecisions } from "./draft/index.ts";

/** A draft that waits for the restorer. `formerly` is what was decided about other words at the same place. */
export interface OpenDraft {
  draft: DraftMark;
  formerly?: DraftDecision;
}

/** How far from its words somebody marks by hand what was said, in seconds. */
const near = 5;

/**
 * The drafts of a recording that are still to be decided, in their order: without those that were accepted or dropped,
 * and without what the restorer has marked by hand already. A mark by hand stands for one draft, the nearest.
 */
export function draftsToDecide(
  drafts: readonly DraftMark[],
  decisions: readonly DraftDecision[],
  marks: readonly Mark[],
): OpenDraft[] {
  const { open } = matchDecisions(drafts, decisions);
  const fromDrafts = new Set(decisions.map((decision) => decision.markId));
  const made = new Set<OpenDraft>();
  for (const mark of marks.filter((one) => one.gone === null && !fromDrafts.has(one.id))) {
    const same = open.filter((one) => !made.has(one) && saysTheSame(mark, one.draft));
    const [nearest] = same.sort((a, b) => away(mark, a.draft) - away(mark, b.draft));
    if (nearest) made.add(nearest);
  }
  return open.filter((one) => !made.has(one));
}

/** Whether a mark says, at that moment, what the draft proposes. */
function saysTheSame(mark: Mark, draft: DraftMark): boolean {
  if (mark.kind !== draft.kind || mark.recordingId !== draft.identity.recordingId || mark.at === null)
    return false;
  if (mark.at > draft.until + near || (mark.until ?? mark.at) < draft.at - near) return false;
  const proposed = { ...mark, fields: draft.fields };
  if (draft.kind === "measurement") {
    const values = new Set(valuesOf(proposed));
    return valuesOf(mark).some((value) => values.has(value));
  }
  if (draft.kind === "part") {
    const [one, other] = [wordsOf(mark, "event"), wordsOf(proposed, "event")];
    return lastWord(mark) === lastWord(proposed) && (one === other || one === "" || other === "");
  }
  // Of a lesson the place alone is known: its words are the restorer's own.
  if (draft.kind === "caution" || draft.kind === "gotcha" || draft.kind === "deferred") return true;
  const [one, other] = [folded(wordsOf(mark)), folded(wordsOf(proposed))];
  return one !== "" && other !== "" && (one.includes(other) || other.includes(one));
}

const away = (mark: Mark, draft: DraftMark) => Math.abs((mark.at ?? 0) - draft.at);
const folded = (words: string) => words.toLowerCase().replace(/\s+/g, " ").trim();
const lastWord = (mark: Mark) => (folded(wordsOf(mark, "item")).split(" ").at(-1) ?? "").replace(/s$/, "");

/** The values of a measurement in one fixed form: size in SI units to four digits, or the words where there is none. */
function valuesOf(mark: Mark): string[] {
  const typed = characteristicValues.map((name) => typedOf(mark, name)).filter((text) => text !== "");
  return typed.map((text) => {
    const [quantity] = quantitiesOf(read(text));
    return quantity ? `${quantity.dimension} ${toSI(quantity).toPrecision(4)}` : folded(text);
  });
}
