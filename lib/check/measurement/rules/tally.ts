import { type EntryRule, firstOf, type Remark } from "../rule.ts";
import { relatedFacts, type Sight } from "../sight.ts";

/** Pieces that were there, used and left over. */
export const tally: EntryRule = {
  id: "tally",
  title: "Used, and left over",
  explanation:
    "What was supplied is what was used and what is left over. Where the three do not agree, something lies on the bench or in the machine that nobody counts.",
  source: "arithmetic",
  check: (sight) => firstOf(sight, counted, moreThanHoles),
  examples: [
    {
      says: "all of 36 fitted, and 4 left over",
      entry: {
        text: "all 36 spokes fitted",
        what: "spoke count",
        context: {
          related: [
            { what: "spokes supplied", text: "36" },
            { what: "spokes left over", text: "4" },
          ],
        },
      },
      finds: 1,
    },
    {
      says: "32 fitted, 4 over",
      entry: {
        text: "32",
        what: "spokes fitted",
        context: {
          related: [
            { what: "spokes supplied", text: "36" },
            { what: "spokes left over", text: "4" },
          ],
        },
      },
      finds: 0,
    },
    {
      says: "more spokes than the rim has holes",
      entry: {
        text: "48 spokes",
        what: "spokes in the wheel",
        context: { related: [{ what: "holes in the rim", text: "36" }] },
      },
      finds: 1,
    },
  ],
};

const had =
  /\b(?:supplied|delivered|bought|received|in the kit|packet|in all|total|started with|to begin with|removed|taken out|came (?:off|out))\b/;
const left = /\b(?:left(?: over)?|spare|remaining|over|unused|returned)\b/;
const used = /\b(?:fitted|used|refitted|put (?:in|back)|installed|replaced|went (?:in|back))\b/;

function counted(sight: Sight): Remark[] {
  const { main, what, entry } = sight;
  const whole = (fact: { dimension: string; si: number }) =>
    ["count", "number"].includes(fact.dimension) && Number.isInteger(fact.si);
  if (!main || !whole(main) || !used.test(`${what} ${entry.text.toLowerCase()}`)) return [];
  if (main.quantity.qualifier !== "exact") return [];
  const others = relatedFacts(sight).filter(whole);
  const supplied = others.find((fact) => had.test(fact.name) && !left.test(fact.name));
  const over = others.find((fact) => left.test(fact.name) && !had.test(fact.name));
  if (!supplied || !over || others.length > 3 || main.si + over.si === supplied.si) return [];
  return [
    {
      severity: "wrong",
      found: `${main.raw}, with ${supplied.name} ${supplied.raw} and ${over.name} ${over.raw}.`,
      expected: `${supplied.si - over.si}.`,
      meant: `${supplied.si - over.si}?`,
    },
  ];
}

/** More spokes, studs or bolts than there are holes for them. */
function moreThanHoles(sight: Sight): Remark[] {
  const { main, what } = sight;
  const counts = (dimension: string) => dimension === "count" || dimension === "number";
  if (
    !main ||
    !counts(main.dimension) ||
    !/\b(?:spokes|studs|bolts|rivets|screws|nuts)\b/.test(`${what} ${main.raw.toLowerCase()}`)
  )
    return [];
  const holes = relatedFacts(sight).find(
    (fact) =>
      counts(fact.dimension) &&
      /\bholes in the (?:rim|hub|flange|cover|plate)\b|\b(?:rim|hub|stud|bolt|rivet) holes\b/.test(fact.name),
  );
  if (!holes || main.si <= holes.si || /\b(?:spare|bought|kit|supplied|in the box)\b/.test(what)) return [];
  return [
    {
      severity: "wrong",
      found: `${what} ${main.raw}, ${holes.name} ${holes.raw}.`,
      expected: `${holes.si} at the most.`,
    },
  ];
}
