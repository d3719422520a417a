import { rational, toNumber } from "#lib/quantity/index.ts";
import { type Division, divisionOf } from "../divisions.ts";
import { near, plain, sayIn } from "../figures.ts";
import type { EntryRule, Remark } from "../rule.ts";
import type { Fact, Sight } from "../sight.ts";

/** More digits than the instrument shows, a reading it cannot reach, and a tolerance that it cannot tell. */
export const instrument: EntryRule = {
  id: "false-precision",
  title: "More than the instrument can say",
  explanation:
    "A steel rule tells half millimetres, a feeler gauge thousandths of an inch, a dial a part of its division. A figure with more digits than that was converted, worked out or imagined. And a tolerance finer than the divisions cannot be judged with them.",
  source: "common practice, no source: what the usual instruments are divided into",
  check: (sight) => {
    const { main } = sight;
    if (!main || sight.instrument === "") return [];
    const known = divisionOf(sight.instrument, main);
    return known
      ? [...digits(sight, main, known), ...reach(main, known), ...tolerance(sight, main, known)].slice(0, 1)
      : [];
  },
  examples: [
    {
      says: "a rule does not tell thousandths",
      entry: { text: "12.703 mm", what: "bracket width", context: { instrument: "steel rule" } },
      finds: 1,
    },
    {
      says: "a rule tells sixty-fourths",
      entry: { text: "15/64 in", what: "bracket width", context: { instrument: "steel rule" } },
      finds: 0,
    },
    {
      says: "a micrometer tells ten thousandths",
      entry: { text: "0.3125 in", what: "pin", context: { instrument: "micrometer" } },
      finds: 0,
    },
    {
      says: "a caliper does not tell them",
      entry: { text: "25.413 mm", what: "pin", context: { instrument: "vernier caliper" } },
      finds: 1,
    },
    {
      says: "a conversion may carry more digits",
      entry: { text: "15 thou (0.381 mm)", what: "gap", context: { instrument: "feeler gauge" } },
      finds: 0,
    },
    {
      says: "a vernier of twentieths tells twentieths",
      entry: { text: "17.15 mm", what: "lever width", context: { instrument: "vernier caliper, 0.05 mm" } },
      finds: 0,
    },
    {
      says: "and nothing between them",
      entry: { text: "17.13 mm", what: "lever width", context: { instrument: "vernier caliper, 0.05 mm" } },
      finds: 1,
    },
    {
      says: "a micrometer with a vernier of tenths",
      entry: {
        text: "0.4372 in",
        what: "valve stem",
        context: { instrument: "micrometer with tenths vernier" },
      },
      finds: 0,
    },
    {
      says: "a dial of five pounds a division",
      entry: { text: "65 psi", what: "pressure", context: { instrument: "dial gauge, 5 psi divisions" } },
      finds: 0,
    },
    {
      says: "tells no single pounds",
      entry: { text: "63 psi", what: "pressure", context: { instrument: "dial gauge, 5 psi divisions" } },
      finds: 1,
    },
    {
      says: "a rule cannot judge a tenth",
      entry: { text: "0.5 mm", what: "gap", context: { instrument: "steel rule", spec: "0.45-0.50 mm" } },
      finds: 1,
    },
  ],
};

function digits(sight: Sight, main: Fact, division: Division): Remark[] {
  const { name, finest, marks, step } = division;
  const { quantity } = main;
  if (division.stated && onDivision(main, division)) return [];
  if (quantity.value.style.kind === "fraction")
    return fraction(main, { name, finest, step, ...(marks === undefined ? {} : { marks }) });
  if (
    /\b(?:calculated|worked out|computed|average|mean|converted|by calculation|difference)\b/.test(sight.all)
  )
    return [];
  const written = written1(main);
  if (written >= finest * 0.99) return [];
  const noughts = /\d[.,]\d{2,}00$/.test(`${main.quantity.value.number.toFixed(places(main))}`);
  if (!noughts && isMultiple(sizeAsWritten(main), finest / 0.999)) return [];
  const graduated = marks ?? step;
  const rest = Math.abs(main.si / graduated - Math.round(main.si / graduated)) * graduated;
  if (!noughts && marks !== undefined && rest <= written * 0.51 && main.si > graduated * 0.5) return [];
  if (
    marks === undefined &&
    step < 0.06 * Math.abs(main.si) &&
    rest < 1e-9 * Math.abs(main.si) &&
    written < finest / 50
  )
    return [];
  return [
    {
      severity: "doubtful",
      found: `${main.raw}, read with ${article(name)}.`,
      expected: `${article(name)} tells about ${sayIn(step, { ...quantity, role: "difference" }, 3)}.`,
      meant: `${sayIn(Math.round(main.si / step) * step, quantity, 5)}?`,
    },
  ];
}

