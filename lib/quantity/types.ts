import type { Exact } from "./rational.ts";

/** What kind of thing is measured. Torque is not energy, though both are newtons times metres. */
export type Dimension =
  | "length"
  | "area"
  | "volume"
  | "volume flow"
  | "density"
  | "mass"
  | "force"
  | "torque"
  | "pressure"
  | "temperature"
  | "angle"
  | "time"
  | "rotational speed"
  | "frequency"
  | "speed"
  | "power"
  | "energy"
  | "voltage"
  | "current"
  | "resistance"
  | "capacitance"
  | "inductance"
  | "charge"
  | "spring rate"
  | "viscosity"
  | "thread pitch"
  | "ratio"
  | "count"
  | "number";

/**
 * What a value is for, where the unit does not say it: a rise of 18 °F is not a temperature, and a gauge
 * shows pressure above the air's, not the whole of it (`vacuum`: below it).
 */
export type Role = "difference" | "gauge" | "absolute" | "vacuum";

/** `either way` is a plus-or-minus without a middle: "±0.02 mm". */
export type Qualifier = "exact" | "about" | "at least" | "at most" | "range" | "either way";

/** Decimals: "12,50" (sign), "12 500" (group), ".015" (bare), "1.5e3" (tens), "4k7" (letter in place of the point). */
export interface DecimalStyle {
  kind: "decimal";
  places: number;
  sign?: ",";
  group?: string;
  bare?: true;
  plus?: true;
  tens?: number;
  letter?: string;
}

/** How the digits were written, so that they can be written again in the same way. */
export type NumberStyle =
  | DecimalStyle
  | { kind: "fraction"; over: number; join: string; improper?: true; glyph?: true; plus?: true };

/** One number as written: its exact value, a double for arithmetic, and the step it was written to. */
export interface Value {
  exact: Exact;
  number: number;
  /** One of the last place written: "1/100" for two decimals, "1/8" for eighths, "1" for a whole number. */
  step: Exact;
  style: NumberStyle;
}

/** What the writer allows around the value. Deviations carry their sign: minus is -0.02, or +0.01. */
export type Tolerance =
  | { kind: "limits"; plus: Value; minus: Value; ucum: string; even: boolean }
  | { kind: "percent"; plus: Value; minus: Value; even: boolean }
  | { kind: "class"; name: string };

/** A larger unit written before the last one: the 5 ft of "5 ft 3 in". Its count is part of the value. */
export interface LargerPart {
  count: Exact;
  ucum: string;
  unit: string;
}

/** A measured amount. `value` is in `ucum`; for a range it is the end written first, and `high` the other. */
export interface Quantity {
  dimension: Dimension;
  role?: Role;
  /** UCUM code of the unit (ucum.org); "1" for a number without a unit. */
  ucum: string;
  /** The unit as the writer spelled it, spaces made single; empty for a number without a unit. */
  unit: string;
  value: Value;
  high?: Value;
  qualifier: Qualifier;
  /** A range or a limit that was itself called "about". */
  roughly?: true;
  tolerance?: Tolerance;
  larger?: LargerPart[];
  /** Terms of a ratio as written: 50 and 1 of "50:1". */
  terms?: Exact[];
  /** In SI base units as a double (radians for angles, turns a second for speed of rotation, kelvin). */
  si: number;
  siHigh?: number;
}

/** A thing known by its name in a standard or a trade list, rather than by a measured amount. */
export type Designation =
  | ThreadDesignation
  | { type: "drill"; name: string; scale: "number" | "letter"; size: string }
  | { type: "wire gauge"; name: string; system: "AWG" | "SWG"; size: string }
  | { type: "sheet gauge"; name: string; system: "MSG"; size: string }
  | { type: "screw gauge"; name: string; size: string }
  | { type: "taper pin"; name: string; size: string }
  | { type: "taper"; name: string; system: "Morse"; size: string }
  | { type: "bearing"; name: string; number: string; suffix: string }
  | { type: "fit"; name: string; nominal?: Exact; ucum: "mm"; hole?: string; shaft?: string }
  | { type: "strength"; name: string; scheme: "ISO 898-1" | "ISO 3506" | "SAE J429"; grade: string };

export type ThreadSystem =
  | "ISO metric"
  | "trapezoidal"
  | "UN"
  | "BSW"
  | "BSF"
  | "BA"
  | "BSP"
  | "BSC"
  | "BSB"
  | "ME"
  | "Acme"
  | "NPT"
  | "unstated";

export interface ThreadDesignation {
  type: "thread";
  /** The name in one fixed spelling: "1/4-20 UNC", "M6x0.75", "2 BA". */
  name: string;
  system: ThreadSystem;
  /** Series letters as far as written: UNC, UNF, BSPT, NPTF, CEI. */
  series?: string;
  /** Nominal size as written: "1/4", "6", "#10"; empty where only a pitch is said ("26 tpi cycle"). */
  size: string;
  /** Nominal diameter where the size gives it, in the unit `ucum`. */
  diameter?: Exact;
  ucum?: "mm" | "[in_i]";
  /** Threads an inch, as written. */
  tpi?: Exact;
  /** Pitch in mm, as written. */
  pitch?: Exact;
  /** Length of the screw, where it is written with the thread. */
  length?: Quantity;
  /** Class of strength written with the thread: "8.8". */
  strength?: string;
  /** Tolerance class of the thread: "6g". */
  fitClass?: string;
  hand?: "left" | "right";
}

/**
 * What was read from a text: plain JSON, kept beside the text itself. `words` are the words of the text
 * that carry no number ("OD", "turns out"), kept in order.
 */
export type Reading =
  | { kind: "empty" }
  | { kind: "unread"; why: string }
  /** The text can mean several things; `candidates` are what it may mean, likeliest first. */
  | { kind: "question"; ask: string; candidates: Reading[]; words?: string }
  /** A number without a unit. */
  | { kind: "bare"; quantities: Quantity[]; words?: string }
  /** One value; several quantities when it is given in several systems: "1-3/8 in (34.9 mm)". */
  | { kind: "quantity"; quantities: Quantity[]; words?: string }
  /** "25 x 52 x 15 mm": several measures of one thing, with their names where written. */
  | { kind: "product"; quantities: Quantity[]; names?: string[]; words?: string }
  /** "0.75 + 0.50 = 1.25 in"; terms carry their sign. */
  | { kind: "sum"; quantities: Quantity[]; total?: Quantity; words?: string }
  | { kind: "designation"; designation: Designation; quantities: Quantity[]; words?: string }
  /** Several things in one text: "3/4 BSP, 26.4 mm OD, 14 tpi". */
  | { kind: "list"; parts: Reading[] };

/** What the reader may know of the writer and of the field. */
export interface ReadOptions {
  /** The decimal sign of the build. Not said: "1,234" is asked about; "12,5" and "1.5" are read. */
  decimal?: "." | ",";
  /** Whose pints, tons and mils are meant. Not said: they are asked about. */
  region?: "GB" | "US" | "metric";
  /** What the field measures, where that is known: it settles "degrees" and "oz". */
  expect?: Dimension;
}
