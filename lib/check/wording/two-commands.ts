import { furtherCommands, readSentence, sentencesOf } from "../english/index.ts";
import { instructions } from "../passages.ts";
import type { Rule } from "../rule.ts";
import { about, fires, quoted, silent } from "./say.ts";

/** Two acts under one number. */
export const twoCommands: Rule = {
  id: "two-commands",
  title: "Two acts in one step",
  explanation:
    "A step is ticked once. With two acts in it, the tick after the first looks like a tick for both, and an interruption between them leaves no trace. Acts done at the same time, or with one grip, are one.",
  source:
    "Simplified Technical English, from public summaries: one instruction in a sentence, unless done at one time",
  check: (view) =>
    instructions(view)
      .filter(({ is }) => is === "instruction")
      .flatMap((passage) => {
        const commands = commandsOf(passage.text);
        if (commands.length < 2) return [];
        return about(passage, {
          rule: "two-commands",
          severity: "advice",
          evidence: passage.text,
          found: `${quoted(passage, passage.text)} asks for ${commands.length === 2 ? "two things" : `${commands.length} things`}.`,
          expected: `A step each: ${commands.map((one) => `“${one}”`).join(" ")}`,
          todo: "Make a step of each, or put the second into the paragraph below where it only says how.",
          source: twoCommands.source,
          mends: [
            {
              name: "split-step",
              says: commands.length === 2 ? "Make two steps" : `Make ${commands.length} steps`,
            },
          ],
        });
      }),
  examples: [
    ...fires(
      "Undo the four nuts and lift the cover off.",
      "Slacken the locknut, then turn the adjuster back.",
      "Unsolder the two leads and remove the transformer.",
      "Drain the sump, refit the plug and pour in the new oil.",
      "Remove the platen. Unhook the carriage spring.",
      "Slacken the union; withdraw the pipe.",
    ),
    ...silent(
      "Clean and dry the bore.",
      "Undo and remove the two screws.",
      "Turn the shaft and watch the needle.",
      "Hold the bolt and turn the nut.",
      "Oil the pin and the bush.",
      "Wipe nut and seat with a dry cloth.",
      "Undo the nuts and bag them.",
      "Lift the lever while you turn the wheel.",
      "Rub the joint down and polish.",
      "Fit the cover and seal with the witness mark in line.",
      "Fit the key, flat side up and level with the shaft.",
      "Press the bush in until it stands flush and the oil hole is in line.",
    ),
  ],
};

/** The commands of an instruction, each as a sentence; one where there is nothing to part. */
export function commandsOf(instruction: string): string[] {
  const sentences = sentencesOf(instruction).map(({ text }) => text);
  const [first] = sentences;
  // Sentences that order nothing say how: "Lift it off. It is heavy."
  if (first === undefined || sentences.some((text) => readSentence(text).command === null))
    return sentences.slice(0, 1);
  return sentences.flatMap(partsOf);
}

/** The acts of one sentence. One that depends on a condition is not parted: the condition may govern both. */
function partsOf(sentence: string): string[] {
  if (readSentence(sentence).command?.led) return [sentence];
  const further = furtherCommands(sentence);
  const starts = [0, ...further.map(({ from }) => from)];
  const ends = [...further.map(({ joint }) => joint), sentence.length];
  return starts.map((start, index) => asSentence(sentence.slice(start, ends[index])));
}

function asSentence(part: string): string {
  const words = part.trim().replace(/[\s,;.]+$/, "");
  return `${words.charAt(0).toUpperCase()}${words.slice(1)}.`;
}
