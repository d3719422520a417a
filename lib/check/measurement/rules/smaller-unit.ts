import type { Quantity, Reading } from "#lib/quantity/index.ts";
import type { EntryRule, Remark } from "../rule.ts";

/** "7 lb 20 oz": more of the smaller unit than make one of the larger. */
export const smallerUnit: EntryRule = {
  id: "smaller-unit-overflows",
  title: "More of the smaller unit than make one of the larger",
  explanation:
    "Pounds and ounces, feet and inches, hours and minutes are written so that the smaller ones come to less than one of the larger. Where they do not, a figure was mistyped or the two are two values.",
  source: "NIST SP 811 (2008), appendix B: 16 oz in a pound, 12 in in a foot, 60 min in an hour",
  check: ({ reading, entry }) => overflowing(reading, entry.text),
  examples: [
    { says: "20 oz are more than a pound", entry: { text: "7 lb 20 oz", what: "weight" }, finds: 1 },
    { says: "12 oz are less", entry: { text: "7 lb 12 oz", what: "weight" }, finds: 0 },
    { says: "75 min are more than an hour", entry: { text: "2 h 75 min", what: "soak" }, finds: 1 },
    {
      says: "a pound here and ounces there",
      entry: { text: "2 lb weight, 20 oz bob", what: "weights" },
      finds: 0,
    },
  ],
};

const pairs: Record<string, [smaller: string, most: number]> = {
  "[lb_av]": ["[oz_av]", 16],
  "[stone_av]": ["[lb_av]", 14],
  "[ft_i]": ["[in_i]", 12],
  "[yd_i]": ["[ft_i]", 3],
  h: ["min", 60],
  min: ["s", 60],
  deg: ["'", 60],
};

function overflowing(reading: Reading, text: string): Remark[] {
  if (reading.kind !== "list" || /[,;/&]|\band\b|\bor\b/.test(text)) return [];
  const values = reading.parts.map(plainOf);
  for (const [i, large] of values.entries()) {
    const small = values[i + 1];
    const pair = large && pairs[large.ucum];
    if (!large || !small || !pair || small.ucum !== pair[0] || small.value.number < pair[1]) continue;
    const unit = small.unit || small.ucum;
    return [
      {
        severity: "doubtful",
        found: `“${text}”: ${small.value.number} ${unit}.`,
        expected: `Less than ${pair[1]} ${unit}, which make one ${large.unit || large.ucum}.`,
      },
    ];
  }
  return [];
}

const plainOf = (part: Reading): Quantity | undefined =>
  part.kind === "quantity" && part.quantities.length === 1 && !part.words ? part.quantities[0] : undefined;
