import { defineKind, required } from "../define.ts";
import type { Field } from "../field.ts";

/** What can happen to a part; the words of the ledger. */
export const partEvents = [
  { value: "removed", label: "removed" },
  { value: "inspected", label: "inspected" },
  { value: "cleaned", label: "cleaned" },
  { value: "repaired", label: "repaired" },
  { value: "made", label: "made" },
  { value: "obtained", label: "obtained" },
  { value: "replaced", label: "replaced" },
  { value: "substituted", label: "substituted" },
  { value: "fitted", label: "fitted" },
  { value: "torqued", label: "torqued" },
  { value: "left out", label: "left out on purpose" },
  { value: "scrapped", label: "scrapped" },
] as const;
export type PartEvent = (typeof partEvents)[number]["value"];

/** Whether a text is one of the words of the ledger. */
export function isPartEvent(text: string): text is PartEvent {
  return partEvents.some((event) => event.value === text);
}

/** Where a part sits, and among what. */
const bySeat: readonly Field[] = [
  { name: "place", label: "Where it sits", form: "line", hint: "which hole, cylinder, side", seldom: true },
  { name: "stack", label: "In the stack", form: "line", hint: "a name for the stack", seldom: true },
  {
    name: "stackPlace",
    label: "Place in the stack",
    form: "count",
    hint: "1 lies at the bottom, and goes on first",
    seldom: true,
  },
  { name: "between", label: "Between what", form: "line", seldom: true },
  { name: "thickness", label: "Thickness", form: "quantity", seldom: true },
  {
    name: "covers",
    label: "Goes on over",
    form: "line",
    hint: "parts that must be on before it, with commas between",
    seldom: true,
  },
  {
    name: "foundWrong",
    label: "Wrong as found",
    form: "line",
    hint: "what was not right before it came off",
    seldom: true,
  },
];

/** Which one it is, and which it is not. */
const byIdentity: readonly Field[] = [
  { name: "stamped", label: "Stamped or engraved", form: "line", seldom: true },
  { name: "lookAlike", label: "How its look-alike differs", form: "line", seldom: true },
  { name: "fittedNumber", label: "Part number as fitted", form: "line", seldom: true },
  { name: "supersedes", label: "Supersedes the number", form: "line", seldom: true },
  {
    name: "origin",
    label: "Original or reproduction",
    form: "choice",
    choices: [
      { value: "original", label: "original" },
      { value: "reproduction", label: "reproduction" },
      { value: "made here", label: "made here" },
    ],
    seldom: true,
  },
  {
    name: "insteadOf",
    label: "In place of",
    form: "line",
    hint: "another part, if it took its place",
    seldom: true,
  },
];

/** How it is held, and how often it may be. */
const byFastening: readonly Field[] = [
  {
    name: "tightness",
    label: "How tight",
    form: "choice",
    choices: [
      { value: "finger-tight", label: "finger-tight" },
      { value: "torqued", label: "torqued" },
    ],
    seldom: true,
  },
  { name: "torque", label: "Torque", form: "quantity", seldom: true },
  {
    name: "once",
    label: "May be fitted",
    form: "choice",
    blank: "as often as it is good",
    choices: [{ value: "once", label: "once only" }],
    seldom: true,
  },
];

/** Something happened to a part. */
export const part = defineKind({
  kind: "part",
  word: "Part",
  key: "p",
  order: 3,
  fields: [
    { name: "item", label: "Part", form: "item" },
    { name: "event", label: "What was done", form: "choice", choices: partEvents },
    { name: "count", label: "How many", form: "count" },
    { name: "words", label: "Notes", form: "text" },
    {
      name: "wayRound",
      label: "Side and way round",
      form: "line",
      hint: "which face, which end, what it points at",
    },
    { name: "partNumber", label: "Part number", form: "line" },
    { name: "size", label: "Size or thread", form: "line" },
    { name: "material", label: "Material", form: "line" },
    { name: "container", label: "Lies in", form: "line", hint: "the bag or tin" },
    { name: "source", label: "Where from", form: "line", hint: "supplier, or made here" },
    ...bySeat,
    ...byIdentity,
    ...byFastening,
  ],
  needs: { item: required("the name of the part"), event: required("what was done with it") },
});
