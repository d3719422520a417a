import type { HowMeant } from "./qualifier.ts";

/** The kinds of mark that captions can propose. */
/** A proposed mark, of any kind. */
export type DraftKind =
  | "action"
  | "part"
  | "measurement"
  | "caution"
  | "gotcha"
  | "deferred"
  | "tool"
  | "consumable";

/** How sure a rule is: `certain` may be accepted unread, `unsure` is worth a look. */
export type Sureness = "certain" | "likely" | "unsure";

/** What a draft of a measurement says. */
export interface MeasurementFields {
  /** What is measured: "length", "thread", "pitch", "torque" … */
  quantity: string;
  value: number;
  /** UCUM code. */
  unit: string;
  valueSi: number;
  high?: number;
  highSi?: number;
  qualifier: HowMeant;
  /** A range or a limit that is itself called "about". */
  approx?: true;
  /** Plus or minus, in the same unit. */
  tolerance?: number;
  /** Threads: "1/4 BSF". */
  designation?: string;
  /** What it is measured of: "worm shaft end float". */
  of: string;
  /** Which of the four values of a characteristic. */
  role: "asFound" | "specified" | "limit" | "asFitted";
  source?: "measured" | "published" | "common practice" | "reported" | "guess";
  instrument?: string;
  /** As a restorer would type it: "about 5 thou". */
  typed: string;
}

/** What a draft of a part says. */
export interface PartFields {
  name: string;
  action?: string;
  qty?: number;
  number?: string;
  size?: string;
  condition?: string;
  material?: string;
}

/** Caution, gotcha, deferred: what is said, about what, and the clauses that tell why or until when. */
export interface LessonFields {
  summary: string;
  about: string;
  /** The clause with the consequence, the cause, or what it waits for. */
  because?: string;
  harms?: "person" | "thing";
  /** Whether the words say what to do or not to do, so that they tell how harm is avoided. */
  order?: true;
}

/** What a draft of a tool, a consumable or an action says: its name. */
export interface NamedFields {
  name: string;
}

/** A mark proposed from what was said. Times are seconds of the captions' clock. */
export interface DraftOf<K extends DraftKind, F> {
  kind: K;
  /** From the start of the cue with its first word to the end of the cue with its last. */
  start: number;
  end: number;
  /** The words it comes from, to the letter. */
  quote: string;
  fields: F;
  /** Why it was proposed, in plain words. */
  reason: string;
  sureness: Sureness;
  /** Its words, half-open, counted from the first word of the captions. */
  from: number;
  to: number;
}

export type Draft =
  | DraftOf<"measurement", MeasurementFields>
  | DraftOf<"part", PartFields>
  | DraftOf<"caution" | "gotcha" | "deferred", LessonFields>
  | DraftOf<"tool" | "consumable" | "action", NamedFields>;
