import { points } from "./outlines.mjs";
import { orient, triangulate } from "./triangulate.mjs";
import { cross, scale, sub, unit } from "./vector.mjs";

/**
 * Solids as triangles. Each triangle has three points with a normal and pattern coordinates, a material, and
 * a face: where two faces of one solid meet, ink is drawn. Curved faces are one face all round.
 */
let faces = 0;
const newFace = () => (faces = (faces % 250) + 1);

export const join = (...solids) => solids.flat();

/** The solid with its points moved by a function of the point; normals are turned by the same pose. */
export function posed(solid, pose) {
  const point = ([x, y, z], w) =>
    [0, 4, 8].map((r) => pose[r] * x + pose[r + 1] * y + pose[r + 2] * z + pose[r + 3] * w);
  return solid.map((t) => ({
    ...t,
    points: t.points.map((p) => point(p, 1)),
    normals: t.normals.map((n) => point(n, 0)),
  }));
}

function quad(out, [a, b, c, d], [na, nb, nc, nd], [ua, ub, uc, ud], face, material) {
  out.push({ points: [a, b, c], normals: [na, nb, nc], marks: [ua, ub, uc], face, material });
  out.push({ points: [a, c, d], normals: [na, nc, nd], marks: [ua, uc, ud], face, material });
}

const turnedLess = (a, b, degrees) => a[0] * b[0] + a[1] * b[1] > Math.cos((degrees * Math.PI) / 180);

/** Normals at both ends of each stretch of a path, and the face that each stretch belongs to. */
function stretches(path, closed, sharp) {
  const count = closed ? path.length : path.length - 1;
  const flat = [];
  for (let i = 0; i < count; i++) {
    const [a, b] = path[i];
    const [c, d] = path[(i + 1) % path.length];
    const length = Math.hypot(c - a, d - b) || 1;
    flat.push([(d - b) / length, -(c - a) / length]);
  }
  const smooth = (i, j) => (closed || (j > 0 && j < count)) && turnedLess(flat[i], flat[j % count], sharp);
  const between = (i, j) => {
    const [x, y] = [flat[i][0] + flat[j][0], flat[i][1] + flat[j][1]];
    const length = Math.hypot(x, y) || 1;
    return [x / length, y / length];
  };
  const result = [];
  let face = newFace();
  const start = closed
    ? Math.max(
        0,
        flat.findIndex((_, i) => !smooth((i + count - 1) % count, i)),
      )
    : 0;
  for (let k = 0; k < count; k++) {
    const i = (start + k) % count;
    const before = (i + count - 1) % count;
    const after = (i + 1) % count;
    const joinsBefore = (closed || i > 0) && smooth(before, i);
    const joinsAfter = (closed || i < count - 1) && smooth(i, closed ? after : i + 1);
    if (k > 0 && !joinsBefore) face = newFace();
    result.push({
      i,
      face,
      first: joinsBefore ? between(before, i) : flat[i],
      last: joinsAfter ? between(i, after) : flat[i],
    });
  }
  return result;
}

/**
 * A solid of revolution about x. `profile` is a closed outline of [x, radius]. `from` and `to` are degrees
 * round the axis, 0 at the front (+z) and 90 on top (+y); a part of a turn is closed by cut faces.
 */
export function revolve(
  profile,
  { material, cut = "cut", from = 0, to = 360, steps = 72, sharp = 32, closed = true } = {},
) {
  const outline = closed ? orient(profile, -1) : profile;
  const out = [];
  const count = Math.max(2, Math.round((steps * (to - from)) / 360));
  const angles = Array.from(
    { length: count + 1 },
    (_, k) => ((from + ((to - from) * k) / count) * Math.PI) / 180,
  );
  const point = ([x, r], a) => [x, r * Math.sin(a), r * Math.cos(a)];
  const normal = ([x, r], a) => [x, r * Math.sin(a), r * Math.cos(a)];
  for (const { i, face, first, last } of stretches(outline, closed, sharp)) {
    const p = outline[i];
    const q = outline[(i + 1) % outline.length];
    if (p[1] < 1e-9 && q[1] < 1e-9) continue;
    const [np, nq] = [scale2(first, -1), scale2(last, -1)];
    for (let k = 0; k < count; k++) {
      const [a, b] = [angles[k], angles[k + 1]];
      quad(
        out,
        [point(p, a), point(q, a), point(q, b), point(p, b)],
        [normal(np, a), normal(nq, a), normal(nq, b), normal(np, b)],
        [
          [p[0], a],
          [q[0], a],
          [q[0], b],
          [p[0], b],
        ],
        face,
        material,
      );
    }
  }
  if (to - from < 359.9) {
    for (const [a, sign] of [
      [angles[0], -1],
      [angles[count], 1],
    ]) {
      const face = newFace();
      const n = [0, Math.cos(a) * sign, -Math.sin(a) * sign];
      for (const triangle of triangulate(outline)) {
        const points = triangle.map((p) => point(p, a));
        out.push(facing({ points, normals: [n, n, n], marks: triangle, face, material: cut }));
      }
    }
  }
  return out.map(facing);
}

