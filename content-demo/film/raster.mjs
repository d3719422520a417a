import { colours, materialNumber, patternOf, shades, toned } from "./materials.mjs";
import { cross, sub, unit } from "./vector.mjs";

/** Pictures are drawn at twice their size each way and then halved, which smooths every edge. */
export const fine = 2;

/** A camera: where it stands, what it looks at, and how wide it sees, in degrees from top to bottom. */
export function camera({ eye, target, angle }, width, height) {
  const ahead = unit(sub(target, eye));
  const right = unit(cross(ahead, [0, 1, 0]));
  const up = cross(right, ahead);
  const focal = (height * fine) / 2 / Math.tan((angle * Math.PI) / 360);
  return { eye, ahead, right, up, focal, w: width * fine, h: height * fine };
}

/** Light comes from the upper front right, as seen by who stands at the bench. */
export const light = unit([0.52, 0.8, 0.62]);

const flatSolids = new WeakMap();

/** A solid as plain rows of numbers: nine for points, nine for normals, six for pattern coordinates a triangle. */
export function flatten(solid) {
  const known = flatSolids.get(solid);
  if (known) return known;
  const flat = {
    count: solid.length,
    points: Float64Array.from(solid.flatMap((t) => t.points.flat())),
    normals: Float64Array.from(solid.flatMap((t) => t.normals.flatMap((n) => unit(n)))),
    marks: Float64Array.from(solid.flatMap((t) => t.marks.flat())),
    faces: Uint8Array.from(solid, (t) => t.face),
    materials: Uint8Array.from(solid, (t) => materialNumber[t.material]),
  };
  flatSolids.set(solid, flat);
  return flat;
}

/** What each point of the fine picture shows: colour, which thing and face, and how near (1 / distance). */
export class Canvas {
  constructor(width, height) {
    this.w = width * fine;
    this.h = height * fine;
    const count = this.w * this.h;
    this.near = new Float32Array(count);
    this.colour = new Uint32Array(count);
    this.owner = new Uint16Array(count);
    this.#nothing();
    this.corner = new Float64Array(9);
    this.screen = new Float64Array(12);
  }

  clear() {
    this.near.fill(0);
    this.owner.fill(0);
    this.#nothing();
  }

