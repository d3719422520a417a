import { finding } from "#lib/finding/index.ts";
import { signalWord, wordsOf } from "#lib/mark/index.ts";
import type { Rule } from "./rule.ts";

/** A caution of which it has not been said who is harmed, how badly and how surely. */
export const cautionUnrated: Rule = {
  id: "caution-unrated",
  title: "A caution with no signal word",
  explanation:
    "DANGER, WARNING, CAUTION and NOTICE follow from who or what is harmed, how badly and how surely. Until that is answered the caution is printed without a word, and a reader cannot weigh it.",
  source: "ANSI Z535.6, from public summaries: the word follows from severity, then from likelihood",
  check: ({ marks }) =>
    [...marks.values()]
      .filter((mark) => mark.kind === "caution" && signalWord(mark.fields) === null)
      .map((mark) =>
        finding({
          rule: "caution-unrated",
          severity: "doubtful",
          place: { mark: mark.id, field: "harms" },
          evidence: [mark.fields.harms, mark.fields.severity, mark.fields.likelihood].join("\n"),
          found: `“${wordsOf(mark) || "A caution"}” does not say whom it harms, how badly or how surely.`,
          expected: "The three answers from which the signal word follows.",
          todo: "Answer them in the mark. Where you are not sure how bad it can be, take the worse.",
          source: cautionUnrated.source,
        }),
      ),
  examples: [
    { says: "not rated", sketch: { marks: [[1, "caution", { words: "Hot", avoid: "Wait" }]] }, finds: 1 },
    {
      says: "rated",
      sketch: {
        marks: [
          [
            1,
            "caution",
            { words: "Hot", avoid: "Wait", harms: "person", severity: "minor", likelihood: "could" },
          ],
          [2, "caution", { words: "The paint lifts", avoid: "Mask it", harms: "thing" }],
        ],
      },
      finds: 0,
    },
    {
      says: "damage alone takes no word of injury, so a person with “damage only” is not an answer",
      sketch: {
        marks: [[1, "caution", { words: "Hot", avoid: "Wait", harms: "person", severity: "damage" }]],
      },
      finds: 1,
    },
  ],
};