const scale2 = ([a, b], k) => [a * k, b * k];

/** The triangle wound so that it turns the way of its normal. */
function facing(triangle) {
  const [a, b, c] = triangle.points;
  const n = cross(sub(b, a), sub(c, a));
  const m = triangle.normals[0];
  if (n[0] * m[0] + n[1] * m[1] + n[2] * m[2] >= 0) return triangle;
  return {
    ...triangle,
    points: [a, c, b],
    normals: [triangle.normals[0], triangle.normals[2], triangle.normals[1]],
    marks: [triangle.marks[0], triangle.marks[2], triangle.marks[1]],
  };
}

/** A flat outline of [z, y] points with holes, given thickness along x from `x0` to `x1`. */
export function extrude(
  outline,
  holes,
  x0,
  x1,
  { material, side = material, bore = side, back = material, sharp = 32 } = {},
) {
  const out = [];
  const rings = [orient(outline, 1), ...holes.map((hole) => orient(hole, -1))];
  for (const [x, sign] of [
    [x0, -1],
    [x1, 1],
  ]) {
    const face = newFace();
    const n = [sign, 0, 0];
    for (const triangle of triangulate(outline, holes)) {
      const points = triangle.map(([z, y]) => [x, y, z]);
      out.push(
        facing({ points, normals: [n, n, n], marks: triangle, face, material: sign < 0 ? back : material }),
      );
    }
  }
  for (const [index, ring] of rings.entries()) {
    for (const { i, face, first, last } of stretches(ring, true, sharp)) {
      const [p, q] = [ring[i], ring[(i + 1) % ring.length]];
      const [np, nq] = [first, last].map(([z, y]) => [0, y, z]);
      quad(
        out,
        [
          [x0, p[1], p[0]],
          [x0, q[1], q[0]],
          [x1, q[1], q[0]],
          [x1, p[1], p[0]],
        ],
        [np, nq, nq, np],
        [
          [x0, 0],
          [x0, 1],
          [x1, 1],
          [x1, 0],
        ],
        face,
        index === 0 ? side : bore,
      );
    }
  }
  return out.map(facing);
}

/** A box from one corner to the other. */
export function box([x0, y0, z0], [x1, y1, z1], material) {
  const outline = [
    [z0, y0],
    [z1, y0],
    [z1, y1],
    [z0, y1],
  ];
  return extrude(outline, [], x0, x1, { material });
}

/** A round bar along a path of points, with a radius at each. */
export function bar(path, radii, material, { steps = 14 } = {}) {
  const out = [];
  const face = newFace();
  const rings = path.map((point, i) => {
    const along = unit(sub(path[Math.min(i + 1, path.length - 1)], path[Math.max(i - 1, 0)]));
    const up = Math.abs(along[1]) < 0.9 ? [0, 1, 0] : [1, 0, 0];
    const a = unit(cross(along, up));
    const b = cross(along, a);
    const radius = Array.isArray(radii) ? radii[i] : radii;
    return Array.from({ length: steps }, (_, k) => {
      const angle = (k * 2 * Math.PI) / steps;
      const n = [0, 1, 2].map((j) => a[j] * Math.cos(angle) + b[j] * Math.sin(angle));
      return { p: [0, 1, 2].map((j) => point[j] + n[j] * radius), n, along, point };
    });
  });
  for (let i = 0; i + 1 < rings.length; i++) {
    for (let k = 0; k < steps; k++) {
      const [a, b] = [rings[i][k], rings[i + 1][k]];
      const [d, c] = [rings[i][(k + 1) % steps], rings[i + 1][(k + 1) % steps]];
      const marks = [
        [i, k],
        [i + 1, k],
        [i + 1, k + 1],
        [i, k + 1],
      ];
      quad(out, [a.p, b.p, c.p, d.p], [a.n, b.n, c.n, d.n], marks, face, material);
    }
  }
  for (const [ring, sign] of [
    [rings[0], -1],
    [rings[rings.length - 1], 1],
  ]) {
    const end = newFace();
    const n = scale(ring[0].along, sign);
    for (let k = 0; k < steps; k++) {
      const points = [ring[0].point, ring[k].p, ring[(k + 1) % steps].p];
      out.push({
        points,
        normals: [n, n, n],
        marks: [
          [0, 0],
          [0, 0],
          [0, 0],
        ],
        face: end,
        material,
      });
    }
  }
  return out.map(facing);
}

/** A solid turned about x; its profile is an outline or the text of one, the radius second. */
export const turned = (profile, material, options = {}) =>
  revolve(typeof profile === "string" ? points(profile) : profile, { material, steps: 40, ...options });

/** Threads are drawn round a bar, not across its ends. */
export function plainEnds(triangle) {
  const across = triangle.material === "thread" && triangle.normals.every(([x]) => Math.abs(x) > 0.5);
  return across ? { ...triangle, material: "steel" } : triangle;
}
