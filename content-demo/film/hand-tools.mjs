import { arc, circle, curve, roundedRectangle } from "./outlines.mjs";
import { bar, box, extrude, join, posed, turned } from "./shapes.mjs";
import { chain, move, turn } from "./vector.mjs";

/**
 * Tools. Spanners and wrenches lie in the plane of z and y with what they hold at the origin and their handle
 * pointing up (+y); x is the axis of the nut. Turned tools lie along x.
 */
/** An open-ended spanner for a nut of that width. */
export function openSpanner(across, length) {
  const r = across * 0.98;
  const half = across / 2 + 0.01;
  const jaw = [
    [half, -r * 0.92],
    [half, 0.16 * across],
    [0, half * 1.05],
    [-half, 0.16 * across],
    [-half, -r * 0.92],
  ];
  const outside = arc([0, 0], r, -105, -242, 22);
  const right = outside.map(([a, b]) => [-a, b]).reverse();
  const shank = 0.42 * across;
  const tail = arc([0, length], shank, 180, 0, 12);
  const head = [
    ...jaw,
    ...outside.filter(([a]) => a < -half * 1.02),
    [-shank, r * 1.1],
    ...tail,
    [shank, r * 1.1],
    ...right.filter(([a]) => a > half * 1.02),
  ];
  return extrude(head, [], -0.1, 0.1, { material: "tool", side: "toolBright" });
}

/** A ring spanner, its handle set off to the right so that it clears what stands round the nut. */
export function ringSpanner(across, length) {
  const r = across * 0.86;
  const ring = extrude(circle([0, 0], r, 40), [circle([0, 0], across * 0.58, 12)], -0.14, 0.14, {
    material: "tool",
    side: "toolBright",
  });
  const shank = posed(
    extrude(roundedRectangle(0.42, length, 0.18), [], -0.07, 0.07, { material: "tool", side: "toolBright" }),
    chain(move(0.42, 0, 0), turn([0, 0, 1], -8), move(0, r * 0.8 + length / 2, 0)),
  );
  const crank = posed(
    box([-0.09, 0, -0.2], [0.09, 0.62, 0.2], "tool"),
    chain(move(0.02, r * 0.72, 0), turn([0, 0, 1], -40)),
  );
  return join(ring, crank, shank);
}

/** A beam torque wrench with a socket: the pointer stays, the beam bends over the scale. */
export function torqueWrench(across) {
  const socket = turned(
    `-0.16,0 -0.16,${across * 0.72} 0.9,${across * 0.72} 0.98,${across * 0.66} 0.98,0`,
    "toolBright",
  );
  const head = turned("0.98,0 0.98,0.42 1.5,0.42 1.56,0.36 1.56,0", "tool");
  const beam = bar(
    [
      [1.26, 0.3, 0],
      [1.26, 7.4, 0],
    ],
    0.13,
    "toolBright",
  );
  const grip = bar(
    [
      [1.26, 5.9, 0],
      [1.26, 6.0, 0],
      [1.26, 7.7, 0],
      [1.26, 7.8, 0],
    ],
    [0.2, 0.27, 0.27, 0.2],
    "handle",
  );
  const pointer = bar(
    [
      [1.46, 0.2, 0],
      [1.5, 4.9, 0],
    ],
    [0.06, 0.03],
    "tool",
  );
  const plate = extrude(
    [...arc([0, 0], 5.1, 78, 102, 10), ...arc([0, 0], 4.5, 102, 78, 10)],
    [],
    1.38,
    1.42,
    { material: "label", side: "toolBright" },
  );
  return join(socket, head, beam, grip, pointer, plate);
}

/** A feeler gauge with one blade out, its point at the origin, the blade upwards; thin along x. */
export const feeler = join(
  extrude(
    [[-0.25, 0.25], ...arc([0, 0.25], 0.25, 180, 360, 12), [0.25, 4.2], [-0.25, 4.2]],
    [],
    -0.016,
    0.016,
    { material: "toolBright" },
  ),
  extrude(
    roundedRectangle(0.66, 4.2, 0.3).map(([a, b]) => [a, b + 5.1]),
    [circle([0, 6.85], 0.1, 12)],
    0.05,
    0.11,
    { material: "tool" },
  ),
  extrude(
    roundedRectangle(0.66, 4.2, 0.3).map(([a, b]) => [a, b + 5.1]),
    [circle([0, 6.85], 0.1, 12)],
    -0.11,
    -0.05,
    { material: "tool" },
  ),
  extrude(
    roundedRectangle(0.54, 3.6, 0.25).map(([a, b]) => [a, b + 5.0]),
    [],
    -0.05,
    0.05,
    { material: "toolBright" },
  ),
);

/** A scriber, its point at the origin, its length along +y. */
export const scriber = posed(
  join(
    turned("0,0 0.02,0.015 1.1,0.075 1.1,0", "toolBright", { steps: 20 }),
    turned("1.1,0 1.1,0.12 1.2,0.16 4.4,0.16 4.5,0.12 4.5,0", "knurl", { steps: 24 }),
  ),
  turn([0, 0, 1], 90),
);

/** A seal hook: the point at the origin turns back towards +x, the handle runs off along +x. */
export const sealHook = join(
  bar(
    curve([
      [0.02, 0.34, 0],
      [-0.1, 0.24, 0],
      [-0.08, 0.05, 0],
      [0.18, -0.02, 0],
      [1.4, 0, 0],
      [3.4, 0, 0],
    ]),
    Array.from({ length: 41 }, (_, k) => (k < 6 ? 0.025 + 0.011 * k : 0.09)),
    "toolBright",
  ),
  turned("3.2,0 3.2,0.14 3.34,0.24 3.8,0.28 5.4,0.26 6.3,0.3 6.5,0.2 6.5,0", "handle"),
);

/** A cloth wound on a wooden rod, for wiping a bore; the front end at x = 0. */
export const swab = join(
  turned("0,0 0.02,0.3 0.12,0.48 0.34,0.55 0.6,0.5 0.85,0.57 1.05,0.5 1.2,0.34 1.22,0", "cloth"),
  turned("1.2,0 1.2,0.14 6.5,0.14 6.5,0", "wood"),
);
