import { alsoNouns, determiners, readSentence, sentencesOf } from "../english/index.ts";
import { passages } from "../passages.ts";
import type { Rule } from "../rule.ts";
import { about, quoted } from "./say.ts";

/** An order that stands where only facts are looked for. */
export const orderInNote: Rule = {
  id: "order-in-note",
  title: "An order in a note",
  explanation:
    "Notes of parts, tools and measurements print small, in lists, without a box to tick. What is to be done and stands only there is not done.",
  source: "Simplified Technical English, from public summaries: a note informs and orders nothing",
  check: (view) =>
    passages(view)
      .filter(({ is }) => is === "note")
      .flatMap((passage) => {
        const orders = sentencesOf(passage.text).filter(({ text }) => isPlainOrder(text));
        const [first] = orders;
        if (!first) return [];
        return about(passage, {
          rule: "order-in-note",
          severity: "advice",
          evidence: orders.map(({ text }) => text).join("\n"),
          found: `${quoted(passage, first.text)} is an order, in a note.`,
          expected: "Notes that say how things are; orders in the step.",
          todo: "Write it into the instruction or the paragraph below it, or make it a step.",
          source: orderInNote.source,
        });
      }),
  examples: [
    ...notes(
      1,
      "Renew the washer whenever the plug is out.",
      "Dirty. Soak the chain in paraffin.",
      "Bend the tab over after tightening.",
      "Do not clean the contacts with emery.",
    ),
    ...notes(
      0,
      "Lies on the bench, right of the pump.",
      "Lip hard, with a groove worn in.",
      "Seal groove scored, press fit, 6 thou.",
      "Clean.",
      "Turn and a half out, as found.",
    ),
  ],
};

function notes(finds: number, ...texts: string[]): Rule["examples"] {
  return texts.map((words) => ({
    says: words,
    sketch: {
      marks: [
        [1, "action", { words: "Fit the plug." }],
        [2, "part", { item: "Plug", event: "fitted", words }],
      ],
    },
    finds,
  }));
}

/** An order that cannot be a description: a verb, then a word such as "the". */
function isPlainOrder(sentence: string): boolean {
  const { words, command } = readSentence(sentence);
  if (!command || command.led) return false;
  if (/^(?:do not|don't|never)\b/i.test(sentence)) return true;
  const verb = words.findIndex((word) => word.low === command.verb);
  const next = words[verb + 1]?.low ?? "";
  return (
    verb === 0 && next !== "a" && determiners.has(next) && !(alsoNouns.has(command.verb) && next !== "the")
  );
}
