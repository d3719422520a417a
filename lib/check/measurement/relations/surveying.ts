import { type Relation, role, roleBut } from "../relation.ts";

const back = role(/\bb\.?s\.?(?=$|[^a-z])|\bback-?\s?sight\b/, "length");
const fore = role(/\bf\.?s\.?(?=$|[^a-z])|\bfore-?\s?sight\b/, "length");
const collimation = role(
  /\bh\.?i\.?(?=$|[^a-z])|\bh\.?p\.?c\b|\bheight of (?:the )?(?:instrument|collimation)\b|\bcollimation (?:height|level)\b/,
  "length",
);
const known = roleBut(
  /\b(?:bench ?mark|b\.?m|r\.?l|reduced level)\b/,
  /\bcollimation|instrument\b/,
  "length",
);
const upper = role(/\b(?:upper|top)\b/, "length");
const lower = role(/\b(?:lower|bottom)\b/, "length");
const hairs = /\b(?:stadia|staff|hairs?|tacheo\w*|levelling|dumpy|theodolite|surveyor'?s?)\b/;

/** A level book and a theodolite's. */
export const surveying: readonly Relation[] = [
  {
    says: "A rise is the backsight less the foresight",
    result: role(/\brise\b/, "length"),
    given: [back, fore],
    of: (bs, fs) => bs - fs,
    examples: [
      {
        entry: { text: "BS 4.215, FS 3.870, rise 0.345 m", what: "level booking" },
        wrong: "BS 4.215, FS 3.870, rise 0.445 m",
      },
    ],
  },
  {
    says: "A fall is the foresight less the backsight",
    result: role(/\bfall\b/, "length"),
    given: [back, fore],
    of: (bs, fs) => fs - bs,
    examples: [
      {
        entry: { text: "BS 1.105, FS 2.340, fall 1.235 m", what: "level booking" },
        wrong: "BS 1.105, FS 2.340, fall 1.325 m",
      },
    ],
  },
  {
    says: "The height of collimation is the known level and the backsight",
    result: collimation,
    given: [known, back],
    of: (level, bs) => level + bs,
    examples: [
      {
        entry: {
          text: "51.482 m",
          what: "height of collimation",
          context: {
            related: [
              { what: "bench mark", text: "50.000 m" },
              { what: "backsight", text: "1.482 m" },
            ],
          },
        },
        wrong: "48.518 m",
      },
    ],
  },
  {
    says: "A reduced level is the height of collimation less the foresight",
    result: known,
    given: [collimation, fore],
    of: (height, fs) => height - fs,
    examples: [
      {
        entry: {
          text: "49.267 m",
          what: "reduced level of the plinth",
          context: {
            related: [
              { what: "height of collimation", text: "51.482 m" },
              { what: "foresight", text: "2.215 m" },
            ],
          },
        },
        wrong: "53.697 m",
      },
    ],
  },
  {
    says: "The distance is a hundred times what the stadia hairs cut off the staff",
    result: role(/\bdistance\b/, "length"),
    given: [upper, lower],
    of: (top, bottom) => 100 * (top - bottom),
    only: hairs,
    not: /\bconstant (?!100)\d|\b(?:×|x) ?50\b/,
    room: 0.01,
    source: "the usual multiplying constant of a tacheometer is 100: common practice",
    examples: [
      {
        entry: {
          text: "38.4 m",
          what: "distance by the stadia hairs",
          context: {
            related: [
              { what: "upper hair", text: "1.642 m" },
              { what: "lower hair", text: "1.258 m" },
            ],
          },
        },
        wrong: "3.84 m",
      },
    ],
  },
  {
    says: "The middle hair reads the mean of the other two",
    result: role(/\b(?:middle|mid|centre|axial)\b/, "length"),
    given: [upper, lower],
    of: (top, bottom) => (top + bottom) / 2,
    only: hairs,
    room: 0.002,
    examples: [
      {
        entry: { text: "upper 1.642, middle 1.450, lower 1.258 m", what: "staff readings, stadia hairs" },
        wrong: "upper 1.642, middle 1.540, lower 1.258 m",
      },
    ],
  },
  {
    says: "The way on the level is the slope by the cosine of its angle",
    result: role(/\bhorizontal\b/, "length"),
    given: [
      roleBut(/\bslope\b/, /\bhorizontal\b/, "length"),
      role(/\b(?:slope|vertical|angle|inclination)\b/, "angle"),
    ],
    of: (slope, angle) => slope * Math.cos(angle),
    room: 0.002,
    source: "geometry",
    examples: [
      {
        entry: {
          text: "98.48 m",
          what: "horizontal distance",
          context: {
            related: [
              { what: "slope distance", text: "100.00 m" },
              { what: "vertical angle", text: "10°" },
            ],
          },
        },
        wrong: "89.48 m",
      },
    ],
  },
  {
    says: "A back bearing is half a circle from the bearing",
    result: role(/\bback[- ]bearing\b/, "angle"),
    given: [roleBut(/\bbearing\b/, /\bback[- ]bearing\b/, "angle")],
    of: (bearing) => (bearing + Math.PI) % (2 * Math.PI),
    only: /\b(?:compass|theodolite|survey\w*|traverse|prismatic|circumferentor|bearing from)\b/,
    room: 0.01,
    examples: [
      {
        entry: {
          text: "235°",
          what: "back bearing",
          context: { part: "prismatic compass", related: [{ what: "forward bearing", text: "55°" }] },
        },
        wrong: "253°",
      },
    ],
  },
];
