import { rational, toNumber } from "#lib/quantity/index.ts";
import { near, plain, sayIn } from "../figures.ts";
import type { EntryRule, Remark } from "../rule.ts";
import { type Fact, readOnce, type Sight } from "../sight.ts";

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
      says: "a rule cannot judge a tenth",
      entry: { text: "0.5 mm", what: "gap", context: { instrument: "steel rule", spec: "0.45-0.50 mm" } },
      finds: 1,
    },
  ],
};

interface Division {
  name: string;
  /** One division in SI units. */
  step: number;
  /** A finer reading by eye, in SI units: the smallest step that is believed. */
  finest: number;
  /** Fractions of the division that are marked too, in SI units (1/64 in). */
  marks?: number;
  /** The most it reaches, in SI units. */
  most?: number;
}

const mm = 1e-3;
const inch = 0.0254;
const rows: [RegExp, Record<string, [step: number, finest: number]>, number?][] = [
  [/\btape\b|metre stick|meter stick|yard ?stick|folding rule/, { mm: [1, 0.5], in: [1 / 16, 1 / 32] }],
  [/\bfeeler|\bblade gauge|\bgap gauge|\bwire gauge\b/, { mm: [0.05, 0.01], in: [0.001, 0.0005] }, 2.05],
  [
    /\bv?ernier height|height gauge|\bcaliper|\bcalliper|\bvernier|slide gauge|depth gauge/,
    { mm: [0.02, 0.01], in: [0.001, 0.0005] },
  ],
  [/\brule\b|\bruler\b|\bscale rule|\bsteel scale|straight ?edge/, { mm: [0.5, 0.1], in: [1 / 64, 0.01] }],
  [
    /\bmicrometer|\bmike\b|\bbore gauge|\bbore gage|\binside mic|\bmic\b|telescop|snap gauge|depth mic/,
    { mm: [0.01, 0.001], in: [0.001, 0.0001] },
  ],
  [/\bdial\b|\bd\.?t\.?i\b|\bclock\b|\bindicator\b/, { mm: [0.01, 0.001], in: [0.001, 0.0001] }],
  [/\bplastigau?ge|gauging strip|crush strip/, { mm: [0.025, 0.001], in: [0.0005, 0.0001] }],
  [
    /\bprotractor|\bbevel gauge|degree (?:disc|wheel|plate)|timing (?:disc|wheel|light|plate|lamp)|strobe/,
    { deg: [1, 0.5] },
  ],
  [/\bstop ?watch|\bwatch\b|\bclock\b|\btimer\b|\bphone\b/, { s: [0.1, 0.01] }],
  [/\bbathroom|platform scale|luggage|crane scale|steelyard|weighbridge/, { g: [100, 50] }],
  [/\bkitchen|\bscales?\b|\bbalance\b|\bspring balance/, { g: [1, 0.1] }],
  [
    /\bthermometer|\bthermocouple|\bpyrometer|\binfra-?red|\bir gun|\bprobe\b|\bcrayon|temp\w* stick/,
    { K: [1, 0.1] },
  ],
  [/\bcrayon|temp\w* stick|temp\w* (?:paint|strip)|oven dial|oven\b/, { K: [5, 1] }],
  [/\btorque wrench|\btorque\b|click|deflecting beam/, { Nm: [0.5, 0.1] }],
  [
    /\btyre|tire|\bpressure gauge|compression (?:tester|gauge)|\bgauge\b|bourdon|manometer/,
    { Pa: [3500, 690] },
  ],
  [/\bjug|\bmeasuring (?:jug|cup|can)|\bcan\b|\bbucket|\bbeaker|kitchen|\bbottle/, { ml: [25, 5] }],
  [/\bcylinder\b|\bsyringe|\bburette|\bpipette/, { ml: [1, 0.1] }],
  [/\btachometer|\brev counter|\btacho|hand tach/, { rpm: [10, 1] }],
  [
    /\b(?:moving coil|analogue|analog|needle|pointer|panel (?:meter|gauge)|dashboard|dash|moving iron)\b/,
    { relative: [0.005, 0.001] },
  ],
  [/\b(?:multimeter|dmm|meter|digital meter|voltmeter|ohmmeter|ammeter)\b/, { relative: [0.0005, 0.00001] }],
];