/** On a division that the instrument tells of itself; between two, where a pointer or a line is read by eye. */
function onDivision(main: Fact, { name, step }: Division): boolean {
  const size = sizeAsWritten(main);
  const grain = /\b(?:vernier|calipers?|digital)\b/.test(name) ? step : step / 2;
  return isMultiple(size, grain) && written1(main) > step * 0.015;
}

/** In SI units; of a temperature in kelvins above the nought of its own scale, on which an instrument is divided. */
const sizeAsWritten = ({ dimension, quantity, si }: Fact): number =>
  dimension !== "temperature" || quantity.ucum === "K"
    ? si
    : quantity.value.number / (quantity.ucum === "[degF]" ? 1.8 : 1);

const places = ({ quantity: { value } }: Fact): number =>
  value.style.kind === "decimal" ? value.style.places : 0;

const isMultiple = (value: number, grain: number): boolean =>
  Math.abs(value / grain - Math.round(value / grain)) < 1e-6;

/** The step that was written, in SI units. */
function written1({ quantity, si }: Fact): number {
  const step = toNumber(rational(quantity.value.step));
  const value = quantity.value.number;
  if (quantity.dimension === "temperature")
    return quantity.ucum === "Cel" || quantity.ucum === "K" ? step : step / 1.8;
  return value === 0 ? step * Math.abs(si || 1) : Math.abs(step * (si / value));
}

function fraction(main: Fact, { name, marks }: Division): Remark[] {
  const under = Number(main.quantity.value.step.split("/")[1] ?? 1);
  if (marks === undefined || main.dimension !== "length" || under <= 64 || /micrometer|mike|dial/.test(name))
    return [];
  return [
    {
      severity: "doubtful",
      found: `${main.raw}, read with ${article(name)}.`,
      expected: "Sixty-fourths of an inch at the finest.",
    },
  ];
}

/** No leaf of a feeler gauge is thinner, in metres. Common practice, no source. */
const thinnest = 0.9 * 0.001 * 0.0254;

function reach(main: Fact, { name, most }: Division): Remark[] {
  if (most !== undefined && main.dimension === "length" && main.si > 0 && main.si < thinnest)
    return [
      {
        severity: "doubtful",
        found: `${main.raw}, measured with ${article(name)}.`,
        expected: "Its thinnest leaf is about 0.03 mm (0.0015 in).",
      },
    ];
  if (most === undefined || main.dimension !== "length" || main.si <= most) return [];
  return [
    {
      severity: "doubtful",
      found: `${main.raw}, measured with ${article(name)}.`,
      expected: `Its thickest leaves are about ${plain(most * 1000, 2)} mm.`,
      meant: "a decimal point or a unit?",
    },
  ];
}

function tolerance(sight: Sight, main: Fact, { name, step: division, finest, stated }: Division): Remark[] {
  // A micrometer is read between its lines.
  const step =
    !stated && /\bmicrometer|\bmike\b|\bbore ga/.test(name) ? Math.min(division, finest * 4) : division;
  const limits = sight.facts.find(
    (fact) =>
      (fact.from === "spec" || (fact.from === "related" && /tolerance|spec|limits/.test(fact.name))) &&
      fact.dimension === main.dimension &&
      fact.low !== null &&
      fact.high !== null &&
      fact.high > fact.low,
  );
  const own =
    main.low !== null && main.high !== null && main.quantity.tolerance?.kind === "limits"
      ? main.high - main.low
      : null;
  const width = limits ? (limits.high ?? 0) - (limits.low ?? 0) : own;
  if (width === null || width <= 0 || main.dimension === "voltage" || main.dimension === "current") return [];
  if (step <= width * 1.01 || near(step, width, 0.02)) return [];
  return [
    {
      severity: "doubtful",
      found: `The tolerance is ${sayIn(width, { ...main.quantity, role: "difference" }, 3)} wide; ${article(name)} tells about ${sayIn(step, { ...main.quantity, role: "difference" }, 3)}.`,
      expected: "Divisions of a tenth of the tolerance.",
      source: "common practice, no source: ten to one",
    },
  ];
}

const article = (name: string): string => name || "the instrument";
