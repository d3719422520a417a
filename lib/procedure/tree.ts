import type { Drawing } from "#lib/figure/index.ts";
import type { Finding } from "#lib/finding/index.ts";
import type { CharacteristicValue, PartEvent, SignalWord, Stage, TypedValue } from "#lib/mark/index.ts";

/**
 * The procedure: what a build's marks and hand edits come to. Every node carries the id of the mark it
 * came from; nothing in it is stored.
 */
export interface Procedure {
  buildId: string;
  title: string;
  summary: string;
  /** The machine in the words of its title block. */
  machine: { name: string; maker: string; model: string; years: string; serial: string; variant: string };
  assembly: string;
  language: string;
  decimal: "." | ",";
  /** Only the stages that have steps, in the order of the stages. */
  stages: StageOfSteps[];
  parts: PartLine[];
  tools: SupplyLine[];
  consumables: SupplyLine[];
  measurements: MeasurementLine[];
  deferred: DeferredLine[];
  /** Marks that no step has taken up: before the first action of their sitting, or without film. */
  tray: Loose[];
  unsorted: Loose[];
  /** Hand edits that no longer find what they were made on. */
  orphans: Orphan[];
  /** The recordings that its moments lie on, by name. */
  recordings: RecordingLine[];
  /** Every mark that has a moment, in order: what other programs are told of. */
  moments: MarkMoment[];
  /** The edited film its moments are looked up in; absent where there is none. */
  film?: FilmOfProcedure;
}

/** A recording as an output names it. */
export interface RecordingLine {
  id: string;
  name: string;
  /** Of its bytes, in hex; null until it has been computed. A name may change: this does not. */
  sha256: string | null;
  /** Seconds; null until it has been looked at. */
  duration: number | null;
  /** Address of its published uncut film, with `{seconds}` or plain; empty where none is. */
  publishedAt: string;
}

/** A mark with its moment, and the step it belongs to. */
export interface MarkMoment {
  mark: string;
  kind: string;
  words: string;
  /** Null in the tray, and for what is unsorted. */
  step: number | null;
  moment: Moment;
}

/** The edited film: which stretch of which recording stands where in it. */
export interface FilmOfProcedure {
  cut: string;
  name: string;
  /** Frames a second as written: "25", "29.97"; empty where it does not matter. */
  rate: string;
  /** Seconds. */
  duration: number;
  /** Address, with `{seconds}` where the moment goes, or plain; empty where it is not published. */
  publishedAt: string;
  segments: FilmSegment[];
}

/**
 * A stretch of the film, half-open, in fractions of seconds ("1001/30000"): recording time = from + speed × (film
 * time − start).
 */
export interface FilmSegment {
  recordingId: string;
  start: string;
  end: string;
  from: string;
  speed: string;
}

export interface StageOfSteps {
  stage: Stage;
  steps: Step[];
}

/** One action with what belongs to it. */
export interface Step {
  /** The mark that begins it. */
  mark: string;
  /** Counts through the whole procedure from 1. */
  number: number;
  stage: Stage;
  /** The instruction: the words of the action, or the title given by hand. */
  title: string;
  /** Paragraphs that say how, in order; those of merged actions among them, each with its mark. */
  details: { mark: string; text: string }[];
  result: string;
  cautions: CautionNote[];
  parts: PartUse[];
  measurements: MeasurementLine[];
  tools: SupplyUse[];
  consumables: SupplyUse[];
  gotchas: GotchaNote[];
  deferred: DeferredLine[];
  stills: Figure[];
  moment: Moment | null;
  /** Every mark that belongs to it, in order, its own first. */
  marks: string[];
}

/** A second of a recording, and where a reader finds it: in the edited film, or in the uncut one. */
export interface Moment {
  recordingId: string;
  recordingName: string;
  /** Seconds of the recording's clock. */
  at: number;
  /** Where a span ends, same clock; absent for a moment. */
  until?: number;
  /** "14:08", of what the link leads to: beside the QR code, so that it helps where the code cannot be read. */
  written: string;
  /** Address of its first place in the published film, else of its second in the uncut one; null where neither is. */
  link: string | null;
  /** The film that `written` is a time of, where it is the edited one. */
  of?: string;
  /** Its places in the edited film: none, one or several. Absent where the build has no film. */
  film?: PlaceInFilm[];
}

