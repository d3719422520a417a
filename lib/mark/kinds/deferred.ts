import { defineKind, required } from "../define.ts";

/** Something left provisional, to come back to. It stays open until a later mark closes it. */
export const deferred = defineKind({
  kind: "deferred",
  word: "Deferred",
  key: "d",
  order: 7,
  fields: [
    { name: "words", label: "What is left provisional", form: "text" },
    { name: "waitsFor", label: "Until", form: "line", hint: "what it waits for" },
    { name: "item", label: "Which part", form: "item" },
  ],
  needs: { words: required("what is left provisional") },
});