/** What the instrument is divided into, for a value of that kind: as its name says, else as the usual one is. */
function divisionOf(name: string, main: Fact): Division | null {
  const stated = statedDivision(name, main);
  if (stated !== null) return { name, step: stated, finest: stated * 0.49 };
  for (const [pattern, divisions, most] of rows) {
    if (!pattern.test(name)) continue;
    const pair = divisions[keyOf(main)];
    const relative = divisions.relative;
    if (relative && ["voltage", "current", "resistance"].includes(main.dimension)) {
      const size = 10 ** Math.floor(Math.log10(Math.abs(main.si) || 1));
      return { name, step: relative[0] * size * 10, finest: relative[1] * size * 10 };
    }
    if (!pair) continue;
    const scale = scaleOf[keyOf(main)] ?? 1;
    return {
      name,
      step: pair[0] * scale,
      finest: pair[1] * scale * 0.999,
      ...(keyOf(main) === "in" ? { marks: inch / 64 } : {}),
      ...(most === undefined ? {} : { most: most * mm }),
    };
  }
  return null;
}

const scaleOf: Record<string, number> = {
  mm,
  in: inch,
  deg: Math.PI / 180,
  s: 1,
  g: 1e-3,
  K: 1,
  Nm: 1,
  Pa: 1,
  ml: 1e-6,
  rpm: 1 / 60,
  V: 1,
  A: 1,
};

function keyOf({ dimension, quantity }: Fact): string {
  if (dimension === "length") return /\[in_i\]|mil_i|ft_i/.test(quantity.ucum) ? "in" : "mm";
  return (
    (
      {
        angle: "deg",
        time: "s",
        mass: "g",
        temperature: "K",
        torque: "Nm",
        pressure: "Pa",
        volume: "ml",
        "rotational speed": "rpm",
        voltage: "V",
        current: "A",
      } as Record<string, string>
    )[dimension] ?? ""
  );
}

/** "vernier caliper (0.05 mm)", "micrometer reading to 0.01 mm", "feeler gauge, 0.05 mm steps". */
function statedDivision(name: string, main: Fact): number | null {
  if (
    !/\d/.test(name) ||
    !/\b(?:to|steps?|div(?:ision)?s?|resolution|reading|reads|graduat\w+|grad|each|by|marks?)\b|\(|,/.test(
      name,
    )
  )
    return null;
  const reading = readOnce(name);
  const quantities =
    reading.kind === "list"
      ? reading.parts.flatMap((part) => ("quantities" in part ? part.quantities : []))
      : "quantities" in reading
        ? reading.quantities
        : [];
  const [smallest] = quantities
    .filter((one) => one.dimension === main.dimension && !one.high && one.si > 0)
    .sort((a, b) => a.si - b.si);
  if (
    !smallest ||
    (smallest.si > Math.abs(main.si) * 0.9 && main.si !== 0) ||
    main.dimension === "temperature"
  )
    return null;
  return /\b(?:0-|range|up to)\b/.test(name) && quantities.length === 1 ? null : smallest.si;
}

function digits(sight: Sight, main: Fact, { name, finest, marks, step }: Division): Remark[] {
  const { quantity } = main;
  if (quantity.value.style.kind === "fraction")
    return fraction(main, { name, finest, step, ...(marks === undefined ? {} : { marks }) });
  if (
    /\b(?:calculated|worked out|computed|average|mean|converted|by calculation|difference)\b/.test(sight.all)
  )
    return [];
  const written = written1(main);
  if (written >= finest * 0.99) return [];
  const noughts = /\d[.,]\d{2,}00$/.test(`${main.quantity.value.number.toFixed(places(main))}`);
  if (!noughts && isMultiple(main.si, finest / 0.999) && main.dimension !== "temperature") return [];
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
const thinnest = 0.9 * 0.001 * inch;

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

function tolerance(sight: Sight, main: Fact, { name, step }: Division): Remark[] {
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
