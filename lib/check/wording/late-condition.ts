import { furtherCommands, readSentence, type Sentence, sentencesOf } from "../english/index.ts";
import { passages } from "../passages.ts";
import type { Rule } from "../rule.ts";
import { about, below, fires, quoted, silent } from "./say.ts";

/** A condition that is read after the hand has moved. */
export const lateCondition: Rule = {
  id: "late-condition",
  title: "A condition after its order",
  explanation:
    "Who works from the sheet acts as they read. “Turn the screw back if the lamp lights” has been turned back before the eye reaches the lamp. Condition first, then a comma, then the order. (“Until” says when to stop, and stays where it is.)",
  source: "Simplified Technical English, from public summaries: the condition first, with a comma",
  check: (view) =>
    passages(view)
      .filter(({ is }) => is !== "note")
      .flatMap((passage) => {
        const late = sentencesOf(passage.text).filter(({ text }) => lateIn(text) !== null);
        const [first] = late;
        if (!first) return [];
        return about(passage, {
          rule: "late-condition",
          severity: "advice",
          evidence: late.map(({ text }) => text).join("\n"),
          found: `${quoted(passage, first.text)} says on what it depends at the end.`,
          expected: `“${moved(first)}”`,
          todo: "Move the condition to the beginning.",
          source: lateCondition.source,
          mends: [{ name: "condition-first", says: "Move the condition first" }],
        });
      }),
  examples: [
    ...fires(
      "Tap the rim with a mallet if the cover sticks.",
      "Turn the mixture screw back, if the engine hunts.",
      "Renew the belt unless its edges are sound.",
      "Stop and disconnect the mains if the lamp in the lead glows bright.",
      "Back the hook off half a turn, if the needle touches it.",
    ),
    ...below(
      1,
      "Grease the lip. Press it out again if it tilts.",
      "Use a longer bolt if the bush is tight. Heat the boss if it will not move.",
    ),
    ...silent(
      "If the cover sticks, tap the rim with a mallet.",
      "Check if the needle bar is bent.",
      "See if the platen turns freely.",
      "Turn the screw in until it touches bottom.",
      "Undo the pinch bolt, if fitted.",
      "Hold the case as if it were full.",
      "Add a second shim if necessary.",
      "Note whether the lamp glows.",
      "Fit the guard even if the engine is only turned by hand.",
    ),
    ...below(0, "The seal leaks at once if it is reversed."),
  ],
};

/** Words before an "if" that is no condition of the order: "check if", "as if", "even if". */
const asking = new Set(
  "check see find ask note feel test try tell know decide look watch wonder as even only what and or not but out".split(
    " ",
  ),
);

interface Late {
  /** The end of the order, and the beginning of the condition. */
  end: number;
  condition: number;
}

/** Where in a sentence a condition follows its order, if it does and can be moved as it stands. */
function lateIn(sentence: string): Late | null {
  const { words, command } = readSentence(sentence);
  if (!command || command.led || asking.has(command.verb)) return null;
  const index = words.findIndex(({ low }) => low === "if" || low === "unless");
  const [before, condition] = [words[index - 1], words[index]];
  if (!before || !condition || words.length - index < 3 || asking.has(before.low)) return null;
  if (/[,;:()–—]/.test(sentence.slice(condition.from))) return null;
  if (/[;:()–—]|\bthen\b/.test(sentence.slice(0, condition.from))) return null;
  if (furtherCommands(sentence.slice(0, condition.from)).length > 0) return null;
  return { end: before.to, condition: condition.from };
}

function moved({ text }: Sentence): string {
  const late = lateIn(text);
  if (!late) return text;
  const stop = /[.!]+$/.exec(text)?.[0] ?? "";
  const condition = text.slice(late.condition, text.length - stop.length);
  const order = text.slice(0, late.end);
  return `${upper(condition)}, ${lower(order)}${stop}`;
}

/** A text with the conditions of its sentences moved first; other sentences and what parts them stay as they are. */
export function conditionsFirst(text: string): string {
  return sentencesOf(text).reduceRight(
    (whole, one) => whole.slice(0, one.from) + moved(one) + whole.slice(one.from + one.text.length),
    text,
  );
}

function upper(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

function lower(text: string): string {
  return text.charAt(0).toLowerCase() + text.slice(1);
}
