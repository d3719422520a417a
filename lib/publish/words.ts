import { type CharacteristicValue, partEvents, type SignalWord, type Stage } from "#lib/mark/index.ts";
import type {
  CautionNote,
  DeferredLine,
  GotchaNote,
  MeasurementLine,
  Moment,
  PartUse,
  Procedure,
  Step,
} from "#lib/procedure/tree.ts";
import type { CorrectionLine, RevisionLine } from "./release/history.ts";
import type { SheetState } from "./state.ts";

/** The words that outputs share, so that a reader meets the same ones on paper, on a screen and in a file. */

/** Names of the four values of a characteristic, in the order in which they are printed. */
export const valueNames: readonly (readonly [CharacteristicValue, string])[] = [
  ["asFound", "As found"],
  ["specified", "Specified"],
  ["limit", "Limit"],
  ["asFitted", "As fitted"],
];

/** A procedure's title, or words in its place. */
export function titleOf(procedure: Procedure): string {
  return procedure.title.trim() || "Untitled procedure";
}

/** A step's instruction, or words in its place. */
export function instructionOf(step: Step): string {
  return step.title.trim() || "No instruction written";
}

/** "Trial fit". */
export function stageName(stage: Stage): string {
  return stage.charAt(0).toUpperCase() + stage.slice(1);
}

/** "Step 4", "Steps 4, 9", "Steps 1 to 5, 7", or the empty text. */
export function stepNumbers(numbers: readonly number[]): string {
  if (numbers.length === 0) return "";
  return `${numbers.length === 1 ? "Step" : "Steps"} ${inRuns(numbers)}`;
}

/** Numbers in rising order, three or more in a row as "1 to 5". */
export function inRuns(numbers: readonly number[]): string {
  const runs: number[][] = [];
  for (const number of numbers) {
    const run = runs.at(-1);
    if (run?.at(-1) === number - 1) run.push(number);
    else runs.push([number]);
  }
  return runs
    .flatMap((run) => (run.length > 2 ? [`${run[0]} to ${run.at(-1)}`] : run.map(String)))
    .join(", ");
}

/** The fields of the title block, after the data fields of ISO 7200; those that say nothing are left out. */
export function titleBlock(procedure: Procedure): { label: string; value: string }[] {
  const { machine } = procedure;
  const fields: [string, string][] = [
    ["Machine", machine.name],
    ["Maker", machine.maker],
    ["Model", machine.model],
    ["Variant", machine.variant],
    ["Serial", machine.serial],
    ["Years", machine.years],
    ["Assembly", procedure.assembly],
    ["Language", languageName(procedure.language)],
  ];
  return fields.map(([label, value]) => ({ label, value: value.trim() })).filter(({ value }) => value !== "");
}

/** "British English" of "en-GB"; a tag that nothing is known of stands for itself. */
function languageName(tag: string): string {
  try {
    return new Intl.DisplayNames(["en"], { type: "language" }).of(tag) ?? tag;
  } catch {
    return tag;
  }
}

/** What the title block says of the sheet's own standing. */
export function standingBlock(state: SheetState): { label: string; value: string }[] {
  return [
    { label: "Standing", value: state.standing },
    { label: "Date", value: state.date },
    { label: "Open findings", value: String(state.openFindings) },
    { label: "Sheet code", value: state.hash8 },
  ];
}

/** Where a correction belongs: "Revision A, step 4". */
export function correctionPlace({ revision, step }: CorrectionLine): string {
  return step === null ? `Revision ${revision}` : `Revision ${revision}, step ${step}`;
}

/** What became of a mistake that was found. */
export function correctionStanding({ mendedIn }: CorrectionLine): string {
  return mendedIn === null ? "Not yet mended in a release." : `Mended in revision ${mendedIn}.`;
}

/** What is not as in the revision before; of `all` revisions, latest first, the one at that place. */
export function changedText(all: readonly RevisionLine[], at: number): string {
  const written = all[at]?.changed.trim() ?? "";
  if (written !== "") return written;
  return at === all.length - 1 ? "First release." : "Nobody wrote down what has changed.";
}

/** What somebody who followed the revision before has to do again. */
export function againText({ again }: RevisionLine): string {
  return again.trim() === "" ? "Nothing has to be done again." : `To be done again: ${again}`;
}

/** The signal word as printed. An ungraded caution gets none of the four: nobody has said how bad it is. */
export function signalText(signal: SignalWord | null): string {
  return signal ?? "Hazard, not graded";
}

/** Whether the alert triangle stands before the word: for injury, and where injury has not been ruled out. */
export function isAboutInjury(signal: SignalWord | null): boolean {
  return signal !== "NOTICE";
}

/** A caution's source in words; one without a source says so. */
export function sourceText(source: string): string {
  return source.trim() === "" ? "No source given" : `Source: ${source.trim()}`;
}

