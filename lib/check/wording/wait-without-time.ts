import { sentencesOf } from "../english/index.ts";
import { instructions, type Passage } from "../passages.ts";
import type { Rule } from "../rule.ts";
import { about, below, fires, quoted, silent } from "./say.ts";

const waiting =
  /\b(?:(?:leave|let|allow)\b[^.,;]{0,60}\b(?:to )?(?:soak|cure|dry|set|harden|cool|settle|steep|go off)|(?:soak|steep|bake|pickle) (?:the|it|them|all|both|in)\b)/i;
const howLong =
  /\b(?:\d+\s*(?:min|minutes?|h|hours?|hrs?|days?|s|seconds?|weeks?)|half an hour|an hour|a day|two|three|overnight|over night|hours|days|minutes|until|till|no longer|at least|cold|maker|tin|data ?sheet|instructions)\b/i;

/** A wait that does not say how long, or until what. */
export const waitWithoutTime: Rule = {
  id: "wait-without-time",
  title: "A wait without an end",
  explanation:
    "“Leave it to cure” ends for one reader after a cup of tea and for another next Sunday. A wait says how long, or what shows that it is over.",
  source:
    "US DOE-STD-1029, writer's guide: time-dependent steps say the time and give place to record the start",
  check: (view) =>
    instructions(view).flatMap((passage) => {
      const waits = sentencesOf(passage.text).filter(({ text }) => waiting.test(text));
      const [first] = waits;
      if (!first || howLong.test(allOf(passage))) return [];
      if (passage.step.deferred.length > 0) return [];
      return about(passage, {
        rule: "wait-without-time",
        severity: "doubtful",
        evidence: waits.map(({ text }) => text).join("\n"),
        found: `${quoted(passage, first.text)} does not say how long, or until what.`,
        expected: "A time, or the sign that the wait is over.",
        todo: "Write the time from the tin or data sheet with its source, or what is seen when it is done.",
        source: waitWithoutTime.source,
      });
    }),
  examples: [
    ...fires(
      "Leave the joint to cure.",
      "Soak the chain in paraffin.",
      "Let the varnish dry.",
      "Allow the casting to cool in the sand.",
    ),
    ...below(1, "Glue both faces and leave to go off."),
    ...silent(
      "Leave the joint to cure overnight.",
      "Soak the chain in paraffin for 2 h.",
      "Let the iron cool until it can be held.",
      "Set the gap to 0.4 mm.",
      "Dry the bore with a cloth.",
    ),
    ...below(0, "Leave it to cure as long as the tin says."),
  ],
};

/** The text, and what its step says below it and of its result. */
function allOf({ text, step }: Passage): string {
  return [text, ...step.details.map((one) => one.text), step.result].join(" ");
}
