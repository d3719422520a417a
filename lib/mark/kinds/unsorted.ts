import { defineKind } from "../define.ts";

/** A moment that matters, not yet said why. It is never printed. */
export const unsorted = defineKind({
  kind: "",
  word: "Unsorted",
  key: " ",
  order: 8,
  fields: [{ name: "words", label: "Words", form: "text" }],
  needs: {},
});