/** A text with the stop at its end that running words need. */
export function sentence(text: string): string {
  const trimmed = text.trim();
  return trimmed === "" || /[.!?…:;]$/.test(trimmed) ? trimmed : `${trimmed}.`;
}

/** What happens to a part in a step: "removed, 4 off", "fitted". */
export function partEventText(use: PartUse): string {
  const event = partEvents.find(({ value }) => value === use.event)?.label ?? "";
  const count = use.count.trim();
  return [event, /^\d+$/.test(count) ? `${count} off` : count].filter(Boolean).join(", ");
}

/** What else is said of a part in a step, a sentence each. */
export function partRemarks(use: PartUse): string[] {
  const lies = use.container.trim() === "" ? "" : `Lies in ${use.container.trim()}`;
  return [use.wayRound.trim(), use.seat, lies, use.note.trim()].filter(Boolean);
}

/** What is said of a moment's places in the edited film, beside what its link leads to; empty where nothing is to say. */
export function filmNote({ film, of }: Moment): string {
  if (!film) return "";
  const others = film.map(({ written }) => written).slice(of === undefined ? 0 : 1);
  if (film.length === 0) return "Not in the film";
  if (others.length === 0) return "";
  return of === undefined ? `In the film at ${others.join(", ")}` : `also at ${others.join(", ")}`;
}

/** What is measured: "Shaft at the seal, Pump shaft, with Seal". */
export function measuredText({ what, part, mate }: MeasurementLine): string {
  return [what.trim() || "Not said what is measured", part, mate && `with ${mate}`]
    .filter(Boolean)
    .join(", ");
}

/** What a gotcha says, each under its label. */
export function gotchaSays({ symptom, part, why, instead }: GotchaNote): [label: string, text: string][] {
  const says: [string, string][] = [
    ["What bit:", symptom],
    ["On:", part ?? ""],
    ["Why:", why],
    ["Instead:", instead],
  ];
  return says.filter(([, text]) => text.trim() !== "");
}

/** What is left provisional: "Thrust washer: end float above the card's figure". */
export function leftText({ what, part }: DeferredLine): string {
  return [part, what.trim() || "Not said what is left"].filter(Boolean).join(": ");
}

/** Deferred items that are still open, in the order of the procedure. */
export function openItems(procedure: Procedure): DeferredLine[] {
  return procedure.deferred.filter((line) => line.closedBy === null);
}

/** What is said first of something left provisional. */
export function deferredHead({ closedBy }: DeferredLine): string {
  return closedBy === null ? "Left open:" : "Closed since:";
}

/** What is said of a soak's time: "At least 20 min, at most 24 h. Why: the acid bites the iron." Empty without one. */
export function soakText({ soak }: DeferredLine): string {
  if (!soak) return "";
  const { least, longest, why } = soak;
  const limits = [least && `At least ${least}`, longest && `${least ? "at" : "At"} most ${longest}`];
  return [limits.filter(Boolean).join(", "), why.trim() && `Why: ${why.trim()}`]
    .map(sentence)
    .filter(Boolean)
    .join(" ");
}

/** The times that a reader writes down for a soak: when it began, and between which times it ends. */
export function soakTimes({ soak }: DeferredLine): { name: string; head: string; reckoned: string }[] {
  if (!soak) return [];
  const { least, longest } = soak;
  return [
    { name: "began", head: "Began", reckoned: "date and time" },
    ...(least === "" ? [] : [{ name: "not-before", head: "Not before", reckoned: `began + ${least}` }]),
    ...(longest === "" ? [] : [{ name: "not-after", head: "Not after", reckoned: `began + ${longest}` }]),
  ];
}

/** Every step, in order. */
export function allSteps(procedure: Procedure): Step[] {
  return procedure.stages.flatMap((stage) => stage.steps);
}

/** A caution as it stands before the first step: once, with every step it belongs to. */
export interface GroupedCaution extends Omit<CautionNote, "mark"> {
  marks: string[];
  steps: number[];
}

const worst: readonly (SignalWord | null)[] = ["DANGER", "WARNING", "CAUTION", null, "NOTICE"];

/** All cautions of a procedure, the gravest first; those with the same words are one. */
export function groupedCautions(procedure: Procedure): GroupedCaution[] {
  const groups = new Map<string, GroupedCaution>();
  for (const step of allSteps(procedure)) {
    for (const { mark, ...caution } of step.cautions) {
      const key = JSON.stringify(caution);
      const group = groups.get(key) ?? { ...caution, marks: [], steps: [] };
      group.marks.push(mark);
      if (!group.steps.includes(step.number)) group.steps.push(step.number);
      groups.set(key, group);
    }
  }
  const rank = (caution: GroupedCaution) => worst.indexOf(caution.signal);
  return [...groups.values()].sort((a, b) => rank(a) - rank(b));
}
