import { defineKind, required } from "../define.ts";

/** A lesson that should outlive the build: what bit, why, and what to do instead. */
export const gotcha = defineKind({
  kind: "gotcha",
  word: "Gotcha",
  key: "g",
  order: 6,
  fields: [
    { name: "words", label: "What bit", form: "text", hint: "as it first showed itself" },
    { name: "why", label: "Why", form: "text" },
    { name: "instead", label: "What to do instead", form: "text" },
    { name: "item", label: "On which part", form: "item" },
  ],
  needs: { words: required("what happened") },
});