  #nothing() {
    this.top = this.h;
    this.bottom = 0;
    this.left = this.w;
    this.right = 0;
  }

  copy(other) {
    this.near.set(other.near);
    this.colour.set(other.colour);
    this.owner.set(other.owner);
    this.top = other.top;
    this.bottom = other.bottom;
    this.left = other.left;
    this.right = other.right;
  }

  /** Draws a solid in a pose as thing number `thing` (1 to 255). */
  draw(solid, pose, thing, cam) {
    const flat = flatten(solid);
    const { points, normals, faces, materials } = flat;
    const { corner, screen } = this;
    const [ex, ey, ez] = cam.eye;
    for (let t = 0; t < flat.count; t++) {
      for (let i = 0; i < 3; i++) {
        const at = t * 9 + i * 3;
        const x = points[at];
        const y = points[at + 1];
        const z = points[at + 2];
        corner[i * 3] = pose[0] * x + pose[1] * y + pose[2] * z + pose[3] - ex;
        corner[i * 3 + 1] = pose[4] * x + pose[5] * y + pose[6] * z + pose[7] - ey;
        corner[i * 3 + 2] = pose[8] * x + pose[9] * y + pose[10] * z + pose[11] - ez;
      }
      if (facesAway(corner) || !project(corner, cam, screen)) continue;
      for (let i = 0; i < 3; i++) screen[9 + i] = brightness(normals, t * 9 + i * 3, pose);
      this.#fill(flat, t, materials[t], (thing << 8) | faces[t]);
    }
  }

  /** Fills the triangle in `screen` (x, y, nearness of three corners, then their brightness), row by row. */
  #fill(flat, t, material, owner) {
    const { near, colour, owner: owners, w, h, screen } = this;
    const x0 = screen[0];
    const y0 = screen[1];
    const twice = (screen[3] - x0) * (screen[7] - y0) - (screen[6] - x0) * (screen[4] - y0);
    if (Math.abs(twice) < 1e-9) return;
    const top = Math.max(0, Math.ceil(Math.min(y0, screen[4], screen[7]) - 0.5));
    const bottom = Math.min(h - 1, Math.floor(Math.max(y0, screen[4], screen[7]) - 0.5));
    if (top > bottom) return;
    if (top < this.top) this.top = top;
    if (bottom > this.bottom) this.bottom = bottom;
    // Weights of corners 1 and 2 change evenly over the picture.
    const ax = (screen[7] - y0) / twice;
    const ay = -(screen[6] - x0) / twice;
    const bx = -(screen[4] - y0) / twice;
    const by = (screen[3] - x0) / twice;
    const n0 = screen[2];
    const n1 = screen[5] - n0;
    const n2 = screen[8] - n0;
    const s0 = screen[9];
    const s1 = screen[10] - s0;
    const s2 = screen[11] - s0;
    const tones = colours[material];
    const pattern = patternOf[material];
    const last = shades - 1;
    for (let y = top; y <= bottom; y++) {
      const py = y + 0.5 - y0;
      // The stretch of the row in which all three weights are at least zero.
      let from = -1e9;
      let to = 1e9;
      for (let side = 0; side < 3; side++) {
        const slope = side === 0 ? ax : side === 1 ? bx : -ax - bx;
        const base = side === 0 ? py * ay : side === 1 ? py * by : 1 - py * (ay + by);
        if (slope > 1e-12) from = Math.max(from, -base / slope);
        else if (slope < -1e-12) to = Math.min(to, -base / slope);
        else if (base < 0) to = -1e9;
      }
      const first = Math.max(0, Math.ceil(from + x0 - 0.5));
      const end = Math.min(w - 1, Math.floor(to + x0 - 0.5));
      if (first < this.left) this.left = first;
      if (end > this.right) this.right = end;
      for (let x = first; x <= end; x++) {
        const px = x + 0.5 - x0;
        const a = px * ax + py * ay;
        const b = px * bx + py * by;
        const nearness = n0 + a * n1 + b * n2;
        const index = y * w + x;
        if (nearness <= near[index]) continue;
        near[index] = nearness;
        owners[index] = owner;
        const shade = (s0 + a * s1 + b * s2) * last;
        let tone = tones[shade < 0 ? 0 : shade > last ? last : shade | 0];
        if (pattern !== null) tone = this.#marked(flat.marks, t, a, b, nearness, pattern, tone);
        colour[index] = tone;
      }
    }
  }

  #marked(marks, t, a, b, nearness, pattern, tone) {
    const { screen } = this;
    const w0 = ((1 - a - b) * screen[2]) / nearness;
    const w1 = (a * screen[5]) / nearness;
    const w2 = (b * screen[8]) / nearness;
    const at = t * 6;
    const u = marks[at] * w0 + marks[at + 2] * w1 + marks[at + 4] * w2;
    const v = marks[at + 1] * w0 + marks[at + 3] * w1 + marks[at + 5] * w2;
    const factor = pattern(u, v);
    return factor === 1 ? tone : toned(tone, factor);
  }
}

/** Corners, seen from the eye, to picture x, picture y and nearness. False where one lies behind the camera. */
function project(corner, { right, up, ahead, focal, w, h }, screen) {
  for (let i = 0; i < 3; i++) {
    const x = corner[i * 3];
    const y = corner[i * 3 + 1];
    const z = corner[i * 3 + 2];
    const depth = x * ahead[0] + y * ahead[1] + z * ahead[2];
    if (depth < 0.2) return false;
    screen[i * 3] = w / 2 + (focal * (x * right[0] + y * right[1] + z * right[2])) / depth;
    screen[i * 3 + 1] = h / 2 - (focal * (x * up[0] + y * up[1] + z * up[2])) / depth;
    screen[i * 3 + 2] = 1 / depth;
  }
  return true;
}

function facesAway(p) {
  const ax = p[3] - p[0];
  const ay = p[4] - p[1];
  const az = p[5] - p[2];
  const bx = p[6] - p[0];
  const by = p[7] - p[1];
  const bz = p[8] - p[2];
  const side = (ay * bz - az * by) * p[0] + (az * bx - ax * bz) * p[1] + (ax * by - ay * bx) * p[2];
  return side >= 0;
}

/** From 0 to 1: the light on a surface, with a little from everywhere. */
function brightness(normals, at, pose) {
  const x = normals[at];
  const y = normals[at + 1];
  const z = normals[at + 2];
  const nx = pose[0] * x + pose[1] * y + pose[2] * z;
  const ny = pose[4] * x + pose[5] * y + pose[6] * z;
  const nz = pose[8] * x + pose[9] * y + pose[10] * z;
  const lit = (nx * light[0] + ny * light[1] + nz * light[2]) / (Math.sqrt(nx * nx + ny * ny + nz * nz) || 1);
  return 0.16 + 0.84 * Math.max(0, lit) + 0.1 * Math.min(0, ny);
}
