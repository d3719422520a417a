import { near, plain, sayIn, stepOf } from "../figures.ts";
import type { EntryRule, Remark } from "../rule.ts";
import type { Fact, Sight } from "../sight.ts";

/** Turns of a screw, its pitch, and how far it moved. */
export const screwTravel: EntryRule = {
  id: "screw-travel",
  title: "Turns, pitch and travel",
  explanation:
    "A screw of one start moves by its pitch in a turn. Turns and travel that the pitch does not join were miscounted.",
  source: "arithmetic: travel is turns by pitch",
  check: (sight) => pieces(sight),
  examples: [
    {
      says: "three turns of 1.5 mm",
      entry: {
        text: "5.5 mm",
        what: "travel",
        context: {
          related: [
            { what: "turns", text: "3 turns" },
            { what: "pitch", text: "1.5 mm" },
          ],
        },
      },
      finds: 1,
    },
    {
      says: "are 4.5 mm",
      entry: {
        text: "4.5 mm",
        what: "travel",
        context: {
          related: [
            { what: "turns", text: "3 turns" },
            { what: "pitch", text: "1.5 mm" },
          ],
        },
      },
      finds: 0,
    },
  ],
};

/** Turns by pitch give travel. */
function pieces(sight: Sight): Remark[] {
  const { facts, main } = sight;
  if (!facts.some((fact) => fact.dimension === "angle")) return [];
  const turns = facts.find(
    (fact) => fact.dimension === "angle" && /turn|rev/.test(`${fact.quantity.unit} ${fact.label}`),
  );
  const pitch = facts.find(
    (fact) =>
      fact.dimension === "thread pitch" ||
      (fact.dimension === "length" && /\b(?:pitch|lead)\b/.test(fact.label) && !/circle/.test(fact.label)),
  );
  const travel = facts.find(
    (fact) =>
      fact.dimension === "length" &&
      fact !== pitch &&
      /\b(?:travel|moved?|moves|advance\w*|lift(?:ed)?|raised|lowered|movement|displacement|in by|out by|opens|gap opened)\b/.test(
        fact.label,
      ),
  );
  if (
    !turns ||
    !pitch ||
    !travel ||
    ![turns, pitch, travel].includes(main as Fact) ||
    /\bstarts?\b/.test(sight.all)
  )
    return [];
  const should = (turns.si / (2 * Math.PI)) * (pitch.dimension === "thread pitch" ? 1 / pitch.si : pitch.si);
  if (near(should, travel.si, 0.04) || Math.abs(should - travel.si) <= stepOf(travel) * 0.51) return [];
  return [
    {
      severity: "wrong",
      found: `${turns.raw} of a pitch of ${pitch.raw}, and ${travel.name} ${travel.raw}.`,
      expected: `${plain(turns.si / (2 * Math.PI), 3)} turns move ${sayIn(should, travel.quantity, 3)}.`,
      meant: `${sayIn(should, travel.quantity, 3)}?`,
    },
  ];
}
