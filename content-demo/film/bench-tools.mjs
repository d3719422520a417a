import { arc, curve, points, roundedRectangle } from "./outlines.mjs";
import { bar, box, extrude, join, posed, turned } from "./shapes.mjs";
import { chain, move, turn } from "./vector.mjs";

/** Tools that stand on the bench or are held by it. Turned ones lie along x. */

/** The pressing mandrel: pilot to the left, shoulder at x = 0, head to the right. */
export const mandrel = turned(
  "-2.6,0 -2.6,0.2 -2.54,0.248 0,0.248 0,0.66 0.06,0.672 1.5,0.672 1.56,0.62 1.56,0.5 1.66,0.44 2.3,0.44 2.38,0.36 2.38,0",
  "steel",
  { steps: 48 },
);

/** The ram of a press, its face at x = 0. */
export const ram = turned("0,0 0,0.5 0.08,0.58 4,0.58 4,0", "tool", { steps: 48 });

const frame = [
  ...arc([0, 0], 1.55, 180, 360, 30),
  [1.55, 0.2],
  [0.98, 0.2],
  [0.98, 0.0],
  ...arc([0, 0], 0.98, 0, -180, 30).slice(1, -1),
  [-0.98, 0.0],
  [-0.98, 0.2],
  [-1.55, 0.2],
];

/**
 * A micrometer with its bow below: the measuring faces meet at x = 0, `open` inches apart; the fixed one to
 * the left. The bow lies in the plane of x and y.
 */
export function micrometer(open) {
  const left = -open / 2;
  const right = open / 2;
  const bow = posed(
    extrude(frame, [], -0.16, 0.16, { material: "tool", side: "toolBright" }),
    chain(move(0.2, 0, 0), turn([0, 1, 0], 90)),
  );
  const anvil = turned(`${left - 1.2},0 ${left - 1.2},0.13 ${left},0.13 ${left},0`, "toolBright", {
    steps: 24,
  });
  const spindle = turned(`${right},0 ${right},0.13 1.6,0.13 1.6,0`, "toolBright", { steps: 24 });
  const sleeve = turned("1.15,0 1.15,0.24 2.7,0.24 2.7,0", "graduated", { steps: 36 });
  const thimble = turned(
    `${right + 2.0},0 ${right + 2.0},0.27 ${right + 2.16},0.34 ${right + 3.5},0.34 ${right + 3.56},0.28 ${right + 3.56},0`,
    "knurl",
    { steps: 36 },
  );
  const ratchet = turned(
    `${right + 3.5},0 ${right + 3.5},0.19 ${right + 4.0},0.19 ${right + 4.0},0`,
    "tool",
    { steps: 28 },
  );
  return join(bow, anvil, spindle, sleeve, thimble, ratchet);
}

/** A wash bottle that stands on y = 0; the end of its spout lies at `spoutEnd`. */
export const spoutEnd = [-1.5, 3.35, 0];
export const washBottle = join(
  posed(
    turned("0,0 0,0.85 0.1,0.92 2.3,0.92 2.75,0.6 2.9,0.42 2.9,0", "bottle", { steps: 48 }),
    turn([0, 0, 1], 90),
  ),
  posed(turned("2.85,0 2.85,0.48 3.2,0.48 3.34,0.3 3.34,0", "cap", { steps: 40 }), turn([0, 0, 1], 90)),
  bar(
    curve([[0, 3.2, 0], [0, 3.7, 0], [-0.3, 4.0, 0], [-0.9, 3.8, 0], spoutEnd]),
    [...Array(20).fill(0.1), ...Array(13).fill(0.075)],
    "cap",
  ),
);
export const drop = turned("-0.09,0 -0.04,0.05 0.04,0.06 0.1,0.03 0.16,0", "water", { steps: 16 });

/** A round tin, open on top. */
export const tin = posed(
  turned("0,0 0,1.15 0.75,1.2 0.8,1.25 0.84,1.2 0.8,1.12 0.08,1.08 0.08,0", "tin", { steps: 56 }).map((t) =>
    t.normals[0][0] > 0.6 || t.normals[0][1] * t.points[0][1] + t.normals[0][2] * t.points[0][2] < 0
      ? { ...t, material: "tinInside" }
      : t,
  ),
  turn([0, 0, 1], 90),
);

/** A round tub, open on top, with the acid in it; the level is so high that a cover is lost in it. */
export const tub = join(
  posed(
    turned("0,0 0,2.6 0.1,2.7 2.5,2.95 2.58,3.05 2.64,2.98 2.58,2.85 0.16,2.6 0.16,0", "bottle", {
      steps: 72,
    }),
    turn([0, 0, 1], 90),
  ),
  posed(turned("1.85,0 1.85,2.74 1.9,2.74 1.9,0", "acid", { steps: 72 }), turn([0, 0, 1], 90)),
);

/** The waste bag: a flat pouch that stands on y = 0, open on top, with a label on its front (+x). */
export const bag = join(
  posed(
    turned("0,0 0,1.5 0.06,1.75 0.3,1.9 3.3,2.02 3.42,2.06 3.42,2.0 0.34,1.8 0.1,1.6 0.08,0", "bag", {
      steps: 64,
    }),
    chain([0.34, 0, 0, 0, 0, 1, 0, 0, 0, 0, 1, 0], turn([0, 0, 1], 90)),
  ),
  posed(extrude(roundedRectangle(1.5, 1.0, 0.08), [], 0, 0.03, { material: "label" }), move(0.66, 1.75, 0)),
);

/** A wooden block that holds a micrometer by its bow; the middle of the bow lies at x = 0, z = 0. */
export const stand = join(
  box([-0.75, 0, -0.95], [0.75, 1.45, -0.19], "wood"),
  box([-0.75, 0, 0.19], [0.75, 1.45, 0.95], "wood"),
  box([-0.75, 0, -0.19], [0.75, 0.85, 0.19], "wood"),
);

/** A wooden block with a groove on top for a shaft that lies along x; the shaft's middle lies at `grooveHeight`. */
export const grooveHeight = 2.0;
export const block = extrude(
  points("-0.9,0 0.9,0 0.9,2.06 0.41,2.06 0,1.65 -0.41,2.06 -0.9,2.06"),
  [],
  -0.4,
  0.4,
  { material: "wood" },
);

/** A steel rule of six inches, flat on the bench, along x from 0. */
export const rule = posed(
  extrude(points("0,0 6,0 6,0.75 0,0.75"), [], 0, 0.04, { material: "rule" }),
  chain(turn([0, 1, 0], 90), turn([0, 0, 1], 90)),
);

/** A sheet of paper, flat on the bench, its middle at the origin. */
export const sheet = posed(
  extrude(roundedRectangle(6.2, 9.4, 0.05), [], 0, 0.015, { material: "paper" }),
  chain(turn([0, 0, 1], 90)),
);
