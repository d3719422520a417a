import { defineKind, required } from "../define.ts";

/** Something used up: oil, sealant, wire, emery. */
export const consumable = defineKind({
  kind: "consumable",
  word: "Consumable",
  key: "c",
  order: 5.5,
  fields: [
    { name: "words", label: "Consumable", form: "line" },
    { name: "amount", label: "How much", form: "line" },
    { name: "note", label: "Notes", form: "line" },
  ],
  needs: { words: required("the consumable") },
});
