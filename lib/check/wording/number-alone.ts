import { sentencesOf } from "../english/index.ts";
import { instructions } from "../passages.ts";
import type { Rule } from "../rule.ts";
import { about, below, fires, quoted, silent } from "./say.ts";

/** Work in which a bare number is a size, a torque or a gap. */
const sized =
  /\b(?:torque|tighten|gap|clearance|float|backlash|end play|gauge|ream|bore|hone|grind|turn down|shim|set|pack|preload)\b/i;
const bare =
  /\b(?:to|at|by|is|of|than|about|=)\s+(\d*[.,]\d+|\d+)(?=\s*(?:[.;]?$|[,;)]|\b(?:and|or|with|before|after|while|for|in a|all|on)\b))/gi;

/** A number in an instruction that does not say of what. */
export const numberAlone: Rule = {
  id: "number-alone",
  title: "A number with no unit, in words",
  explanation:
    "“Torque to 12” is done in pounds-feet by one reader and in newton metres by the next, and “a gap of 0.4” in inches by a third.",
  source: "ISO 80000-1 (from memory): the value of a quantity is a number and a unit",
  check: (view) =>
    instructions(view).flatMap((passage) => {
      const numbers = sentencesOf(passage.text).flatMap(({ text }) => bareIn(text));
      if (numbers.length === 0) return [];
      return about(passage, {
        rule: "number-alone",
        severity: "doubtful",
        evidence: numbers.join("\n"),
        found: `${quoted(passage, passage.text)}: ${numbers.map((one) => `“${one}”`).join(", ")} has no unit.`,
        expected: "A number with its unit.",
        todo: "Write the unit after the number, as on the instrument or in the book.",
        source: numberAlone.source,
      });
    }),
  examples: [
    ...fires(
      "Tighten the head nuts to 24.",
      "Set the hook clearance to 0.05, with the needle at its lowest.",
      "Ream the bush to 0.4375.",
      "Grind the valve stem by 0.2 and try again.",
    ),
    ...below(1, "The float is set at 0.3 with the arm hanging free."),
    ...silent(
      "Tighten the head nuts to 24 lbf ft.",
      "Set the gap to 0.015 in.",
      "Tighten the nuts in the order of 1 to 4.",
      "Turn the dial to 4.",
      "Set the stitch lever to 3 before the test.",
      "Tighten nuts 1 to 4, then 5 to 8.",
      "Set the clock to 12:00.",
      "Set the range switch to R × 10.",
    ),
    ...below(0, "Torque as in step 4.", "Use 2 of the 4 shims."),
  ],
};

/** A whole number after "set" is the mark of a dial or lever; a decimal is not. */
function bareIn(sentence: string): string[] {
  if (!sized.test(sentence)) return [];
  const dial = /\b(?:dial|lever|switch|knob|mark|position|number|order|scale|stitch)\b/i.test(sentence);
  return [...sentence.matchAll(bare)]
    .filter((match) => !/(?:steps?|nos?\.?|grade|mark|\d)\s*$/i.test(sentence.slice(0, match.index)))
    .map((match) => match[1] as string)
    .filter((number) => /[.,]/.test(number) || (!dial && /\b(?:torque|tighten)\b/i.test(sentence)));
}
