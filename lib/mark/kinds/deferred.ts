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
    {
      name: "least",
      label: "At least",
      form: "quantity",
      hint: "a soak, cure or bath: how long",
      seldom: true,
    },
    { name: "longest", label: "At most", form: "quantity", seldom: true },
    { name: "limitWhy", label: "Why that long", form: "line", seldom: true },
    {
      name: "began",
      label: "Began",
      form: "line",
      hint: "2026-05-03 14:02, where no film says it",
      seldom: true,
    },
    {
      name: "ended",
      label: "Ended",
      form: "line",
      hint: "2026-05-03 18:30, where no film says it",
      seldom: true,
    },
  ],
  needs: { words: required("what is left provisional") },
});
