/**
 * What restorers write as quantities: read, said back, converted exactly, and written again.
 * The README beside this file teaches the ideas in order.
 */
export { convert, toSI } from "./convert.ts";
export { type Disagreement, disagreement } from "./disagreement.ts";
export { type FormatStyle, format, hardSpace } from "./format.ts";
export { otherSystem, type SayOptions } from "./other-system.ts";
export type { Part } from "./part.ts";
export { type Bounds, boundsOf, quantitiesOf, questionsOf } from "./parts-of-reading.ts";
export {
  absolute,
  add,
  compare,
  divide,
  type Exact,
  exact,
  multiply,
  negate,
  type Rational,
  rational,
  subtract,
  toNumber,
} from "./rational.ts";
export { find, longestText, read, readerVersion } from "./read.ts";
export { roundTo, toDigits, toPlaces } from "./round.ts";
export { say } from "./say.ts";
export type {
  Designation,
  Dimension,
  LargerPart,
  NumberStyle,
  Qualifier,
  Quantity,
  Reading,
  ReadOptions,
  Role,
  ThreadDesignation,
  ThreadSystem,
  Tolerance,
  Value,
} from "./types.ts";
export { type Unit, unitByCode, units } from "./units.ts";
