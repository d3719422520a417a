import { readSentence, sentencesOf } from "../english/index.ts";
import { instructions } from "../passages.ts";
import type { Rule } from "../rule.ts";
import { about, below, quoted } from "./say.ts";

const weak =
  /^(?:[^,]*\b)?(?:should|ought to|may|might|could) (?:\p{L}+ )?be (?:\p{L}+ly )?(?:\p{L}+ed|undone|taken|drawn|driven|put|set|ground|wound|held|hung|made|cut)\b/iu;

/** An order that reads as a wish. */
export const weakOrder: Rule = {
  id: "weak-order",
  title: "“Should be”",
  explanation:
    "“The nuts should be tightened” may mean that somebody has done it, that it is a good idea, or that it must be done now. Below an instruction, where there is no number to tick, it is passed over.",
  source:
    "Simplified Technical English, from public summaries: the active voice, the imperative in procedures",
  check: (view) =>
    instructions(view)
      .filter(({ is }) => is === "detail")
      .flatMap((passage) => {
        const said = sentencesOf(passage.text).filter(
          ({ text }) => !readSentence(text).command && weak.test(text),
        );
        const [first] = said;
        if (!first) return [];
        return about(passage, {
          rule: "weak-order",
          severity: "advice",
          evidence: said.map(({ text }) => text).join("\n"),
          found: `${quoted(passage, first.text)} wishes more than it orders.`,
          expected: "An order where it is to be done, “is” where it only says how things are.",
          todo: "Write it as an order, as a step of its own where it is one.",
          source: weakOrder.source,
        });
      }),
  examples: [
    ...below(
      1,
      "The nuts should be tightened in a cross.",
      "The lip may be greased beforehand.",
      "The leads should first be unsoldered. The wax ought to be removed.",
      "The tension spring could be hooked on with a bent wire.",
    ).map((example) => (example.says.includes("should first") ? { ...example, finds: 1 } : example)),
    ...below(
      0,
      "Tighten the nuts in a cross.",
      "The gap should be 0.4 mm.",
      "The rim of the seal lies level all round.",
      "If the belt has to be renewed, measure the old one first.",
      "Keep the parts that may be used again.",
    ),
  ],
};
