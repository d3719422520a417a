import { determiners, isVerb, readSentence } from "../english/index.ts";
import { instructions } from "../passages.ts";
import type { Rule } from "../rule.ts";
import { about, fires, quoted, silent } from "./say.ts";

/** An instruction that does not begin with what is to be done. */
export const verbFirst: Rule = {
  id: "verb-first",
  title: "An instruction that does not say what to do",
  explanation:
    "“The cover comes off” may be a report, a warning or an order. An instruction begins with its verb, or with a condition and a comma and then the verb, and cannot be read as anything else.",
  source: "Simplified Technical English, from public summaries: instructions in the imperative",
  check: (view) =>
    instructions(view)
      .filter(({ is, text }) => is === "instruction" && !orders(text))
      .map((passage) =>
        about(passage, {
          rule: "verb-first",
          severity: "advice",
          evidence: passage.text,
          found: `${quoted(passage, passage.text)} does not begin with an order.`,
          expected: "The verb first: “Undo the nuts”, or “If the cover sticks, tap its rim”.",
          todo: "Write it as you would say it to somebody at the bench.",
          source: verbFirst.source,
        }),
      ),
  examples: [
    ...fires(
      "The cover comes off straight.",
      "Removing the needle plate",
      "I now take the carriage off.",
      "The valves should be pulled before the set is turned over.",
      "You draw the bush with a long bolt.",
      "The nut is removed with a ring spanner.",
    ),
    ...silent(
      "Nip up the locknut.",
      "Offer up the cover, and look for daylight.",
      "Run a tap through the two holes.",
      "If the cover sticks, tap its rim.",
      "Carefully ease the platen out.",
      "With water on the joint, peel the gasket away.",
      "Do not force it.",
      "Unjam the feed dog.",
      "Bring to the boil.",
      "Before a nut is touched, measure the end float.",
    ),
  ],
};

/**
 * Whether a text orders something. What cannot be told counts as an order: the list of verbs is long, and the trade's
 * is longer.
 */
function orders(text: string): boolean {
  const { words, command } = readSentence(text);
  const [first, second] = words;
  if (command || !first) return true;
  if (determiners.has(first.low)) return false;
  if (/^\p{L}{3,}ing$/u.test(first.low) && !isVerb(first.low)) return text.includes(",");
  return !passive(text) || (second !== undefined && determiners.has(second.low));
}

function passive(text: string): boolean {
  return /^[^,]*\b(?:is|are|was|were|should be|must be|can be|may be|has to be|have to be|needs to be)\s+(?:\p{L}+ly\s+)?(?:\p{L}+ed|undone|taken|drawn|driven|bent|cut|put|set|drilled|ground|wound|held|let|hung|made)\b/iu.test(
    text,
  );
}
