import { near, sayIn, slipWords, stepOf } from "../figures.ts";
import { type Given, given, limitsOf } from "../limits.ts";
import type { EntryRule, Remark } from "../rule.ts";
import type { Fact, Sight } from "../sight.ts";
import { decisionIn } from "../words.ts";

/** A value outside what was specified: a slip, or a finding that was let pass. */
export const againstSpec: EntryRule = {
  id: "outside-limits",
  title: "Outside its specification or limit",
  explanation:
    "A value outside its limits is a finding of the restorer's, and right if something is done about it: renewed, rejected, adjusted. One that was accepted, or about which nothing was decided, is asked about. If it is off by a factor of ten, of 25.4 or by a unit, a slip of the pen is likelier.",
  source: "arithmetic: the value against the limits given with it",
  check: (sight) => {
    const { main } = sight;
    if (!main || (/\b(?:as found|before|worn)\b/.test(sight.what) && decisionOf(sight) === "rejected"))
      return [];
    if (
      main.dimension === "resistance" &&
      /\b(?:black|brown|red|orange|yellow|violet|gr[ae]y)\b/i.test(sight.entry.context.spec ?? "")
    )
      return [];
    if (isMix(sight)) return [];
    const limits = [...limitsOf(sight, main)];
    const several = limits.filter(({ fact, nominal }) => nominal && fact.from === "spec");
    if (several.length > 1 && several.some((one) => !against(sight, main, one))) return [];
    for (const one of limits) {
      const remark = against(sight, main, one);
      if (remark) return [remark];
    }
    return [];
  },
  examples: [
    {
      says: "ten times the gap",
      entry: { text: "4.0 mm", what: "contact gap", context: { spec: "0.35-0.45 mm" } },
      finds: 1,
    },
    {
      says: "mm for thou",
      entry: { text: "8 mm", what: "tappet clearance", context: { spec: "8 thou" } },
      finds: 1,
    },
    {
      says: "over and accepted",
      entry: { text: "0.012 in", what: "backlash", context: { spec: "0.005-0.010 in", verdict: "accepted" } },
      finds: 1,
    },
    {
      says: "over and renewed",
      entry: {
        text: "0.012 in",
        what: "backlash",
        context: { spec: "0.005-0.010 in", verdict: "bevels to be re-shimmed" },
      },
      finds: 0,
    },
    {
      says: "within",
      entry: { text: "0.38 mm", what: "contact gap", context: { spec: "0.35-0.45 mm" } },
      finds: 0,
    },
    {
      says: "outside what it was made to, and within its limit of wear",
      entry: {
        text: "15 thou",
        what: "end float",
        context: { spec: "8 to 12 thou", limit: "at most 20 thou" },
      },
      finds: 0,
    },
    {
      says: "beyond its limit of wear",
      entry: {
        text: "23 thou",
        what: "end float",
        context: { spec: "8 to 12 thou", limit: "at most 20 thou" },
      },
      finds: 1,
    },
    {
      says: "within what is allowed at that load",
      entry: {
        text: "-0.6 g",
        what: "error at 1 kg",
        context: { spec: "±1 g at 1 kg", verdict: "within tolerance" },
      },
      finds: 0,
    },
    {
      says: "near a nominal size",
      entry: { text: "0.4985 in", what: "pin diameter", context: { spec: "1/2 in" } },
      finds: 0,
    },
    {
      says: "past the length at which it is scrapped, and kept",
      entry: {
        text: "12-1/8 in",
        what: "chain length over 12 full links",
        context: { spec: "scrap above 12-1/16 in", verdict: "good to use" },
      },
      finds: 1,
    },
    {
      says: "thinner than that at which it is renewed, and kept",
      entry: {
        text: "4.1 mm",
        what: "brake lining left",
        context: { spec: "renew under 5 mm", verdict: "good for another year" },
      },
      finds: 1,
    },
    {
      says: "thicker than that",
      entry: {
        text: "5.6 mm",
        what: "brake lining left",
        context: { spec: "renew under 5 mm", verdict: "good" },
      },
      finds: 0,
    },
    {
      says: "so much out of true, where less is allowed",
      entry: {
        text: "7 mm out of true",
        what: "rim",
        context: { spec: "within 3 mm", verdict: "good enough, fitted" },
      },
      finds: 1,
    },
    {
      says: "more than the safe working load",
      entry: {
        text: "6.5 t",
        what: "lifted on the block",
        context: { verdict: "held well, passed", related: [{ what: "safe working load", text: "5 t" }] },
      },
      finds: 1,
    },
    {
      says: "or below",
      entry: {
        text: "104 psi",
        what: "valve lifts at",
        context: { spec: "to lift at 100 psi or below", verdict: "accepted" },
      },
      finds: 1,
    },
    {
      says: "below the least",
      entry: { text: "5 mm", what: "brush length", context: { spec: "min 7 mm", verdict: "refitted" } },
      finds: 1,
    },
    {
      says: "a wear limit is a most for a bore",
      entry: {
        text: "70.15 mm",
        what: "cylinder bore",
        context: { related: [{ what: "wear limit", text: "70.10 mm" }], verdict: "fit for further use" },
      },
      finds: 1,
    },
  ],
};

