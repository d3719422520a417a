import type {
  CautionNote,
  DeferredLine,
  GotchaNote,
  MeasurementLine,
  Moment,
  PartUse,
  Procedure,
  Step,
  SupplyUse,
} from "#lib/procedure/tree.ts";
import { hardSpace } from "#lib/quantity/index.ts";
import type { BriefNote } from "../brief.ts";
import { paragraphs } from "../clean.ts";
import { closeOutChecks, closeOutHeading } from "../close-out.ts";
import { limits } from "../limits.ts";
import type { Edition, Paper, PublishOptions } from "../output.ts";
import { printedValue, tieUnits, unitOf } from "../quantity.ts";
import type { History } from "../release/history.ts";
import type { SheetState } from "../state.ts";
import type { Stills } from "../stills.ts";
import {
  againText,
  allSteps,
  changedText,
  correctionPlace,
  correctionStanding,
  deferredHead,
  filmNote,
  gotchaSays,
  groupedCautions,
  inRuns,
  instructionOf,
  isAboutInjury,
  leftText,
  measuredText,
  openItems,
  partEventText,
  partRemarks,
  sentence,
  signalText,
  soakText,
  soakTimes,
  sourceText,
  stageName,
  standingBlock,
  stepNumbers,
  titleBlock,
  titleOf,
  valueNames,
} from "../words.ts";
import { printFigure } from "./figure.ts";
import { breakable } from "./printable.ts";
import { qrCode } from "./qr.ts";

/**
 * The data of the template, `sheet.json`: everything the print says, as text that is ready to be set. Its form
 * is what the template reads, so its type is left to be inferred.
 */
export function printSheet(
  procedure: Procedure,
  state: SheetState,
  {
    paper,
    stills,
    brief,
    edition = "page",
    history = { revisions: [], corrections: [] },
    changedSteps = [],
  }: { paper: Paper; stills: Stills["found"]; brief: readonly BriefNote[] } & Pick<
    PublishOptions,
    "edition" | "history" | "changedSteps"
  >,
) {
  const steps = allSteps(procedure);
  const [lang, region] = languageParts(procedure.language);
  return {
    /** The title for the file's own data, without places to break. */
    name: paragraphs(titleOf(procedure)).join(" "),
    title: wide(titleOf(procedure)),
    lang,
    region,
    edition,
    paper: paper === "letter" ? "us-letter" : "a4",
    state,
    short: {
      title: shortened(titleOf(procedure), 80),
      machine: shortened(procedure.machine.name || machineName(procedure), 60),
    },
    block: [...titleBlock(procedure), ...standingBlock(state)].map(({ label, value }) => ({
      label,
      value: narrow(value, 16),
    })),
    summary: lines(procedure.summary),
    open: openItems(procedure).map((line) => ({
      ...deferred(line),
      steps: line.step ? `Step ${line.step}` : "",
    })),
    cautions: groupedCautions(procedure).map((one) => ({ ...caution(one), steps: stepNumbers(one.steps) })),
    limits,
    brief: brief.map((note) => note.map(([label, text]) => [label, wide(text)])),
    tools: procedure.tools.map((one) => ({ ...supply(one), steps: stepNumbers(one.steps) })),
    consumables: procedure.consumables.map((one) => ({ ...supply(one), steps: stepNumbers(one.steps) })),
    parts: procedure.parts.map((part) => ({
      balloon: part.balloon,
      name: wide(part.name || "Unnamed part"),
      about: wide([part.partNumber, part.size, part.material, part.source].filter(Boolean).join(" · ")),
      quantity: part.quantity === null ? "–" : String(part.quantity),
      steps: inRuns(part.steps),
    })),
    stages: procedure.stages.map(({ stage, steps: of }, index) => ({
      name: stageName(stage),
      first: index === 0,
      range: range(of),
      steps: of.map((step) => ({
        ...printStep(step, stills, edition),
        changed: changedSteps.includes(step.mark),
      })),
    })),
    measurements: procedure.measurements.map((line) => ({
      what: wide(measuredText(line)),
      step: line.step === null ? "–" : String(line.step),
      about: wide([line.instrument, line.source].filter(Boolean).join(" · ")),
      values: values(line),
    })),
    steps: steps.length,
    "close-out": {
      heading: closeOutHeading,
      checks: closeOutChecks(procedure).map(({ text }) => wide(text)),
    },
    corrections: history.corrections.map(correction),
    revisions: history.revisions.map(revision),
  };
}

function correction(line: History["corrections"][number]) {
  return {
    place: correctionPlace(line),
    said: [line.value, line.correction && `Right is: ${line.correction}`].flatMap(lines),
    standing: correctionStanding(line),
  };
}

function revision(line: History["revisions"][number], index: number, all: History["revisions"]) {
  const first = index === all.length - 1;
  return {
    name: `Revision ${line.revision}`,
    date: line.date,
    changed: lines(changedText(all, index)),
    again: first ? [] : lines(againText(line)),
  };
}

