import { type Quantity, quantitiesOf } from "#lib/quantity/index.ts";
import { type Fact, readOnce } from "./sight.ts";

/** What an instrument is divided into, and how far it is believed. */
export interface Division {
  name: string;
  /** One division in SI units. */
  step: number;
  /** Whether the instrument's own name tells the division. */
  stated?: true;
  /** A finer reading by eye, in SI units: the smallest step that is believed. */
  finest: number;
  /** Fractions of the division that are marked too, in SI units (1/64 in). */
  marks?: number;
  /** The most it reaches, in SI units. */
  most?: number;
}

const mm = 1e-3;
const inch = 0.0254;
const head = 9.80665;
const rows: [RegExp, Record<string, [step: number, finest: number]>, number?][] = [
  [/\btape\b|metre stick|meter stick|yard ?stick|folding rule/, { mm: [1, 0.5], in: [1 / 16, 1 / 32] }],
  [/\bfeeler|\bblade gauge|\bgap gauge|\bwire gauge\b/, { mm: [0.05, 0.01], in: [0.001, 0.0005] }, 2.05],
  [
    /\bmicrometer|\bmike\b|\bbore gauge|\bbore gage|\binside mic|\bmic\b|telescop|snap gauge|depth mic/,
    { mm: [0.01, 0.001], in: [0.001, 0.0001] },
  ],
  [
    /\bv?ernier height|height gauge|\bcaliper|\bcalliper|\bvernier|slide gauge|depth gauge/,
    { mm: [0.02, 0.01], in: [0.001, 0.0005] },
  ],
  [/\brule\b|\bruler\b|\bscale rule|\bsteel scale|straight ?edge/, { mm: [0.5, 0.1], in: [1 / 64, 0.01] }],
  [/\bdial\b|\bd\.?t\.?i\b|\bclock\b|\bindicator\b/, { mm: [0.01, 0.001], in: [0.001, 0.0001] }],
  [/\bplastigau?ge|gauging strip|crush strip/, { mm: [0.025, 0.001], in: [0.0005, 0.0001] }],
  [
    /\bprotractor|\bbevel gauge|degree (?:disc|wheel|plate)|timing (?:disc|wheel|light|plate|lamp)|strobe/,
    { deg: [1, 0.5] },
  ],
  [/\bstop ?watch|\b(?:wrist|pocket)?-?watch\b|\bclock\b|\btimer\b|\bphone\b/, { s: [0.1, 0.01] }],
  [/\bbathroom|platform scale|luggage|crane scale|steelyard|weighbridge/, { g: [100, 50] }],
  [/\bkitchen|\bscales?\b|\bbalance\b|\bspring balance/, { g: [1, 0.1] }],
  [
    /\bthermometer|\bthermocouple|\bpyrometer|\binfra-?red|\bir gun|\bprobe\b|\bcrayon|temp\w* stick/,
    { K: [1, 0.1] },
  ],
  [/\b(?:pyrometric )?cones?\b|\bseger\b/, { K: [10, 5] }],
  [/\bcrayon|temp\w* stick|temp\w* (?:paint|strip)|oven dial|oven\b/, { K: [5, 1] }],
  [/\btorque wrench|\btorque\b|click|deflecting beam/, { Nm: [0.5, 0.1] }],
  [/\b(?:water|u-?tube|inclined) (?:manometer|gauge)|\bmanometer/, { Pa: [head, head / 2] }],
  [/\btyre|tire|\bpressure gauge|compression (?:tester|gauge)|\bgauge\b|bourdon/, { Pa: [3500, 690] }],
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
export function divisionOf(name: string, main: Fact): Division | null {
  const stated = statedDivision(name, main);
  if (stated !== null) return { name, step: stated, finest: stated * 0.49, stated: true };
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

/** "vernier caliper (0.05 mm)", "micrometer reading to 0.01 mm", "dial gauge, 5 psi divisions", "with tenths vernier". */
function statedDivision(name: string, main: Fact): number | null {
  if (main.dimension === "length" && /\btenths?\b/.test(name) && !/\bmm\b/.test(name)) return 1e-4 * inch;
  if (!/\d/.test(name) || !tellsDivision.test(name)) return null;
  const quantities = quantitiesOf(readOnce(name));
  const [smallest] = quantities
    .filter((one) => one.dimension === main.dimension && !one.high)
    .map(sizeOf)
    .filter((size) => size > 0)
    .sort((a, b) => a - b);
  if (!smallest || (smallest > Math.abs(main.si) * 0.9 && main.si !== 0)) return null;
  return /\b(?:0-|range|up to)\b/.test(name) && quantities.length === 1 ? null : smallest;
}

const tellsDivision =
  /\b(?:to|steps?|div(?:ision)?s?|resolution|reading|reads|graduat\w+|grad|each|by|in|with|marks?|vernier|intervals?)\b|\(|,/;

/** A division of degrees is a difference of temperatures, and counted without its beginning. */
const sizeOf = ({ dimension, ucum, value, si }: Quantity): number =>
  dimension === "temperature" ? value.number / (ucum === "[degF]" ? 1.8 : 1) : si;
