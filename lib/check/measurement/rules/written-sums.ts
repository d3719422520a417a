import { disagreement, type Quantity, type Reading } from "#lib/quantity/index.ts";
import { near, plain, sayIn } from "../figures.ts";
import type { EntryRule, Remark } from "../rule.ts";
import { type Decimal, readOnce } from "../sight.ts";

/** A sum, a product or a difference written out, and wrong. */
export const writtenSums: EntryRule = {
  id: "written-sum",
  title: "Worked out in the text",
  explanation:
    "What is written as a sum must be the sum of its terms, and likewise a product or a difference. The terms are usually right and the result a slip.",
  source: "arithmetic",
  check: (sight) => {
    const texts = [sight.entry.text, ...(sight.entry.context.related ?? []).map((one) => one.text)];
    return texts
      .filter((text) => /[=+]|\b(?:makes?|come to|totals?)\b/.test(text))
      .flatMap((text) => [
        ...writtenSum(text, sight.decimal),
        ...compoundSum(text, sight.decimal),
        ...writtenEquation(inDecimals(text)),
        ...writtenTimes(inDecimals(text)),
      ])
      .slice(0, 1);
  },
  examples: [
    { says: "1.50, not 1.75", entry: { text: "0.75 + 0.50 + 0.25 = 1.75 in", what: "spacers" }, finds: 1 },
    { says: "five of 0.2 mm", entry: { text: "5 shims of 0.2 mm = 1.0 mm", what: "shim pack" }, finds: 0 },
    {
      says: "ounces and pounds",
      entry: { text: "1 lb 4 oz + 14 oz = 2 lb 4 oz", what: "weights" },
      finds: 1,
    },
    { says: "feet and inches", entry: { text: "3 ft 6 in + 8 in = 4 ft 2 in", what: "belt" }, finds: 0 },
    { says: "fractions", entry: { text: "4 x 6-1/2 in = 24 in", what: "four bays" }, finds: 1 },
    { says: "a difference", entry: { text: "25.00 - 24.95 = 0.5 mm", what: "clearance" }, finds: 1 },
  ],
};

function writtenSum(text: string, decimal: Decimal): Remark[] {
  const wrong = sumsIn(readOnce(text, decimal))
    .map(disagreement)
    .find((one) => one !== null);
  return wrong
    ? [
        {
          severity: "wrong",
          found: `“${text}” comes to ${wrong.found}.`,
          expected: `The terms give ${wrong.expected}.`,
          meant: `${wrong.expected}?`,
        },
      ]
    : [];
}

/** "1 lb 4 oz + 14 oz = 2 lb 2 oz": terms in two units each, which no sum of figures reads. */
function compoundSum(text: string, decimal: Decimal): Remark[] {
  const [left = "", right = "", ...more] = text.split("=");
  const terms = left.split("+").map((term) => single(readOnce(term.trim(), decimal)));
  const total = single(readOnce(right.trim(), decimal));
  if (more.length > 0 || terms.length < 2 || !total || !terms.every((term) => term !== null)) return [];
  const same = terms.every((term) => term.dimension === total.dimension);
  if (!same || ![...terms, total].some((one) => one.larger)) return [];
  const sum = terms.reduce((so, term) => so + term.si, 0);
  if (near(sum, total.si, 0.002)) return [];
  const should = sayIn(sum, total);
  return [
    { severity: "wrong", found: `“${text}”.`, expected: `The terms give ${should}.`, meant: `${should}?` },
  ];
}

const single = (reading: Reading): Quantity | null =>
  reading.kind === "quantity" ? (reading.quantities[0] ?? null) : null;

/** "6-1/2" and "3/8" as decimals, which the patterns below read. */
const inDecimals = (text: string): string =>
  text.includes("/")
    ? text.replace(
        /(?<![\d./])(?:(\d{1,4})[- ])?(\d{1,2})\/(2|4|8|16|32|64)(?![\d/])/g,
        (_, whole, over, under) => `${Number(whole ?? 0) + Number(over) / Number(under)}`,
      )
    : text;

const timesOver =
  /\b(\d{1,3}) (?:off |[a-z]+ )?(?:of|at|x|×) (\d+(?:\.\d+)?) ?([a-zµΩ"]{1,6}) ?(?:=|make|makes|come to|total|totals) ?(\d+(?:\.\d+)?) ?\3/i;

/** "5 shims of 0.2 mm = 1.2 mm". */
function writtenTimes(text: string): Remark[] {
  const [, count = "", each = "", unit = "", total = ""] = timesOver.exec(text) ?? [];
  const should = Number(count) * Number(each);
  if (total === "" || near(should, Number(total), 0.006)) return [];
  return [
    {
      severity: "wrong",
      found: `“${text}”.`,
      expected: `${plain(should)} ${unit}.`,
      meant: `${plain(should)} ${unit}?`,
    },
  ];
}

const equation =
  /^\D{0,40}?(\d+(?:\.\d+)?)\s*([a-z."]{0,8})\s*([x×*÷]|\s-\s|\/)\s*(\d+(?:\.\d+)?)(?![\d/])\s*([a-z."]{0,8})\s*=\s*(\d+(?:\.(\d+))?)(?![\d/:])\s*([a-z."]{0,8})/i;

/** "3 x 12 = 48", "25.00 - 24.95 = 0.5 mm": worked out in the text itself. */
function writtenEquation(text: string): Remark[] {
  const [, a = "", unitA = "", sign = "", b = "", unitB = "", c = "", places = "", unitC = ""] =
    equation.exec(text) ?? [];
  if (c === "" || (sign === "/" && /^(?:2|4|8|16|32|64)$/.test(b))) return [];
  const units = new Set([unitA, unitB, unitC].filter(Boolean));
  if (units.size > 1 || (sign.trim() === "/" && units.size > 0 && unitA === "")) return [];
  const [x, y, said] = [Number(a), Number(b), Number(c)];
  const is = sign.trim() === "-" ? x - y : /[/÷]/.test(sign) ? x / y : x * y;
  if (Math.abs(is - said) <= 0.51 * 10 ** -places.length || near(is, said, 0.006)) return [];
  return [
    {
      severity: "wrong",
      found: `“${text}” comes to ${plain(is)}.`,
      expected: `${plain(is)}.`,
      meant: `${plain(is)}?`,
    },
  ];
}

const sumsIn = (reading: Reading): Reading[] =>
  reading.kind === "list" ? reading.parts.flatMap(sumsIn) : reading.kind === "sum" ? [reading] : [];
