import { axisHeight, flat, outline, studCentres, studHoles } from "./flange.mjs";
import { circle, hexagon, points, roundedRectangle } from "./outlines.mjs";
import { box, extrude, join, plainEnds, posed, revolve, turned } from "./shapes.mjs";
import { chain, move, turn } from "./vector.mjs";

/** Turns what lies along x upright. */
const upright = turn([0, 0, 1], 90);

/** Outer side of bowl and neck, then the bores from left to right: bush, seal, bowl. */
const bowl = points(`
  -0.02,1.5 -0.02,1.7 -1.1,1.7 -1.28,1.66 -1.43,1.55 -1.53,1.38 -1.6,1.12 -1.68,0.98 -1.8,0.92 -2,0.9
  -3.12,0.84 -3.2,0.76 -3.2,0.4 -1.6,0.4 -1.6,0.6875 -1.2,0.6875 -1.2,1.38 -1.17,1.46 -1.09,1.5
`);

/** The body with its studs' flange, foot, outlet and grease cup; cut open from the front to the top on request. */
export function body(cutOpen = false) {
  const range = cutOpen ? { from: 90, to: 360 } : {};
  const shell = cutOpen ? [[0, 1.5], [0, 2.02], [-0.3, 2.02], [-0.3, 1.7], ...bowl.slice(2)] : bowl;
  const casting = revolve(shell, { material: "paint", ...range, steps: 96 }).map(inside);
  const flange = cutOpen
    ? studCentres.slice(1).flatMap((c) =>
        extrude(circle(flat(c), 0.4, 36), [], -0.3, -0.004, {
          material: "machined",
          side: "paint",
          back: "paint",
        }),
      )
    : extrude(outline, [circle([0, 0], 1.497, 96)], -0.3, 0, {
        material: "machined",
        side: "paint",
        back: "paint",
        bore: "paintInside",
      });
  return join(casting, flange, outlet(), foot(), cutOpen ? [] : greaseCup());
}

/** Machined and inner faces of the casting have their own tone. */
function inside(triangle) {
  if (triangle.material !== "paint") return triangle;
  const radius = Math.max(...triangle.points.map(([, y, z]) => Math.hypot(y, z)));
  const [left, right] = [Math.min, Math.max].map((f) => f(...triangle.points.map((p) => p[0])));
  if (left > -0.01 || right < -3.19) return { ...triangle, material: "machined" };
  if (radius < 0.7 && left > -1.61 && triangle.points.every(([, y, z]) => Math.hypot(y, z) < 0.69)) {
    return { ...triangle, material: "machined" };
  }
  const inward =
    triangle.normals[0][1] * triangle.points[0][1] + triangle.normals[0][2] * triangle.points[0][2] < 0;
  const backWall = left > -1.21 && radius < 1.51 && triangle.normals[0][0] > 0.3;
  return radius < 1.52 && (inward || backWall) ? { ...triangle, material: "paintInside" } : triangle;
}

/** The outlet leaves the bowl at the back, as a tangent. */
function outlet() {
  const profile = points("1.38,0.42 2.2,0.42 2.24,0.64 2.44,0.64 2.44,0.3 1.38,0.3");
  return posed(revolve(profile, { material: "paint", steps: 48 }), chain(move(-0.74, 0, -0.98), upright));
}

function foot() {
  const low = -axisHeight;
  const plate = posed(
    extrude(
      roundedRectangle(3.3, 2.5, 0.3),
      points("1.3,0.9 -1.3,0.9 1.3,-0.9 -1.3,-0.9").map((c) => circle(c, 0.16, 20)),
      0,
      0.28,
      { material: "paint" },
    ),
    chain(move(-1.75, low, 0), turn([0, 0, 1], 90)),
  );
  const web = posed(
    extrude(points("-0.75,0 0.75,0 0.6,1.52 -0.6,1.52"), [], -0.62, 0.62, { material: "paint" }),
    move(-1.85, low + 0.28, 0),
  );
  return join(plate, web);
}

function greaseCup() {
  const cup = join(
    turned("0.8,0 0.8,0.12 1.02,0.12 1.02,0", "brass", { steps: 24 }),
    turned("1.02,0 1.02,0.27 1.16,0.27 1.16,0", "brass", { steps: 32 }),
    turned("1.16,0 1.16,0.32 1.42,0.32 1.5,0.26 1.52,0", "brass", { steps: 32 }),
  );
  return posed(cup, chain(move(-2.5, 0, 0), upright));
}

export const stud = turned("-0.28,0 -0.28,0.125 0.92,0.125 0.97,0.09 0.97,0", "thread", { steps: 20 }).map(
  plainEnds,
);

/** A cover nut on its own axis; its seat lies at x = 0. */
export const coverNut = join(
  turned("0,0.15 0,0.31 0.06,0.31 0.06,0.15", "brass", { steps: 28 }),
  extrude(hexagon(0.5), [circle([0, 0], 0.135, 16)], 0.06, 0.32, { material: "brass", sharp: 20 }),
);

export const cover = join(
  extrude(outline, [circle([0, 0], 1.3, 60), ...studHoles], 0.05, 0.35, { material: "paint" }),
  turned(
    "0.34,1.62 0.42,1.5 0.6,1.2 0.74,0.86 0.82,0.68 0.92,0.62 1.34,0.62 1.38,0.69 1.5,0.69 1.55,0.63 1.55,0.48 0.24,0.48 0.24,1.3",
    "paint",
    { steps: 72, sharp: 28 },
  ).map((t) =>
    t.points.every(([x, y, z]) => x > 1.5 || (x > 0.3 && Math.hypot(y, z) < 0.5))
      ? { ...t, material: t.points.every(([x]) => x > 1.5) ? "machined" : "paintInside" }
      : t,
  ),
  posed(turned("0.4,0 0.4,0.25 0.66,0.22 0.66,0", "paint", { steps: 28 }), move(0, -1.2, 0)),
  posed(turned("0.655,0 0.655,0.11 0.664,0.11 0.664,0", "dark", { steps: 24 }), move(0, -1.2, 0)),
);

/** What closes the drain at the foot of the cover: each on its own axis, with its seat at x = 0. */
export const drainPlug = join(
  turned("-0.42,0 -0.4,0.1 0,0.1 0,0", "thread", { steps: 20 }).map(plainEnds),
  turned("0,0 0,0.22 0.05,0.22 0.05,0", "brass", { steps: 28 }),
  extrude(hexagon(0.38), [], 0.05, 0.28, { material: "brass", sharp: 20 }),
);
const ringOf = (radius, thick, material) =>
  turned(`0,0.115 0,${radius} ${thick},${radius} ${thick},0.115`, material, { steps: 32 });
export const steelWasher = ringOf(0.26, 0.06, "steel");
export const fibreWasher = { old: ringOf(0.29, 0.08, "gasketOld"), fresh: ringOf(0.29, 0.08, "fibre") };
/** Where each lies along the axis of the drain, which runs 1.2 in below that of the pump. */
export const drainBelow = 1.2;
export const drainSeats = { fibre: 0.66, steel: 0.74, plug: 0.8 };

/** The scratch across the joint: on the body and on the cover. */
export const scratchOnBody = box([-0.3, 2.005, -0.022], [0.0, 2.032, 0.022], "scratch");
export const scratchOnCover = box([0.05, 2.005, -0.022], [0.35, 2.032, 0.022], "scratch");