/** Where a moment is seen in the edited film. */
export interface PlaceInFilm {
  /** Seconds of the film. */
  at: number;
  /** Where it ends: of a span, or of a picture that stands still; null for a moment. */
  until: number | null;
  /** "3:12". */
  written: string;
  /** Address of that second; null where the film is not published. */
  link: string | null;
}

export interface CautionNote {
  mark: string;
  /** Null until the restorer has said who is harmed, how badly and how surely. */
  signal: SignalWord | null;
  hazard: string;
  consequence: string;
  avoid: string;
  source: string;
}

export interface PartUse {
  mark: string;
  /** The item's id, or `name:` and the name in lower case while there is no item. */
  item: string;
  /** Its number in the parts list, as on a drawing. */
  balloon: number;
  name: string;
  event: PartEvent | "";
  count: string;
  wayRound: string;
  /** Where it sits and which one it is, in words: its place, its stack, its thickness, its stamp, how it is held. */
  seat: string;
  container: string;
  note: string;
}

/** A line of the parts list. */
export interface PartLine {
  item: string;
  balloon: number;
  name: string;
  /** How many the finished assembly has, by the marks; null where no mark says a number. */
  quantity: number | null;
  partNumber: string;
  material: string;
  size: string;
  source: string;
  /** Numbers of the steps in which it is met. */
  steps: number[];
  marks: string[];
}

export interface MeasurementLine {
  mark: string;
  /** The step it is taken in; null where it belongs to none. */
  step: number | null;
  what: string;
  part: string;
  values: Partial<Record<CharacteristicValue, TypedValue>>;
  instrument: string;
  source: string;
  note: string;
}

export interface SupplyUse {
  mark: string;
  name: string;
  /** Size of a tool, amount of a consumable. */
  detail: string;
  note: string;
}

/** A line of the list of tools or consumables: the union of what the steps use. */
export interface SupplyLine {
  name: string;
  detail: string;
  steps: number[];
  marks: string[];
}

export interface GotchaNote {
  mark: string;
  symptom: string;
  why: string;
  instead: string;
}

export interface DeferredLine {
  mark: string;
  step: number | null;
  what: string;
  waitsFor: string;
  /** The mark that closed it; null while it is open. */
  closedBy: string | null;
}

export interface Figure {
  still: string;
  mark: string;
  sha256: string;
  width: number;
  height: number;
  /** What it shows: written by the restorer, or proposed from the marks while `written` is false. */
  alt: string;
  written: boolean;
  /** What is drawn on it and how it is shown; absent where it is shown as it was taken. */
  drawn?: DrawnFigure;
}

/** A drawing with what stands on it. What is not named here has gone, and is not drawn. */
export interface DrawnFigure {
  drawing: Drawing;
  /** The number in the parts list of each item that is pointed at. */
  numbers: { item: string; number: number }[];
  /** The text on the dimension of each measurement. */
  values: { mark: string; text: string }[];
}

export interface Loose {
  mark: string;
  kind: string;
  words: string;
  moment: Moment | null;
}

export type OrphanReason =
  | "mark gone"
  | "not a step"
  | "target gone"
  | "target in another stage"
  | "goes in a circle"
  | "words changed";

export interface Orphan {
  edit: string;
  mark: string;
  /** What the edit asked for, in words. */
  asked: string;
  /** Why it could not be laid on; or that its words have changed since, and it was laid on all the same. */
  why: OrphanReason;
  /** Words of the mark when the edit was made. */
  basis: string;
}

/** A procedure with what the checks said of it; the only thing an output is made from. */
export interface CheckedProcedure {
  procedure: Procedure;
  findings: Finding[];
}
