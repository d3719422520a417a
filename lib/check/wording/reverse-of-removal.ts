import { passages } from "../passages.ts";
import type { Rule } from "../rule.ts";
import { about, below, fires, quoted, silent } from "./say.ts";

const reversal =
  /\b(?:(?:assembly|reassembly|refitting|fitting|installation) is (?:the |a |simply the |just the )?revers(?:e|al)|reverse (?:of|order of) (?:removal|dismantling|disassembly|strip|stripping|the strip)|(?:reassemble|refit|assemble|fit|install|replace|put [^.]* back)[^.]*\bin (?:the )?reverse (?:order|sequence))\b/i;

/** "Refitting is the reverse of removal." */
export const reverseOfRemoval: Rule = {
  id: "reverse-of-removal",
  title: "Refitting is not the reverse of removal",
  explanation:
    "Going back adds what taking off never had: clean, measure, renew, lubricate, seal, torque, lock, set. A step that says “in reverse order” hides all of them, and a reader will leave them out.",
  source: "common practice, no source",
  check: (view) =>
    passages(view).flatMap((passage) => {
      const match = reversal.exec(passage.text);
      if (!match) return [];
      return about(passage, {
        rule: "reverse-of-removal",
        severity: "doubtful",
        evidence: match[0].toLowerCase(),
        found: `${quoted(passage, passage.text)} stands for steps that are not written.`,
        expected: "The steps of the assembly, with what reversal never has.",
        todo: "Write the steps out, or film the assembly and mark it.",
        source: reverseOfRemoval.source,
      });
    }),
  examples: [
    ...fires(
      "Refit the tuner in reverse order.",
      "Reassembly is the reverse of removal.",
      "Put the carriage back in the reverse order.",
      "Assemble the gear train; it is the reverse of dismantling.",
    ),
    ...silent(
      "Reverse the belt on its pulleys.",
      "Turn the handwheel in reverse until the hook clears.",
      "Put the lever in reverse.",
      "Undo the nuts in the reverse of the tightening order.",
    ),
    ...below(1, "Refitting is the reverse of removal."),
  ],
};
