import { finding } from "#lib/finding/index.ts";
import { isVerb, readSentence } from "../english/index.ts";
import { instructions } from "../passages.ts";
import type { Rule, Sketch } from "../rule.ts";

const several =
  /\b(?:three|four|five|six|seven|eight|nine|ten|twelve|sixteen|all|[3-9]|1\d)\s+(?:\p{L}+[\s-]+){0,3}(?:nuts|bolts|screws|studs)\b/iu;
const order =
  /\b(?:cross|crosswise|diagonal\w*|star|sequence|in (?:the )?order|stages?|passes|opposite|evenly|in turn|a little (?:at a time|on each)|turn at a time|from the (?:middle|centre|center)|outwards|alternat\w+|finger-tight|hand-tight|by hand|round and round)\b/i;
const tightens = new Set(["tighten", "torque", "nip", "pinch"]);

/** Several fasteners of one joint, tightened in no order. */
export const tighteningOrder: Rule = {
  id: "tightening-order",
  title: "Several fasteners, and no order",
  explanation:
    "A cover or head on more than two nuts is drawn down crooked if they are tightened one after the other. The order, and in how many stages, is part of the instruction.",
  source: "common practice, no source",
  check: (view) =>
    instructions(view)
      .filter(({ is, text, step }) => {
        const verb = readSentence(text).command?.verb ?? "";
        const whole = [text, ...step.details.map((one) => one.text)].join(" ");
        return (
          is === "instruction" &&
          isVerb(verb) &&
          tightens.has(verb) &&
          several.test(text) &&
          !order.test(whole)
        );
      })
      .map(({ step, text }) =>
        finding({
          rule: "tightening-order",
          severity: "doubtful",
          place: { mark: step.mark, field: "words" },
          evidence: text,
          found: `Step ${step.number}: “${text}” says no order and no stages.`,
          expected: "In a cross, from the middle outwards, a half turn each: as it was done.",
          todo: "Write the order and the stages; answer where they hold separate things.",
          source: tighteningOrder.source,
        }),
      ),
  examples: [
    { says: "head nuts", sketch: says("Tighten the ten head nuts to 24 lbf ft."), finds: 1 },
    { says: "four cover nuts", sketch: says("Tighten the four cover nuts."), finds: 1 },
    { says: "in figures", sketch: says("Torque all 6 bed bolts to 70 N m."), finds: 1 },
    { says: "nip up", sketch: says("Nip up the four bearing screws."), finds: 1 },
    { says: "in a cross", sketch: says("Tighten the four cover nuts in a cross."), finds: 0 },
    {
      says: "said below",
      sketch: says("Tighten the six bolts.", "In two stages, from the middle."),
      finds: 0,
    },
    { says: "two only", sketch: says("Tighten the two gland nuts."), finds: 0 },
    { says: "not tightened", sketch: says("Run the four nuts on."), finds: 0 },
  ],
};
function says(words: string, detail = ""): Sketch {
  return { marks: [[1, "action", { words, detail }]] };
}
