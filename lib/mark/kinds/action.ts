import { defineKind, required } from "../define.ts";
import { stages } from "../stage.ts";

/** What is done. An action begins a step. */
export const action = defineKind({
  kind: "action",
  word: "Action",
  key: "s",
  order: 1,
  fields: [
    { name: "words", label: "What is done", form: "text", hint: "one instruction, the verb first" },
    { name: "detail", label: "How, and what to look for", form: "text" },
    { name: "result", label: "What should be seen afterwards", form: "line" },
    {
      name: "stage",
      label: "Stage",
      form: "choice",
      blank: "as the step before",
      choices: stages.map((stage) => ({ value: stage, label: stage })),
    },
  ],
  needs: { words: required("an instruction") },
});
