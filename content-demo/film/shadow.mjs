import { fine, flatten, light } from "./raster.mjs";

const depthOfShadow = 0.3;

/** Adds the shadows that things cast on the bench to a mask of half the picture's size. */
export function addShadows(mask, things, cam, w, h) {
  const screen = new Float64Array(6);
  for (const { solid, pose, shadow } of things) {
    if (shadow === false) continue;
    const { points, count } = flatten(solid);
    for (let t = 0; t < count; t++) {
      if (ontoBench(points, t * 9, pose, cam, screen)) fillShadow(mask, w, h, screen);
    }
  }
}

/** Where the light throws the three corners of a triangle, in points of the mask. */
function ontoBench(points, at, pose, { eye, ahead, right, up, focal, w, h }, screen) {
  const scale = 1 / (2 * fine);
  for (let i = 0; i < 3; i++) {
    const x = points[at + i * 3];
    const y = points[at + i * 3 + 1];
    const z = points[at + i * 3 + 2];
    const height = pose[4] * x + pose[5] * y + pose[6] * z + pose[7];
    const k = Math.max(0, height) / light[1];
    const qx = pose[0] * x + pose[1] * y + pose[2] * z + pose[3] - light[0] * k - eye[0];
    const qy = -eye[1];
    const qz = pose[8] * x + pose[9] * y + pose[10] * z + pose[11] - light[2] * k - eye[2];
    const depth = qx * ahead[0] + qy * ahead[1] + qz * ahead[2];
    if (depth < 0.2) return false;
    screen[i * 2] = (w / 2 + (focal * (qx * right[0] + qy * right[1] + qz * right[2])) / depth) * scale;
    screen[i * 2 + 1] = (h / 2 - (focal * (qx * up[0] + qy * up[1] + qz * up[2])) / depth) * scale;
  }
  return true;
}

function fillShadow(mask, w, h, s) {
  const top = Math.max(0, Math.ceil(Math.min(s[1], s[3], s[5]) - 0.5));
  const bottom = Math.min(h - 1, Math.floor(Math.max(s[1], s[3], s[5]) - 0.5));
  for (let y = top; y <= bottom; y++) {
    const at = y + 0.5;
    let from = w;
    let to = -1;
    for (let i = 0; i < 3; i++) {
      const j = (i + 1) % 3;
      const [py, qy] = [s[i * 2 + 1], s[j * 2 + 1]];
      if (py > at === qy > at) continue;
      const x = s[i * 2] + ((at - py) / (qy - py)) * (s[j * 2] - s[i * 2]);
      if (x < from) from = x;
      if (x > to) to = x;
    }
    const last = Math.min(w - 1, Math.floor(to - 0.5));
    for (let x = Math.max(0, Math.ceil(from - 0.5)); x <= last; x++) mask[y * w + x] = depthOfShadow;
  }
}

/** The mask with soft edges: run over by a box of each radius in turn. */
export function blurred(mask, w, h, radii) {
  const [from, to] = [mask, new Float32Array(mask.length)];
  for (const radius of radii) {
    run(from, to, h, w, 1, w, radius);
    run(to, from, w, h, w, 1, radius);
  }
  return from;
}

function run(source, out, lines, length, step, jump, radius) {
  for (let line = 0; line < lines; line++) {
    const start = line * jump;
    const end = start + (length - 1) * step;
    let sum = source[start] * radius;
    for (let i = 0; i <= radius; i++) sum += source[start + i * step];
    for (let i = 0; i < length; i++) {
      const at = start + i * step;
      out[at] = sum / (2 * radius + 1);
      sum += source[Math.min(end, at + (radius + 1) * step)] - source[Math.max(start, at - radius * step)];
    }
  }
}

/** The mask between its points, at a place of the whole picture. */
export function sampled(mask, x, y, w, h) {
  const fx = Math.max(0, Math.min(w - 1.001, x / 2 - 0.25));
  const fy = Math.max(0, Math.min(h - 1.001, y / 2 - 0.25));
  const ix = fx | 0;
  const iy = fy | 0;
  const dx = fx - ix;
  const dy = fy - iy;
  const at = iy * w + ix;
  const above = mask[at] * (1 - dx) + mask[at + 1] * dx;
  const below = mask[at + w] * (1 - dx) + mask[at + w + 1] * dx;
  return above * (1 - dy) + below * dy;
}
