import { defineKind, required } from "../define.ts";

/** Something that can hurt a person or spoil a thing. The signal word follows from the answers. */
export const caution = defineKind({
  kind: "caution",
  word: "Caution",
  key: "n",
  order: 0,
  fields: [
    { name: "words", label: "What is dangerous", form: "line", hint: "the hazard itself" },
    { name: "consequence", label: "What can happen", form: "line" },
    {
      name: "harms",
      label: "To whom or what",
      form: "choice",
      choices: [
        { value: "person", label: "a person" },
        { value: "thing", label: "a thing only" },
      ],
    },
    {
      name: "severity",
      label: "How bad",
      form: "choice",
      choices: [
        { value: "serious", label: "death or serious injury" },
        { value: "minor", label: "minor or moderate injury" },
        { value: "damage", label: "damage only" },
      ],
    },
    {
      name: "likelihood",
      label: "How likely, if not avoided",
      form: "choice",
      choices: [
        { value: "will", label: "it will happen" },
        { value: "could", label: "it could happen" },
      ],
    },
    { name: "avoid", label: "How to avoid it", form: "text" },
    { name: "sourceNote", label: "Source", form: "line", hint: "who says so, and where" },
  ],
  needs: { words: required("the hazard"), avoid: required("how to avoid it") },
});
