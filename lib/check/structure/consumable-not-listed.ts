import type { Rule } from "../rule.ts";
import { about, below, fires, quoted } from "../wording/say.ts";
import { unlisted, usedThing } from "./supplies.ts";

const consumables = usedThing(
  "white spirit|paraffin|petrol|methylated spirit|meths|isopropyl alcohol|isopropanol|acetone|penetrating oil|engine oil|gear oil|clock oil|sewing-machine oil|machine oil|grease|threadlock|thread locker|sealant|jointing compound|engineer's blue|marking blue|emery cloth|emery paper|wire wool|steel wool|bronze wool|grinding paste|valve paste|metal polish|citric acid|phosphoric acid|electrolyte|washing soda|flux|solder|contact cleaner|shellac|varnish|wax|glue|epoxy|locking wire|talc|graphite",
);

/** Something used up that a step uses, and that nobody is told to buy. */
export const consumableNotListed: Rule = {
  id: "consumable-not-listed",
  title: "A consumable that is on no list",
  explanation:
    "The list of consumables is the union of what the steps list. What only stands in the words of a step is missed on a Sunday evening.",
  source: "common practice, no source",
  check: (view) =>
    unlisted(view, consumables, view.procedure.consumables, (passage, name) =>
      about(passage, {
        rule: "consumable-not-listed",
        severity: "advice",
        evidence: name.toLowerCase(),
        found: `${quoted(passage, passage.text)} uses “${name}”, which no step lists.`,
        expected: "Everything that is used up on the list of consumables.",
        todo: "List it, with how much.",
        source: consumableNotListed.source,
        mends: [{ name: "list-consumable", says: `List “${name}”`, with: name }],
      }),
    ),
  examples: [
    ...fires(
      "Wipe the bore with white spirit on a cloth.",
      "Flush the tuner with isopropyl alcohol.",
      "Fill the cup with grease.",
    ),
    ...below(1, "Clean the track with fine bronze wool."),
    {
      says: "listed",
      sketch: {
        marks: [
          [1, "consumable", { words: "White spirit", amount: "20 ml" }],
          [2, "action", { words: "Wipe the bore with white spirit." }],
        ],
      },
      finds: 0,
    },
    ...below(
      0,
      "Never clean it with petrol.",
      "Do not touch the slip rings with emery cloth.",
      "Grease the lip.",
      "The joint was made in shellac.",
    ),
  ],
};
