import { defineKind, required } from "../define.ts";

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
  { value: "left out", label: "left out on purpose" },
  { value: "scrapped", label: "scrapped" },
] as const;
export type PartEvent = (typeof partEvents)[number]["value"];

/** Whether a text is one of the words of the ledger. */
export function isPartEvent(text: string): text is PartEvent {
  return partEvents.some((event) => event.value === text);
}

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
  ],
  needs: { item: required("the name of the part"), event: required("what was done with it") },
});
