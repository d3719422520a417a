import { passages } from "../passages.ts";
import type { Rule } from "../rule.ts";
import { about, below, fires, quoted, silent } from "./say.ts";

const phrases: readonly [RegExp, string][] = [
  [/\b(?:as|where|when|if) (?:required|appropriate)\b/i, "by what one knows that it is"],
  [/\b(?:suitable|suitably|appropriate|adequate|adequately)\b(?! for\b)/i, "which, or how much"],
  [
    /\b(?:good and tight|nice and tight|tighten (?:\p{L}+ ){1,4}(?:well|firmly|securely|fully)|up tight)\b/iu,
    "the torque, or how far by feel",
  ],
  [/\b(?:in the (?:usual|normal|proper|correct) (?:way|manner|order)|the usual way)\b/i, "the way"],
  [/\betc\b/i, "the rest of the list"],
  [/\ba (?:certain|suitable) (?:amount|number|distance|length|time)\b/i, "how much"],
];

/** Words that leave the deciding thing to the reader. */
export const vague: Rule = {
  id: "vague",
  title: "Words that leave it open",
  explanation:
    "“Suitable”, “as required”, “good and tight”: who wrote it knew what was meant, and the reader has to guess it. Plain habits of the trade (finger-tight, a smear, half a turn) say enough and are left alone.",
  source: "common practice, no source",
  check: (view) =>
    passages(view)
      .filter(({ is }) => is !== "note")
      .flatMap((passage) => {
        const hits = phrases.flatMap(([pattern, lacks]) => {
          const match = pattern.exec(passage.text);
          return match ? [{ said: match[0], lacks }] : [];
        });
        const [first] = hits;
        if (!first) return [];
        return about(passage, {
          rule: "vague",
          severity: "advice",
          evidence: hits.map(({ said }) => said.toLowerCase()).join("\n"),
          found: `${quoted(passage, passage.text)}: “${first.said}” leaves open ${first.lacks}.`,
          expected: "What the reader cannot know: a size, a name, a feel, a sign to look for.",
          todo: "Say it, or leave the words out.",
          source: vague.source,
        });
      }),
  examples: [
    ...fires(
      "Draw the bearing with a suitable puller.",
      "Tighten the gland nut securely.",
      "Adjust the tension as required.",
      "Clean plugs, points etc. with petrol.",
      "Refit the dial in the usual way.",
    ),
    ...below(1, "Use an appropriate grade of oil."),
    ...silent(
      "Run the nuts on, finger-tight.",
      "Nip up the locknut.",
      "Wipe a smear of grease on the lip.",
      "Carefully ease the platen out.",
      "Turn the screw back a little on each side.",
      "Use a grease suitable for brass.",
    ),
  ],
};
