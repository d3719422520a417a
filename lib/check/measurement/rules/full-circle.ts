import { near, plain } from "../figures.ts";
import type { EntryRule } from "../rule.ts";

/** So many teeth or slots of so many degrees are once round. */
export const fullCircle: EntryRule = {
  id: "full-circle",
  title: "Once round",
  explanation:
    "Teeth, clicks, slots or graduations that stand evenly round a wheel come to 360 degrees. A count and an angle that do not give it were miscounted.",
  source: "geometry",
  check: (sight) => {
    const { facts, main, all } = sight;
    const count = facts.find(
      (fact) => fact.dimension === "count" && fact.si > 1 && Number.isInteger(fact.si) && !fact.quantity.high,
    );
    const angle = facts.find(
      (fact) =>
        fact.dimension === "angle" &&
        fact.quantity.ucum !== "circ" &&
        fact !== count &&
        fact.si > 0 &&
        each.test(`${fact.label} ${fact.raw.toLowerCase()}`),
    );
    if (!count || !angle || (main !== count && main !== angle)) return [];
    if (
      /\b(?:pressure angle|helix|sector|segment|lead|rake|advance|timing|missing|backlash|per turn|sweep)\b/.test(
        all,
      )
    )
      return [];
    const round = (count.si * angle.si) / (2 * Math.PI);
    if (near(round, 1, 0.012)) return [];
    return [
      {
        severity: "wrong" as const,
        found: `${count.raw} of ${angle.raw}: ${plain(round * 360, 4)}°.`,
        expected: `360°: ${plain((2 * Math.PI) / angle.si, 3)} of ${angle.raw}, or ${plain(360 / count.si, 3)}° each.`,
      },
    ];
  },
  examples: [
    {
      says: "24 teeth of 15 degrees",
      entry: {
        text: "24 teeth",
        what: "ratchet",
        context: { related: [{ what: "one tooth", text: "15°" }] },
      },
      finds: 0,
    },
    {
      says: "and not 25",
      entry: {
        text: "25 teeth",
        what: "ratchet",
        context: { related: [{ what: "one tooth", text: "15°" }] },
      },
      finds: 1,
    },
  ],
};

const each =
  /\b(?:one|each|per|a|every) (?:tooth|click|slot|spoke|blade|division|notch|step|pole)\b|\btooth to tooth\b|\bbetween (?:teeth|slots|spokes|notches|blades)\b|\bindexes by\b/;
