import { near, numberIn, plain, sayIn, slipWords, stepOf } from "../figures.ts";
import { type EntryRule, firstOf, type Remark } from "../rule.ts";
import type { Fact, Sight } from "../sight.ts";

/** Turns of a screw, its pitch, and how far it moved. */
export const screwTravel: EntryRule = {
  id: "screw-travel",
  title: "Turns, pitch and travel",
  explanation:
    "A screw of one start moves by its pitch in a turn. Turns and travel that the pitch does not join were miscounted.",
  source: "arithmetic: travel is turns by pitch",
  check: (sight) => firstOf(sight, pieces, lead),
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
    {
      says: "sixteen threads an inch advance a sixteenth",
      entry: { text: "0.0625 in", what: "advance per turn", context: { spec: "single start, 16 tpi" } },
      finds: 0,
    },
    {
      says: "and no five eighths",
      entry: { text: "0.625 in", what: "advance per turn", context: { spec: "single start, 16 tpi" } },
      finds: 1,
    },
    {
      says: "four threads an inch are a quarter of an inch apart",
      entry: { text: "0.0250 in", what: "leadscrew pitch", context: { spec: "4 tpi" } },
      finds: 1,
    },
    {
      says: "two starts of 3 mm advance 6 mm",
      entry: { text: "3 mm", what: "lead of the screw", context: { spec: "two-start, 3 mm pitch" } },
      finds: 1,
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

const perTurn =
  /\b(?:advance|travel|movement|moves?|feed|rise|lift)\b.{0,24}\b(?:per|for (?:one|each|every|a)|in (?:one|a)|each|a) (?:full |whole |complete )?(?:turn|rev)|\blead\b(?!.{0,3}(?:screw|angle|wire|of the valve))/;

const isPitch = /\bpitch\b/;

/** A screw advances by its pitch and its starts in a turn. */
function lead(sight: Sight): Remark[] {
  const { main, what, facts, all } = sight;
  const pitchItself =
    isPitch.test(what) &&
    !/\b(?:circle|diametral|gear|tooth|chain|links?|rivets?|holes?|coils?)\b/.test(what);
  if (main?.dimension !== "length" || !(main.si > 0) || !(pitchItself || perTurn.test(what))) return [];
  const pitches = facts.filter(
    (fact) =>
      fact !== main &&
      (fact.dimension === "thread pitch" ||
        (!pitchItself && fact.dimension === "length" && /\bpitch\b/.test(fact.label))),
  );
  const [pitch] = pitches;
  const starts = pitchItself ? 1 : startsOf(all);
  if (!pitch || pitches.length > 1 || starts === null || /\b(?:gear|geared|dividing|worm)\b/.test(all))
    return [];
  const should = starts * (pitch.dimension === "thread pitch" ? 1 / pitch.si : pitch.si);
  if (near(should, main.si, 0.015) || Math.abs(should - main.si) <= stepOf(main) * 0.51) return [];
  return [
    {
      severity: "wrong",
      found: `${what} ${main.raw}, at ${pitch.raw}.`,
      expected: `${sayIn(should, main.quantity, 4)}: the pitch by ${starts === 1 ? "one start" : `${starts} starts`}.`,
      meant: `${sayIn(should, main.quantity, 4)}? ${slipWords(main.si, should, "length") ?? ""}`.trim(),
    },
  ];
}

/** How many threads run beside each other; null where a number is said that is not understood. */
function startsOf(all: string): number | null {
  if (!/\b(?:multi|starts?)\b/.test(all)) return 1;
  const said =
    /\b(single|one|1|double|two|twin|2|triple|three|3|quadruple|four|4|six|6|eight|8)[- ]starts?\b/.exec(all);
  return said ? (startWords[said[1] ?? ""] ?? numberIn(said[1] ?? "")) : null;
}

const startWords: Record<string, number> = { single: 1, double: 2, twin: 2, triple: 3, quadruple: 4 };
