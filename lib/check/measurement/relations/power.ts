import { type Relation, role, roleBut } from "../relation.ts";

const any = /^/;
const pressed = role(/^/, "pressure");
const round = /\b(?:diameter|dia|bore|ram|piston|plunger)\b/;

/** Forces, springs, work and steam. */
export const power: readonly Relation[] = [
  {
    says: "A force is the pressure by the area it acts on",
    result: roleBut(any, /\b(?:spring|lever)\b/, "force"),
    given: [pressed, role(any, "area")],
    of: (pressure, area) => pressure * area,
    room: 0.03,
    examples: [
      {
        entry: {
          text: "2.0 kN",
          what: "push of the ram",
          context: {
            related: [
              { what: "pressure", text: "10 bar" },
              { what: "piston area", text: "20 cm²" },
            ],
          },
        },
        wrong: "200 N",
      },
    ],
  },
  {
    says: "A ram presses with the pressure by the area of its circle",
    result: roleBut(any, /\b(?:spring|lever|belt|handle)\b/, "force"),
    given: [pressed, roleBut(round, /\brod\b|\b(?:pump|handle|small) (?:plunger|piston)\b/, "length")],
    of: (pressure, diameter) => (Math.PI / 4) * diameter ** 2 * pressure,
    only: /\b(?:ram|press|jack|hydraulic|cylinder|steam|piston)\b/,
    not: /\b(?:return|pull(?:ing)? side|annul\w*|mean effective|efficiency)\b/,
    room: 0.06,
    examples: [
      {
        entry: {
          text: "100 kN",
          what: "ram force",
          context: {
            part: "hydraulic press",
            related: [
              { what: "oil pressure", text: "200 bar" },
              { what: "ram", text: "80 mm diameter" },
            ],
          },
        },
        wrong: "1,000 kN",
      },
    ],
  },
  {
    says: "Power is torque by the speed in radians",
    result: roleBut(any, /\b(?:input|electrical|drawn|taken)\b/, "power"),
    given: [role(any, "torque"), role(any, "rotational speed")],
    of: (torque, speed) => torque * speed * 2 * Math.PI,
    not: /\b(?:nut|bolt|screw|spanner|starting|stall|gearbox)\b/,
    room: 0.04,
    examples: [
      {
        entry: {
          text: "5.24 kW",
          what: "brake power",
          context: {
            related: [
              { what: "torque", text: "50 N·m" },
              { what: "speed", text: "1,000 rpm" },
            ],
          },
        },
        wrong: "52.4 kW",
      },
    ],
  },
  {
    says: "A spring's rate is the load by the way it gives",
    result: role(any, "spring rate"),
    given: [
      role(any, "force"),
      role(/\b(?:deflect\w*|compress\w*|extension|extends?|stretch\w*|gives|shortens?)\b/, "length"),
    ],
    of: (load, way) => load / way,
    room: 0.03,
    source: "Hooke's law",
    examples: [
      {
        entry: {
          text: "5 N/mm",
          what: "spring rate",
          context: {
            related: [
              { what: "load", text: "100 N" },
              { what: "deflection", text: "20 mm" },
            ],
          },
        },
        wrong: "0.5 N/mm",
      },
    ],
  },
  {
    says: "A spring's rate is the load by the way it gives",
    result: role(any, "spring rate"),
    given: [
      role(any, "mass"),
      role(/\b(?:deflect\w*|compress\w*|extension|extends?|stretch\w*|gives|shortens?)\b/, "length"),
    ],
    of: (load, way) => (load * 9.80665) / way,
    room: 0.03,
    source: "Hooke's law",
    examples: [
      {
        entry: {
          text: "40 lb/in",
          what: "spring rate",
          context: {
            related: [
              { what: "load", text: "20 lb" },
              { what: "deflection", text: "1/2 in" },
            ],
          },
        },
        wrong: "10 lb/in",
      },
    ],
  },
  {
    says: "A spring gives by its free length less its length under load",
    result: roleBut(
      /\b(?:deflection|deflects|compress(?:ion|es)|compressed by|gives by|squeezed by)\b/,
      /\blength|height\b/,
      "length",
    ),
    given: [
      role(/\bfree\b/, "length"),
      roleBut(/\b(?:load(?:ed)?|fitted|installed|compressed|working)\b/, /\bfree\b/, "length"),
    ],
    of: (free, loaded) => free - loaded,
    unsigned: true,
    only: /\bspring\b/,
    room: 0.02,
    examples: [
      {
        entry: {
          text: "12 mm",
          what: "spring deflection",
          context: {
            related: [
              { what: "free length", text: "50 mm" },
              { what: "length under load", text: "38 mm" },
            ],
          },
        },
        wrong: "22 mm",
      },
    ],
  },
  {
    says: "Coil-bound, a spring is as long as its coils are thick together",
    result: role(/\b(?:solid|coil-?\s?bound|closed up)\b/, "length"),
    given: [role(/\bwire\b/, "length"), role(/\bcoils\b|\bturns\b/, "count", "number")],
    of: (wire, coils) => [wire * coils, wire * (coils + 1), wire * (coils + 2), wire * (coils - 1)],
    only: /\bspring\b/,
    room: 0.05,
    examples: [
      {
        entry: {
          text: "20 mm",
          what: "solid length of the spring",
          context: {
            related: [
              { what: "wire", text: "2.5 mm" },
              { what: "total coils", text: "8" },
            ],
          },
        },
        wrong: "40 mm",
      },
    ],
  },
  {
    says: "The outside is the inside and two thicknesses",
    result: role(/\b(?:outside|outer|o\.?d)\b/, "length"),
    given: [
      roleBut(/\b(?:inside|inner|i\.?d|bore)\b/, /\b(?:outside|outer|o\.?d)\b/, "length"),
      role(/\b(?:wire|wall)\b/, "length"),
    ],
    of: (inside, thick) => inside + 2 * thick,
    room: 0.01,
    not: /\bbearing\b|\bring gear\b/,
    examples: [
      {
        entry: {
          text: "16 mm",
          what: "spring outside diameter",
          context: {
            related: [
              { what: "inside diameter", text: "12 mm" },
              { what: "wire", text: "2 mm" },
            ],
          },
        },
        wrong: "14 mm",
      },
    ],
  },
  {
    says: "A piston goes twice its stroke in a turn",
    result: role(/\bpiston speed\b/, "speed"),
    given: [role(/\bstroke\b/, "length"), role(any, "rotational speed")],
    of: (stroke, speed) => 2 * stroke * speed,
    room: 0.02,
    examples: [
      {
        entry: {
          text: "5 m/s",
          what: "mean piston speed",
          context: {
            related: [
              { what: "stroke", text: "100 mm" },
              { what: "speed", text: "1,500 rpm" },
            ],
          },
        },
        wrong: "2.5 m/s",
      },
    ],
  },
  {
    says: "A feed is so much a turn by the turns a minute",
    result: role(/\bfeed\b/, "speed"),
    given: [role(/\b(?:per|a|each) (?:rev\w*|turn)\b/, "length"), role(any, "rotational speed")],
    of: (advance, speed) => advance * speed,
    room: 0.02,
    examples: [
      {
        entry: {
          text: "60 mm/min",
          what: "table feed",
          context: {
            related: [
              { what: "feed per rev", text: "0.2 mm" },
              { what: "spindle", text: "300 rpm" },
            ],
          },
        },
        wrong: "600 mm/min",
      },
    ],
  },
  {
    says: "A speed is the turns counted by the time they took",
    result: roleBut(any, /\b(?:nominal|rated|plate)\b/, "rotational speed"),
    given: [role(/\b(?:turns?|rev\w*)\b|^$/, "angle"), roleBut(any, /\bafter\b|\bper\b/, "time")],
    of: (turns, time) => turns / (2 * Math.PI) / time,
    only: /\b(?:count(?:ed|er)?|timed|stop ?watch|turns in|turns took|revolutions in)\b/,
    room: 0.02,
    examples: [
      {
        entry: {
          text: "72 rpm",
          what: "speed by stopwatch",
          context: {
            related: [
              { what: "turns counted", text: "36 turns" },
              { what: "time", text: "30 s" },
            ],
          },
        },
        wrong: "108 rpm",
      },
    ],
  },
  {
    says: "A speed is the way by the time",
    result: roleBut(any, /\b(?:rim|cutting|surface|belt)\b/, "speed"),
    given: [roleBut(any, /\bdia|radius|bore\b/, "length"), role(any, "time")],
    of: (way, time) => way / time,
    room: 0.03,
    only: /\b(?:travels?|travelled|moves|moved|took|takes|in|timed|run|runs)\b/,
    examples: [
      {
        entry: {
          text: "60 mm/s",
          what: "table speed, timed",
          context: {
            related: [
              { what: "travel", text: "600 mm" },
              { what: "time", text: "10 s" },
            ],
          },
        },
        wrong: "600 mm/s",
      },
    ],
  },
  {
    says: "Saturated steam has one temperature at one pressure",
    result: role(/\b(?:steam|saturation|boiler|water|temperature)\b/, "temperature"),
    given: [roleBut(any, /\b(?:test|lifts?|safety|feed)\b/, "pressure")],
    of: (gauge) => saturation(gauge),
    only: /\b(?:steam|saturat\w+)\b.*\b(?:temperature|thermometer|pocket)\b|\b(?:temperature|thermometer|pocket)\b.*\b(?:steam|saturat\w+)\b/,
    not: /\b(?:superheat\w*|condenser|vacuum|absolute|exhaust|feed ?water|oil|cylinder)\b/,
    room: 0.015,
    source: "IAPWS steam tables (from memory)",
    examples: [
      {
        entry: {
          text: "170 °C",
          what: "steam temperature",
          context: { related: [{ what: "boiler pressure", text: "100 psi" }] },
        },
        wrong: "250 °C",
      },
    ],
  },
];

/** Pressure in bar absolute and temperature in °C of saturated steam: IAPWS steam tables, from memory. */
const steam: readonly [number, number][] = [
  [1.013, 100],
  [2, 120.2],
  [3, 133.5],
  [4, 143.6],
  [6, 158.8],
  [8, 170.4],
  [10, 179.9],
  [15, 198.3],
  [20, 212.4],
  [30, 233.9],
];

/** Between two lines of the table the temperature goes with the logarithm of the pressure. In kelvin; NaN beyond it. */
function saturation(gauge: number): number {
  const bar = gauge / 1e5 + 1.013;
  const i = steam.findIndex(([p]) => p >= bar);
  const [low, high] = [steam[i - 1], steam[i]];
  if (!low || !high) return Number.NaN;
  const share = Math.log(bar / low[0]) / Math.log(high[0] / low[0]);
  return 273.15 + low[1] + share * (high[1] - low[1]);
}
