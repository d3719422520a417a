import { defineKind, required } from "../define.ts";

/** A tool the step needs. */
export const tool = defineKind({
  kind: "tool",
  word: "Tool",
  key: "t",
  order: 5,
  fields: [
    { name: "words", label: "Tool", form: "line" },
    { name: "size", label: "Size", form: "line" },
    { name: "note", label: "Notes", form: "line" },
  ],
  needs: { words: required("the tool") },
});