function printStep(step: Step, stills: Stills["found"], edition: Edition) {
  return {
    number: step.number,
    instruction: wide(instructionOf(step)),
    cautions: step.cautions.map(caution),
    pictures: step.stills.flatMap((figure) => printFigure(figure, step, stills, edition)),
    "no-picture": step.stills.length > 0 ? "Picture missing" : "No picture",
    film: film(step.moment),
    details: step.details.flatMap(({ text }) => lines(text)),
    tools: step.tools.map(supplyUse),
    consumables: step.consumables.map(supplyUse),
    parts: step.parts.map(part),
    measurements: step.measurements.map(measurement),
    result: lines(step.result),
    gotchas: step.gotchas.map(gotcha),
    deferred: step.deferred.map(deferred),
  };
}

function caution(one: Omit<CautionNote, "mark">) {
  return {
    signal: signalText(one.signal),
    graded: one.signal !== null,
    injury: isAboutInjury(one.signal),
    hazard: lines(one.hazard).map(sentence),
    consequence: lines(one.consequence).map(sentence),
    avoid: lines(one.avoid).map(sentence),
    source: wide(sourceText(one.source)),
  };
}

function part(use: PartUse) {
  return {
    balloon: use.balloon,
    name: wide(use.name || "Unnamed part"),
    event: wide(partEventText(use)),
    remarks: wide(partRemarks(use).map(sentence).join(" ")),
  };
}

function supplyUse(use: SupplyUse) {
  return supply({ name: use.name, detail: [use.detail, use.note].filter(Boolean).join(", ") });
}

function supply({ name, detail }: { name: string; detail: string }) {
  return { name: wide(name), detail: wide(detail) };
}

function measurement(line: MeasurementLine) {
  const notes = [line.instrument && `Instrument: ${line.instrument}`, sourceText(line.source), line.note];
  return {
    what: wide(measuredText(line)),
    heads: valueNames.map(([, label]) => label),
    values: values(line),
    unit: shortened(
      valueNames.map(([name]) => unitOf(line.values[name])).find((unit) => unit !== "") ?? "",
      12,
    ),
    notes: narrow(
      notes
        .filter(Boolean)
        .map((one) => sentence(one))
        .join(" "),
      30,
    ),
  };
}

function values(line: MeasurementLine) {
  return valueNames.map(([name]) => {
    const value = line.values[name];
    if (!value) return null;
    const { typed, other } = printedValue(value);
    return { typed: narrow(typed, 11), other: other === null ? null : narrow(other, 11) };
  });
}

function gotcha(one: GotchaNote): [string, string][] {
  return gotchaSays(one).map(([label, text]) => [label, wide(text)]);
}

function deferred(line: DeferredLine) {
  return {
    open: line.closedBy === null,
    head: deferredHead(line),
    what: wide(sentence(leftText(line))),
    until: line.waitsFor.trim() === "" ? null : wide(`Until: ${sentence(line.waitsFor)}`),
    time: soakText(line) === "" ? null : wide(soakText(line)),
    times: soakTimes(line).map(({ head, reckoned }) => ({ head, reckoned: narrow(reckoned, 16) })),
  };
}

function film(moment: Moment | null) {
  if (!moment) return null;
  const code = moment.link === null ? null : qrCode(moment.link);
  return {
    time: moment.written,
    recording: narrow(moment.of ?? moment.recordingName, 14),
    also: narrow(filmNote(moment), 14),
    code: code?.svg ?? null,
    link: moment.link,
    alt: `QR code: the film at ${moment.written}`,
  };
}

function machineName({ machine }: Procedure): string {
  return [machine.maker, machine.model].filter(Boolean).join(" ") || machine.name || "–";
}

function range(steps: readonly Step[]): string {
  const first = steps[0]?.number ?? 0;
  const last = steps.at(-1)?.number ?? first;
  return first === last ? `Step ${first}` : `Steps ${first} to ${last}`;
}

/** Paragraphs of a text, ready to be set across the words' column. */
function lines(text: string): string[] {
  return paragraphs(text).map(wide);
}

/** A text on one line of thought, for the words' column: its longest words may break. */
function wide(text: string): string {
  return narrow(text, 36);
}

/**
 * A text for a cell that holds that many characters in a line. Numbers stay with their units where they can, and no
 * line begins with the dot between two things.
 */
function narrow(text: string, longest: number): string {
  return breakable(tieUnits(paragraphs(text).join(" ")), longest).replaceAll(" · ", `${hardSpace}· `);
}

/** A text cut for a cell of the foot, which cuts it to what it can hold; it stands whole on the first page. */
function shortened(text: string, longest: number): string {
  const characters = [...paragraphs(text).join(" ")];
  return characters.length <= longest
    ? characters.join("")
    : `${characters
        .slice(0, longest - 1)
        .join("")
        .trimEnd()}…`;
}

/** Language and region of a tag, as the typesetter takes them; English where the tag is not one. */
function languageParts(tag: string): [string, string | null] {
  const [, language, region] = /^([a-z]{2,3})(?:-(?:[a-z]{4}-)?([a-z]{2}))?(?:-|$)/i.exec(tag) ?? [];
  return [language?.toLowerCase() ?? "en", region?.toUpperCase() ?? null];
}
