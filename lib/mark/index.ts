/** Marks: kinds, their fields, the signal word of a caution. The order of marks is `compareMarks`. */
export { type Fields, fieldsVersion, type KindName, type KindOfMark, kindNames } from "./define.ts";
export { type Choice, type Field, type TypedValue, typedValue } from "./field.ts";
export {
  type CharacteristicValue,
  characteristicValues,
  type ValueSource,
  valueSources,
} from "./kinds/measurement.ts";
export { isPartEvent, type PartEvent, partEvents } from "./kinds/part.ts";
export { kindOf, kinds, type Mark, markRow, missingFields, newMark, typedOf, wordsOf } from "./mark.ts";
export { type Clocks, compareMarks, sittingTime } from "./order.ts";
export { type SignalWord, signalWord } from "./signal-word.ts";
export { isStage, type Stage, stages } from "./stage.ts";
