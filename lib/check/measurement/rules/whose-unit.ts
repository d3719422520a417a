import { disagreement, type Quantity, type Reading, read } from "#lib/quantity/index.ts";
import { near, sayIn } from "../figures.ts";
import type { EntryRule } from "../rule.ts";
import type { Sight } from "../sight.ts";

/** Pints, gallons, hundredweights and tons, of which there are two. */
export const whoseUnit: EntryRule = {
  id: "whose-unit",
  title: "Whose pint, whose hundredweight",
  explanation:
    "An imperial pint is 568 ml, one of the United States 473 ml; a hundredweight is 112 lb or 100 lb. Where it is said which is meant, the conversion must be of that one; where it is not, of one of the two.",
  source: "NIST SP 811 (2008), appendix B; Weights and Measures Act 1985 (from memory)",
  check: (sight) => {
    const { entry, decimal, reading } = sight;
    if (!hasConversion(reading) || !double.test(entry.text)) return [];
    const region = regionIn(sight.all);
    const settled = region ? read(entry.text, { decimal, region }) : reading;
    const wrong = disagreement(settled);
    if (region && wrong)
      return [
        {
          severity: "wrong" as const,
          found: `“${entry.text}”: the second figure is ${wrong.found}.`,
          expected: `${wrong.expected}, with ${region === "GB" ? "imperial" : "US"} measure.`,
          meant: `${wrong.expected}?`,
        },
      ];
    return region ? [] : neither(entry.text, decimal, settled);
  },
  examples: [
    {
      says: "imperial, and converted as if from the States",
      entry: { text: "1-1/2 pints (0.71 l)", what: "oil", context: { spec: "imperial pints" } },
      finds: 1,
    },
    {
      says: "imperial",
      entry: { text: "1-1/2 pints (0.85 l)", what: "oil", context: { spec: "imperial pints" } },
      finds: 0,
    },
    { says: "neither of both", entry: { text: "15 cwt (672 kg)", what: "working load" }, finds: 1 },
    { says: "long", entry: { text: "15 cwt (762 kg)", what: "working load" }, finds: 0 },
    { says: "short", entry: { text: "15 cwt (680 kg)", what: "working load" }, finds: 0 },
  ],
};

const hasConversion = (reading: Reading): boolean =>
  (reading.kind === "quantity" && reading.quantities.length > 1) ||
  (reading.kind === "list" && reading.parts.some(hasConversion));

const double =
  /\b(?:pints?|pts?|quarts?|qts?|gal(?:lon|l)?s?|gills?|fl\.? ?ozs?|fluid ounces?|tons?|cwt|hundredweights?|gp[mh])\b/i;
const measure =
  "(?:pints?|pts?|quarts?|gal(?:lon|l)?s?|gills?|fl|fluid|tons?|measures?|cwt|hundredweights?|units?|sizes?)";
const imperial = new RegExp(
  `\\b(?:imperial|imp\\.?|british|uk|english|long) ${measure}|\\b${measure},? \\(?(?:imperial|imp)\\b`,
);
const states = new RegExp(
  `\\b(?:u\\.?s\\.?|american|short) ${measure}|\\b${measure},? \\(?(?:u\\.?s\\.?|american)\\b`,
);

function regionIn(all: string): "GB" | "US" | null {
  const [gb, us] = [imperial.test(all), states.test(all)];
  return gb === us ? null : gb ? "GB" : "US";
}

/** Not said which is meant: the second figure is near the one or the other. */
function neither(text: string, decimal: Sight["decimal"], reading: Reading) {
  if (reading.kind !== "quantity") return [];
  const second = reading.quantities[1];
  const both = (["GB", "US"] as const).flatMap((region) => firstOf(read(text, { decimal, region })) ?? []);
  if (!second || second.high || both.length < 2 || both.some((one) => one.high || agrees(one, second)))
    return [];
  const [long] = both;
  return [
    {
      severity: "wrong" as const,
      found: `“${text}”: ${sayIn(second.si, second)}.`,
      expected: `${both.map((one) => sayIn(one.si, second, 3)).join(" or ")}.`,
      ...(long ? { meant: `${sayIn(long.si, second, 3)}?` } : {}),
    },
  ];
}

const firstOf = (reading: Reading): Quantity | undefined =>
  reading.kind === "quantity" ? reading.quantities[0] : undefined;

/** Within half a per cent, or rounded to the last figure written. */
function agrees(one: Quantity, second: Quantity): boolean {
  if (one.dimension !== second.dimension || near(one.si, second.si, 0.006)) return true;
  const [over = "0", under = "1"] = second.value.step.split("/");
  const step = (Number(over) / Number(under)) * (second.si / second.value.number);
  const noughts = /0+$/.exec(second.value.exact)?.[0].length ?? 0;
  return (
    Math.abs(one.si - second.si) <= step * Math.max(0.51, 0.51 * 10 ** noughts) &&
    near(one.si, second.si, 0.06)
  );
}