/** Past the limit at which it is renewed, and put back after something less was done: honed, cleaned, dressed. */
const putBack = ({ verdict, remarks }: Sight, { raw }: Fact): boolean =>
  /\b(?:put back|refitted|re-?used|used again|back in|reassembled|kept|left|carried on|good enough|will do)\b/.test(
    `${verdict} ${remarks}`,
  ) && remedies.some((remedy) => remedy.test(raw) && !remedy.test(`${verdict} ${remarks}`));
const remedies = [
  /\brebor/i,
  /\brenew|\breplac/i,
  /\bscrap|\bdiscard|\bcondemn/i,
  /\bregr[io]/i,
  /\bre-?bush/i,
  /\bre-?line/i,
  /\breject/i,
];

const decisionOf = (sight: Sight) => decisionIn(`${sight.verdict} ${sight.remarks} ${wordsAfter(sight)}`);
const wordsAfter = (sight: Sight) =>
  sight.entry.text
    .toLowerCase()
    .replace(/\bin\b|\bout of (?:true|round|square|line|parallel|level|flat|balance|upright|plumb)\b/g, "");

/** "60 tin 40 lead": parts without a unit, which no single figure limits. */
const isMix = ({ reading }: Sight): boolean =>
  reading.kind === "list" && reading.parts.length > 1 && reading.parts.every((part) => part.kind === "bare");

function against(sight: Sight, main: Fact, { fact, low, high, nominal }: Given): Remark | null {
  const value = { low: main.low ?? main.si, high: main.high ?? main.si };
  const slack = Math.min(stepOf(main), stepOf(fact)) * 0.5001 + 1e-12;
  const tooHigh = high !== null && value.high > high + Math.min(slack, Math.abs(high) * 0.004 + 1e-15);
  const tooLow = low !== null && value.low < low - Math.min(slack, Math.abs(low) * 0.004 + 1e-15);
  if (!tooHigh && !tooLow) return null;
  const bound = (tooHigh ? high : low) ?? 0;
  const end = tooHigh ? value.high : value.low;
  const decided = putBack(sight, fact) ? "accepted" : decisionOf(sight);
  if (decided === "rejected") return null;
  const found = `${main.raw}, where ${fact.from === "spec" ? "the specification" : fact.name || "the limit"} is ${fact.raw}.`;
  const expected = sayLimits(low, high, main);
  const ratio = bound === 0 ? Number.POSITIVE_INFINITY : end / bound;
  const mid = low !== null && high !== null ? (low + high) / 2 : bound;
  const sameFigure =
    main.quantity.ucum !== fact.quantity.ucum &&
    near(main.quantity.value.number, fact.quantity.value.number, 0.25) &&
    main.dimension !== "temperature";
  if (main.dimension === "temperature" && fact.quantity.role !== "difference")
    return temperature(main, fact, { end, bound, nominal, found, expected, decided });
  if (sameFigure && (ratio > 1.25 || ratio < 0.8))
    return {
      severity: "doubtful",
      found,
      expected,
      meant: `${main.quantity.value.number} ${fact.quantity.unit}?`,
    };
  if (ratio >= 2.5 || ratio <= 0.4) {
    const slip = mid > 0 && main.si > 0 ? slipWords(main.si, mid, main.dimension) : null;
    return {
      severity: "doubtful",
      found,
      expected,
      meant: slip ? `${sayIn(mid, main.quantity, 3)}? ${slip}` : `${sayIn(mid, main.quantity, 3)}?`,
    };
  }
  const share = bound === 0 ? 1 : Math.abs(end - bound) / Math.abs(bound);
  if (fact.from === "spec" && withinLimit(sight, value)) return null;
  if (nominal) {
    const careful = main.dimension === "length" && digitsOf(main) >= 3 && digitsOf(fact) >= 3;
    if (main.dimension === "length" && share > 0.08 && oneDigitApart(main, fact))
      return { severity: "doubtful", found, expected, meant: `${sayIn(fact.si, main.quantity)}?` };
    if (
      main.dimension === "angle" &&
      share > 0.15 &&
      Math.abs(end - bound) > (5 * Math.PI) / 180 &&
      /\b(?:seat|taper|cone|included|bevel|chamfer)\b/.test(sight.what)
    )
      return { severity: "doubtful", found, expected };
    const fractions = [main, fact].every((one) => one.quantity.value.style.kind === "fraction");
    const room =
      main.dimension === "thread pitch"
        ? 0.03
        : isSize(sight)
          ? 0.06
          : fractions
            ? 0.15
            : careful
              ? 0.22
              : decided === "accepted"
                ? 0.3
                : 0.45;
    return share > room ? { severity: "doubtful", found, expected } : null;
  }
  if (decided === "accepted") return { severity: "wrong", found: `${found} It was accepted.`, expected };
  return /\bas found\b|\bworn\b|\bbefore\b|\bwear\b/.test(sight.what) && !fact.quantity.high
    ? null
    : { severity: "doubtful", found, expected };
}

