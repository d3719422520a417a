import { readSentence } from "../english/index.ts";
import { instructions } from "../passages.ts";
import type { Rule } from "../rule.ts";
import { about, fires, quoted, silent } from "./say.ts";

/** An instruction whose object is "it". */
export const whichPart: Rule = {
  id: "which-part",
  title: "“It”, and no part named",
  explanation:
    "Steps are read alone: after an interruption, on a page that was parted from the one before, through a link. An instruction that only says “it” or “them” needs the step above to be understood.",
  source: "common practice, no source",
  check: (view) =>
    instructions(view)
      .filter(({ is, text }) => is === "instruction" && onlyIt(text))
      .map((passage) =>
        about(passage, {
          rule: "which-part",
          severity: "advice",
          evidence: passage.text,
          found: `${quoted(passage, passage.text)} does not name the part.`,
          expected: "The name of the part.",
          todo: "Write the name in place of “it” or “them”.",
          source: whichPart.source,
        }),
      ),
  examples: [
    ...fires("Lift it off.", "Press them in square.", "Now turn it over.", "Wipe it with a dry cloth."),
    ...silent(
      "Lift the cover off.",
      "If the bush is worn, press it out.",
      "Undo the nuts and bag them.",
      "Offer the gauge up and read it.",
      "Do not force it: the vanes are brass.",
    ),
  ],
};

/** Whether the object right after the verb is a pronoun, and nothing before the verb can have named it. */
function onlyIt(text: string): boolean {
  const { words, command } = readSentence(text);
  if (!command || command.led || text.includes(":")) return false;
  const verb = words.findIndex((word) => word.low === command.verb);
  const after = words.slice(verb + 1, verb + 3).map((word) => word.low);
  return (
    after[0] === "it" ||
    after[0] === "them" ||
    (particles.has(after[0] ?? "") && (after[1] === "it" || after[1] === "them"))
  );
}

const particles = new Set("off up out in on down over back".split(" "));
