import { flat } from "./flange.mjs";
import { arc, circle, hexagon, points, polar } from "./outlines.mjs";
import { box, extrude, join, plainEnds, posed, turned } from "./shapes.mjs";
import { chain, move, turn } from "./vector.mjs";

/** What runs in the pump: impeller, key, shaft, pulley, washer, bush and seal. */
const jackAngles = [62, 242];
export const jackCentres = jackAngles.map((degrees) => {
  const [z, y] = polar(degrees, 0.86);
  return [0, y, z];
});

/** A curved vane whose inner end lies at an angle. */
function vane(start) {
  const middle = Array.from({ length: 13 }, (_, k) => {
    const radius = 0.4 + (0.98 * k) / 12;
    return polar(start - 62 * (k / 12) ** 1.2, radius);
  });
  const edge = (sign) =>
    middle.map(([a, b], k) => {
      const [p, q] = [middle[Math.max(0, k - 1)], middle[Math.min(12, k + 1)]];
      const length = Math.hypot(q[0] - p[0], q[1] - p[1]);
      return [a - ((q[1] - p[1]) / length) * 0.055 * sign, b + ((q[0] - p[0]) / length) * 0.055 * sign];
    });
  return extrude([...edge(1), ...edge(-1).reverse()], [], -0.99, -0.42, { material: "brass" });
}

export const impeller = join(
  extrude(
    circle([0, 0], 1.4, 96),
    [circle([0, 0], 0.23, 28), ...jackCentres.map((c) => circle(flat(c), 0.14, 20))],
    -1.12,
    -0.98,
    { material: "brass" },
  ),
  turned("-1.15,0.23 -1.15,0.42 -0.34,0.42 -0.3,0.38 -0.3,0.23", "brass", { steps: 40 }),
  ...[0, 60, 120, 180, 240, 300].map((k) => vane(k + 20)),
);

/** The impeller nut, on the pump's axis; a groove round its corners says left hand. */
export const impellerNut = join(
  extrude(hexagon(0.64), [circle([0, 0], 0.18, 20)], -0.3, -0.16, { material: "brass", sharp: 20 }),
  turned("-0.16,0.18 -0.16,0.31 -0.1,0.31 -0.1,0.18", "brassDark", { steps: 32 }),
  extrude(hexagon(0.64), [circle([0, 0], 0.18, 20)], -0.1, 0.04, { material: "brass", sharp: 20 }),
);

/** The key: a half-moon, flat side up, across the axis. */
export const key = posed(
  extrude(arc([0, 0], 0.27, 180, 360, 16), [], -0.0625, 0.0625, { material: "steel" }),
  chain(move(-0.72, 0.28, 0), turn([0, 1, 0], 90)),
);

const rod = (x0, x1, r, material) => turned(`${x0},0 ${x0},${r} ${x1},${r} ${x1},0`, material);

export const shaft = join(
  rod(-4.6, -1.62, 0.25, "steel"),
  rod(-1.62, -1.22, 0.251, "track"),
  rod(-1.22, -1.16, 0.25, "steel"),
  rod(-1.16, -0.3, 0.22, "steel"),
  turned("-0.3,0 -0.3,0.185 0.18,0.185 0.22,0.15 0.22,0", "thread", { steps: 28 }).map(plainEnds),
  box([-0.95, 0.18, -0.066], [-0.49, 0.2225, 0.066], "dark"),
);

const spokes = [0, 72, 144, 216, 288].map((degrees) =>
  posed(
    extrude(points("-0.17,0.4 0.17,0.4 0.11,1.6 -0.11,1.6"), [], -4.15, -3.97, { material: "pulley" }),
    turn([1, 0, 0], degrees),
  ),
);
export const pulley = join(
  turned("-4.4,1.5 -4.4,1.68 -4.06,1.72 -3.72,1.68 -3.72,1.5 -4.06,1.54", "pulley", { steps: 96 }),
  turned("-4.45,0.25 -4.45,0.46 -4.4,0.5 -3.38,0.5 -3.34,0.46 -3.34,0.25", "pulley", { steps: 48 }),
  ...spokes,
  posed(
    turned("0.44,0 0.44,0.1 0.6,0.1 0.6,0", "steel", { steps: 16 }),
    chain(move(-4.28, 0, 0), turn([0, 0, 1], 90)),
  ),
);

export const washer = turned("-3.27,0.26 -3.27,0.52 -3.2,0.52 -3.2,0.26", "bronze", { steps: 48 });

/** Cut open from the front to the top, like the body. */
const quarterOut = (cutOpen) => (cutOpen ? { from: 90, to: 360 } : {});

export const bush = (cutOpen) =>
  turned("-3.2,0.255 -3.2,0.4 -1.6,0.4 -1.6,0.255", "bronze", { cut: "cutBronze", ...quarterOut(cutOpen) });

/** The lip seal: steel case, rubber lip towards the impeller, garter spring behind the lip. */
export function seal(cutOpen) {
  const ring = (profile, material, cut) =>
    turned(profile, material, { cut, steps: 64, ...quarterOut(cutOpen) });
  return join(
    ring("-1.59,0.685 -1.22,0.685 -1.22,0.63 -1.53,0.63 -1.53,0.44 -1.59,0.44", "sealCase", "cutSteel"),
    ring(
      "-1.53,0.6 -1.5,0.628 -1.44,0.628 -1.42,0.47 -1.26,0.4 -1.23,0.34 -1.34,0.25 -1.38,0.3 -1.53,0.42",
      "rubber",
      "rubberCut",
    ),
    ring(circle([-1.275, 0.405], 0.035, 12), "steel", "cutSteel"),
  );
}

/** A jacking screw on its own axis, its point at x = 0, its head to the right. */
export const jackingScrew = join(
  turned("0,0 0,0.09 0.06,0.13 2.1,0.13 2.1,0", "thread", { steps: 20 }).map(plainEnds),
  extrude(hexagon(0.42), [], 2.1, 2.34, { material: "steel", sharp: 20 }),
);
