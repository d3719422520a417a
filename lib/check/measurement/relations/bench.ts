import { type Relation, role, roleBut } from "../relation.ts";

const large = /\b(?:largest|larger|large|biggest|max(?:imum)?|greatest|widest)\b/;
const small = /\b(?:smallest|smaller|small|least|min(?:imum)?|narrowest)\b/;

/** Weighing, comparing and the plain geometry of a bench. */
export const bench: readonly Relation[] = [
  {
    says: "The net weight is the gross less the tare",
    result: roleBut(/\bnet\b/, /\bgross\b/, "mass"),
    given: [role(/\bgross\b/, "mass"), role(/\btare\b|\b(?:empty|box|pan|tin|container) alone\b/, "mass")],
    of: (gross, tare) => gross - tare,
    examples: [
      {
        entry: { text: "gross 4.10 kg, tare 0.65 kg, net 3.45 kg", what: "check weighing" },
        wrong: "gross 4.10 kg, tare 0.65 kg, net 3.55 kg",
      },
    ],
  },
  {
    says: "An error is the reading less the true value",
    result: roleBut(
      /\berror\b/,
      /\b(?:limit|allowed|permitted|index|pitch)\b/,
      "mass",
      "length",
      "voltage",
      "pressure",
    ),
    given: [
      roleBut(
        /\b(?:reads?|reading|shows|shown|indicat\w+|says)\b/,
        /\berror\b/,
        "mass",
        "length",
        "voltage",
        "pressure",
      ),
      roleBut(
        /\b(?:true|test weights?|standard|gauge block|slip gauge|master|reference|dead[- ]weight)\b/,
        /\berror\b/,
        "mass",
        "length",
        "voltage",
        "pressure",
      ),
    ],
    of: (reading, real) => reading - real,
    unsigned: true,
    examples: [
      {
        entry: {
          text: "-8 g",
          what: "error of the scale",
          context: {
            related: [
              { what: "scale reads", text: "4,992 g" },
              { what: "test weights", text: "5,000 g" },
            ],
          },
        },
        wrong: "+8 g",
      },
    ],
  },
  {
    says: "A correction is the error with the other sign",
    result: roleBut(/\bcorrection\b/, /\berror\b/, "mass", "length", "time", "angle"),
    given: [roleBut(/\berror\b/, /\bcorrection\b/, "mass", "length", "time", "angle")],
    of: (error) => 0 - error,
    unsigned: true,
    examples: [
      {
        entry: {
          text: "-0.02 mm",
          what: "correction to be applied",
          context: { related: [{ what: "error", text: "+0.02 mm" }] },
        },
        wrong: "+0.02 mm",
      },
    ],
  },
  {
    says: "Ovality is the largest diameter less the smallest",
    result: role(/\b(?:ovality|out of round(?:ness)?)\b/, "length"),
    given: [
      roleBut(large, /\blimit|allowed|ovality/, "length"),
      roleBut(small, /\blimit|allowed|ovality/, "length"),
    ],
    of: (most, least) => most - least,
    unsigned: true,
    room: 0.02,
    examples: [
      {
        entry: {
          text: "0.03 mm",
          what: "ovality of the journal",
          context: {
            related: [
              { what: "largest diameter", text: "44.98 mm" },
              { what: "smallest diameter", text: "44.95 mm" },
            ],
          },
        },
        wrong: "0.30 mm",
      },
    ],
  },
  {
    says: "What a cylinder tapers by is the one end less the other",
    result: roleBut(/\btaper\b/, /\bper (?:foot|ft|inch)|\b1 in\b/, "length"),
    given: [role(/\btop\b/, "length"), role(/\bbottom\b/, "length")],
    of: (top, bottom) => top - bottom,
    unsigned: true,
    room: 0.02,
    only: /\b(?:bore|cylinder|liner|barrel|journal)\b/,
    examples: [
      {
        entry: {
          text: "0.004 in",
          what: "taper of the bore",
          context: {
            related: [
              { what: "top", text: "3.254 in" },
              { what: "bottom", text: "3.250 in" },
            ],
          },
        },
        wrong: "0.040 in",
      },
    ],
  },
  {
    says: "A thing is off its centre by half of what the indicator shows",
    result: roleBut(
      /\b(?:eccentric(?:ity)?|out of centre|off[- ]centre)\b/,
      /\brun-?out|indicator\b/,
      "length",
    ),
    given: [role(/\b(?:run-?out|t\.?i\.?r|total indicator|indicator (?:reading|swing))\b/, "length")],
    of: (runOut) => runOut / 2,
    room: 0.02,
    examples: [
      {
        entry: {
          text: "0.05 mm",
          what: "eccentricity of the arbor",
          context: { related: [{ what: "total indicator reading", text: "0.10 mm" }] },
        },
        wrong: "0.20 mm",
      },
    ],
  },
  {
    says: "A taper is the difference of the ends by their distance",
    result: role(/\b(?:taper|pin|arbor|socket|shank)\b/, "ratio"),
    given: [
      role(large, "length"),
      role(small, "length"),
      role(/\b(?:length|long|apart|between)\b/, "length"),
    ],
    of: (most, least, length) => (most - least) / length,
    room: 0.02,
    examples: [
      {
        entry: {
          text: "1/4 in per foot",
          what: "taper of the pin",
          context: {
            related: [
              { what: "large end", text: "0.500 in" },
              { what: "small end", text: "0.4375 in" },
              { what: "length", text: "3 in" },
            ],
          },
        },
        wrong: "3/4 in per foot",
      },
    ],
  },
  {
    says: "A hexagon is 1.155 times as wide over its corners as over its flats",
    result: role(/\bcorners?\b|\ba\/c\b/, "length"),
    given: [role(/\bflats?\b|\ba\/f\b/, "length")],
    of: (flats) => flats * (2 / Math.sqrt(3)),
    only: /\bhex(?:agon\w*)?\b|\bnuts?\b/,
    not: /\bsquare\b|\boctagon/,
    room: 0.04,
    source: "geometry",
    examples: [
      {
        entry: {
          text: "23.1 mm",
          what: "hexagon across corners",
          context: { related: [{ what: "across flats", text: "20 mm" }] },
        },
        wrong: "28.3 mm",
      },
    ],
  },
  {
    says: "A square is 1.414 times as wide over its corners as over its flats",
    result: role(/\bcorners?\b|\bdiagonal\b|\ba\/c\b/, "length"),
    given: [role(/\bflats?\b|\ba\/f\b|\bside\b/, "length")],
    of: (flats) => flats * Math.SQRT2,
    only: /\bsquare\b/,
    not: /\bout of square|\brectang/,
    room: 0.05,
    source: "geometry",
    examples: [
      {
        entry: {
          text: "8.5 mm",
          what: "winding square across corners",
          context: { related: [{ what: "across flats", text: "6 mm" }] },
        },
        wrong: "6.9 mm",
      },
    ],
  },
  {
    says: "A diagonal is the root of the two sides squared and added",
    result: role(/\bdiagonals?\b|\bcorner to corner\b/, "length"),
    given: [
      role(/\b(?:width|wide|long side|length|long|one side)\b/, "length"),
      role(/\b(?:height|high|short side|depth|deep|other side|breadth)\b/, "length"),
    ],
    of: (one, other) => Math.hypot(one, other),
    not: /\b(?:brace|stay|strut|screen)\b/,
    room: 0.01,
    source: "geometry",
    examples: [
      {
        entry: {
          text: "1,000 mm",
          what: "diagonal of the frame",
          context: {
            related: [
              { what: "width", text: "800 mm" },
              { what: "height", text: "600 mm" },
            ],
          },
        },
        wrong: "1,100 mm",
      },
    ],
  },
  {
    says: "From the first hole to the last there is one space fewer than there are holes",
    result: role(/\bfirst (?:to|and) (?:the )?last\b|\bend holes\b|\bover the row\b/, "length"),
    given: [
      role(/\b(?:pitch|spacing|apart|hole to hole)\b/, "length"),
      role(/\b(?:holes|rivets|bolts|pins|studs|number)\b/, "count", "number"),
    ],
    of: (pitch, holes) => pitch * (holes - 1),
    examples: [
      {
        entry: {
          text: "200 mm",
          what: "first to last hole",
          context: {
            related: [
              { what: "pitch", text: "40 mm" },
              { what: "holes", text: "6" },
            ],
          },
        },
        wrong: "240 mm",
      },
    ],
  },
  {
    says: "A circle's area is π/4 of its diameter squared",
    result: role(/^/, "area"),
    given: [role(/\b(?:diameter|dia|bore|ram|piston)\b/, "length")],
    of: (diameter) => (Math.PI / 4) * diameter ** 2,
    not: /\b(?:annul\w*|ring|grate|surface|rod side|inside and outside)\b/,
    room: 0.02,
    source: "geometry",
    examples: [
      {
        entry: {
          text: "12.6 sq in",
          what: "piston area",
          context: { related: [{ what: "piston diameter", text: "4 in" }] },
        },
        wrong: "50.3 sq in",
      },
    ],
  },
  {
    says: "What a round tank holds is π/4 of its diameter squared, by its depth",
    result: role(/^/, "volume"),
    given: [
      role(/\b(?:inside )?dia(?:meter)?\b/, "length"),
      role(/\b(?:depth|deep|height|high|length|long)\b/, "length"),
    ],
    of: (diameter, depth) => (Math.PI / 4) * diameter ** 2 * depth,
    only: /\b(?:tank|drum|vessel|can|receiver|barrel|reservoir|cistern)\b/,
    not: /\b(?:swept|stroke|part full|filled to|dished|over the ends|overall|outside)\b/,
    room: 0.1,
    source: "geometry",
    examples: [
      {
        entry: {
          text: "50 l",
          what: "volume of the receiver",
          context: {
            related: [
              { what: "inside diameter", text: "300 mm" },
              { what: "length inside", text: "710 mm" },
            ],
          },
        },
        wrong: "500 l",
      },
    ],
  },
  {
    says: "What a square tank holds is its length by its width by its depth",
    result: role(/^/, "volume"),
    given: [
      role(/\b(?:length|long)\b/, "length"),
      role(/\b(?:width|wide|breadth)\b/, "length"),
      role(/\b(?:depth|deep|height|high)\b/, "length"),
    ],
    of: (length, width, depth) => length * width * depth,
    not: /\bdia(?:meter)?\b|\bfilled to\b|\bbath of\b/,
    room: 0.05,
    source: "geometry",
    examples: [
      {
        entry: {
          text: "24 l",
          what: "volume of the coolant tank",
          context: {
            related: [
              { what: "length", text: "400 mm" },
              { what: "width", text: "300 mm" },
              { what: "depth", text: "200 mm" },
            ],
          },
        },
        wrong: "2.4 l",
      },
    ],
  },
];