/** "46.5" and "56.5": one figure mistyped. */
function oneDigitApart(a: Fact, b: Fact): boolean {
  if (a.quantity.ucum !== b.quantity.ucum) return false;
  const [x, y] = [`${a.quantity.value.number}`, `${b.quantity.value.number}`];
  if (x.length !== y.length || x.replace(/\D/g, "").length < 3) return false;
  const apart = [...x].flatMap((digit, i) => (digit === y[i] ? [] : [i]));
  return apart.length === 1 && apart[0] !== x.length - 1;
}

/** A diameter or a bore: nothing wears it down by a twentieth and is still measured against its name. */
const isSize = ({ what, main, instrument }: Sight): boolean =>
  main?.dimension === "length" &&
  /\b(?:diameter|dia|bore|o\.?d|i\.?d)\b/.test(what) &&
  /\bmicrometer|\bcaliper|\bmike|\bbore gauge/.test(instrument) &&
  !/\b(?:worn|wear|lining|brush|pad|thread|core|root|tread|coil|spring|wire|rope|chain)\b/.test(what);

/** How many figures were written: 0.350 has three. */
const digitsOf = ({ quantity: { value } }: Fact): number =>
  value.style.kind === "decimal"
    ? Math.round(Math.abs(value.number) * 10 ** value.style.places).toString().length
    : 0;

/** Between its specification and its limit a worn part still serves: that is what the limit says. */
function withinLimit(sight: Sight, value: { low: number; high: number }): boolean {
  const limit = sight.facts.find((fact) => fact.from === "limit" && fact.dimension === sight.main?.dimension);
  if (!limit) return false;
  const { low, high } = given(sight, limit);
  return (low === null || value.low >= low * 0.9999) && (high === null || value.high <= high * 1.0001);
}

function temperature(
  main: Fact,
  fact: Fact,
  is: { end: number; bound: number; nominal: boolean; found: string; expected: string; decided: string },
): Remark | null {
  const off = Math.abs(is.end - is.bound);
  const sameFigure =
    main.quantity.ucum !== fact.quantity.ucum &&
    near(main.quantity.value.number, fact.quantity.value.number, 0.2);
  if (is.nominal && off < (sameFigure ? 10 : 25)) return null;
  const severity = is.decided === "accepted" && !is.nominal ? "wrong" : "doubtful";
  return {
    severity,
    found: is.found,
    expected: is.expected,
    ...(sameFigure ? { meant: `${main.quantity.value.number} ${fact.quantity.unit}?` } : {}),
  };
}

function sayLimits(low: number | null, high: number | null, { quantity }: Fact): string {
  if (low === null) return `At most ${sayIn(high ?? 0, quantity)}.`;
  if (high === null) return `At least ${sayIn(low, quantity)}.`;
  return low === high ? `${sayIn(low, quantity)}.` : `${sayIn(low, quantity)} to ${sayIn(high, quantity)}.`;
}
