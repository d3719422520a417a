import { near, numberIn, plain } from "../figures.ts";
import type { EntryRule } from "../rule.ts";
import type { Sight } from "../sight.ts";

/** Turns and holes of a dividing head for so many divisions. */
export const dividingHead: EntryRule = {
  id: "dividing-head",
  title: "Turns of the dividing head",
  explanation:
    "A dividing head of 40 to 1 turns its work once for forty turns of the crank, so each of N divisions takes 40/N turns. The fraction is set as holes on a circle of the plate. Turned about, the work comes out with another number of teeth.",
  source: "arithmetic: turns for a division are the head's ratio by the divisions",
  check: (sight) => {
    if (!/dividing|index|rotary|division|circular table/.test(sight.all)) return [];
    if (
      !forOne.test(sight.what) ||
      /\b(?:revolution|full turn|whole turn|half turn|once round|offset)\b/.test(sight.all)
    )
      return [];
    const set = settingIn(sight.entry.text.toLowerCase());
    const ratio = headRatio(sight);
    const divisions = divisionsOf(sight);
    if (set === null || ratio === null || divisions === null) return [];
    const should = ratio / divisions;
    if (near(set, should, 0.0005)) return [];
    return [
      {
        severity: "wrong" as const,
        found: `“${sight.entry.text}”: ${plain(set)} turns, ${plain(ratio / set, 4)} divisions.`,
        expected: `${plain(ratio)}/${plain(divisions)} = ${plain(should)} turns for each of ${plain(divisions)}.`,
        meant: near(set, 1 / should, 0.001) ? "the fraction turned about?" : `${plain(should)} turns?`,
      },
    ];
  },
  examples: [
    {
      says: "thirty teeth by forty",
      entry: {
        text: "1 turn and 6 holes on the 18 circle",
        what: "indexing for each tooth",
        context: { part: "dividing head, 40:1", related: [{ what: "teeth to cut", text: "30" }] },
      },
      finds: 0,
    },
    {
      says: "turned about",
      entry: {
        text: "15 holes on the 20 circle",
        what: "indexing for each tooth",
        context: { part: "dividing head, 40:1", related: [{ what: "teeth to cut", text: "30" }] },
      },
      finds: 1,
    },
    {
      says: "a rotary table of ninety",
      entry: {
        text: "5 turns",
        what: "crank turns for each hole",
        context: { part: "rotary table, 90:1", related: [{ what: "holes", text: "18, equally spaced" }] },
      },
      finds: 0,
    },
  ],
};

const forOne =
  /\b(?:each|every|per|teeth|tooth|slots?|divisions?|divid\w+|index\w*|flutes?|holes?|sides?|graduations?|setting)\b/;

const holes =
  /\b(\d{1,3}) holes? (?:on|in|of) (?:the |a )?(\d{1,3})(?:[- ]hole)? ?(?:circle|row|plate|ring|hole)?/;
const turns =
  /\b(\d{1,3}(?:[- ]\d{1,2}\/\d{1,2}|\.\d+)?|\d{1,2}\/\d{1,2}|one|two|three|four|five) (?:full |whole |complete )?turns?\b/;

/** Turns of the crank, whole and in holes. */
function settingIn(text: string): number | null {
  const [whole, part] = [turns.exec(text), holes.exec(text)];
  if (!whole && !part) return null;
  const full = whole ? numberIn(whole[1] ?? "") : 0;
  return full + (part ? Number(part[1]) / Number(part[2]) : 0);
}

const isHead =
  /\b(?:dividing (?:head|engine|attachment)|indexing (?:head|plate)|index(?:ing)?|rotary table|division plate|circular table)\b/;

function headRatio({ all }: Sight): number | null {
  if (!isHead.test(all)) return null;
  const told = /\b(\d{2,3}) ?(?::|to) ?(?:1|one)\b/.exec(all);
  if (told) return Number(told[1]);
  return /\bdividing head\b/.test(all) ? 40 : null;
}

function divisionsOf({ facts, all }: Sight): number | null {
  const fact = facts.find(
    (one) =>
      one.from !== "text" &&
      (one.dimension === "number" || one.dimension === "count") &&
      /\b(?:teeth|divisions?|holes?|flutes|slots|graduations|sides|to cut|to drill)\b/.test(
        `${one.label} ${one.quantity.unit}`,
      ) &&
      !one.quantity.terms,
  );
  if (fact) return fact.si > 1 ? fact.si : null;
  const said = /\b(\d{1,3}) (?:teeth|divisions|flutes|slots|graduations)\b/.exec(all);
  return said ? Number(said[1]) : null;
}
