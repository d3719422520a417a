import { sentencesOf, wordsIn } from "../english/index.ts";
import { instructions, type Passage } from "../passages.ts";
import type { Rule } from "../rule.ts";
import { about, below, fires, quoted, silent } from "./say.ts";

const most = { instruction: 20, detail: 25 };

/** A sentence that cannot be carried from the page to the vice. */
export const longSentence: Rule = {
  id: "long-sentence",
  title: "A sentence too long to carry to the bench",
  explanation:
    "A reader looks at the sheet, then at the work, and has to hold the sentence in between. An instruction of more than 20 words, or a sentence of explanation of more than 25, is read twice or half.",
  source: "Simplified Technical English, from public summaries: 20 words in a procedure, 25 in a description",
  check: (view) =>
    instructions(view).flatMap((passage) => {
      const long = sentencesOf(passage.text).filter(({ text }) => wordsIn(text).length > limitOf(passage));
      const [first] = long;
      if (!first) return [];
      return about(passage, {
        rule: "long-sentence",
        severity: "advice",
        evidence: long.map(({ text }) => text).join("\n"),
        found: `${quoted(passage, first.text)} has ${wordsIn(first.text).length} words.`,
        expected: `At most ${limitOf(passage)} words, a number with its unit counted as one.`,
        todo: "Make two sentences of it, or leave out what the picture shows.",
        source: longSentence.source,
      });
    }),
  examples: [
    ...fires(
      "Slide the shaft in from the pulley end with the new thrust washer against the boss and turn the shaft slowly as its end passes the lip of the seal.",
      "Solder the mains lead to the two outer tags of the switch that stand nearest to the edge of the chassis and keep the iron clear of the old wax.",
    ),
    ...below(
      1,
      "The old hook was bent at some time by a needle that was set too low, and the small burr which that left on its point has been frayed into every thread since then.",
      "Grease it. The bearing is held between the shoulder of the shaft and the ring nut, and because the shoulder is only a few thou high it can be pressed past its seat without any feeling of resistance.",
    ),
    ...silent(
      "Press the new lip seal in square, with its lip towards the impeller.",
      "Tighten the ten nuts to 12 lbf ft (16.3 N m), then to 24 lbf ft (32.5 N m), from the middle outwards in a cross.",
      "Set the gap at approx. 0.015 in. with No. 2 feeler blades while the cam stands on its highest point.",
      "Nip up the locknut.",
    ),
    ...below(0, "Half a turn on each before any comes off, so that the cover is not bent."),
  ],
};

function limitOf({ is }: Passage): number {
  return is === "instruction" ? most.instruction : most.detail;
}
