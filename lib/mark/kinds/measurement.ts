import { defineKind, required } from "../define.ts";

/** Where a value comes from, from the surest to the least sure. */
export const valueSources = [
  { value: "measured", label: "measured here" },
  { value: "published", label: "published" },
  { value: "common practice", label: "common practice" },
  { value: "reported", label: "reported by somebody" },
  { value: "guess", label: "guess" },
] as const;
export type ValueSource = (typeof valueSources)[number]["value"];

/** The four values of a characteristic. As found is not the same as right. */
export const characteristicValues = ["asFound", "specified", "limit", "asFitted"] as const;
export type CharacteristicValue = (typeof characteristicValues)[number];

/** A characteristic of a part or of the machine, and up to four values of it. */
export const measurement = defineKind({
  kind: "measurement",
  word: "Measurement",
  key: "m",
  order: 4,
  fields: [
    { name: "words", label: "What is measured, and where", form: "line" },
    { name: "item", label: "Of which part", form: "item" },
    { name: "asFound", label: "As found", form: "quantity" },
    { name: "specified", label: "Specified", form: "quantity" },
    { name: "limit", label: "Limit", form: "quantity" },
    { name: "asFitted", label: "As fitted", form: "quantity" },
    {
      name: "mate",
      label: "Its mate",
      form: "line",
      hint: "the part it fits in, on or against",
      seldom: true,
    },
    { name: "instrument", label: "Instrument", form: "line" },
    { name: "source", label: "Source", form: "choice", choices: valueSources },
    { name: "sourceNote", label: "Which book, person or rule", form: "line" },
    { name: "note", label: "Notes", form: "text" },
  ],
  needs: { words: required("what is measured") },
});
