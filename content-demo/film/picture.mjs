import { benchPixels } from "./bench.mjs";
import { Canvas, camera, fine } from "./raster.mjs";
import { addShadows, blurred, sampled } from "./shadow.mjs";

const inkColour = [30, 33, 36];
const [thin, middle, heavy] = [disc(1.15), disc(1.75), disc(2.5)];

/** A round pen point for the fine picture: how much ink each neighbour gets, 0 to 255. */
function disc(radius) {
  const points = [];
  const reach = Math.ceil(radius);
  for (let y = -reach; y <= reach; y++) {
    for (let x = -reach; x <= reach; x++) {
      const ink = Math.min(1, Math.max(0, radius + 0.5 - Math.hypot(x, y)));
      if (ink > 0) points.push([x, y, Math.round(ink * 255)]);
    }
  }
  return points;
}

/**
 * Draws things on the bench. A thing has a solid, a pose, and may say `ink: false` (no outline) or
 * `shadow: false`. What stands still from one picture to the next is drawn once.
 */
export class Studio {
  #ink;
  #bench = { key: "", pixels: null };
  #base;
  #last = { still: null, view: "", moving: "" };

  constructor(width, height) {
    this.width = width;
    this.height = height;
    this.canvas = new Canvas(width, height);
    this.#base = { canvas: new Canvas(width, height), shadow: new Float32Array((width * height) / 4) };
    this.#ink = new Uint8Array(this.canvas.w * this.canvas.h);
    this.pixels = new Uint8ClampedArray(width * height * 4);
  }

  /** The picture of the things as seen by a camera, as red, green, blue and alpha bytes; valid until the next. */
  picture(still, moving, view) {
    const cam = camera(view, this.width, this.height);
    const key = JSON.stringify(view);
    const poses = JSON.stringify(moving.map(({ solid, pose }) => [solidNumber(solid), pose]));
    const sameBase = this.#last.still === still && this.#last.view === key;
    if (sameBase && this.#last.moving === poses) return this.pixels;
    this.#last = { still, view: key, moving: poses };
    if (!sameBase) this.#drawBase(still, cam);
    this.canvas.copy(this.#base.canvas);
    for (const [index, { solid, pose }] of moving.entries()) {
      this.canvas.draw(solid, pose, still.length + index + 1, cam);
    }
    this.#drawInk([...still, ...moving]);
    this.#compose(this.#benchOf(cam, key), this.#shadow(moving, cam));
    return this.pixels;
  }

  #drawBase(still, cam) {
    const { canvas, shadow } = this.#base;
    canvas.clear();
    for (const [index, { solid, pose }] of still.entries()) canvas.draw(solid, pose, index + 1, cam);
    shadow.fill(0);
    addShadows(shadow, still, cam, this.width >> 1, this.height >> 1);
  }

  #shadow(moving, cam) {
    const [w, h] = [this.width >> 1, this.height >> 1];
    const mask = Float32Array.from(this.#base.shadow);
    addShadows(mask, moving, cam, w, h);
    return blurred(mask, w, h, [2, 2, 3]);
  }

  #benchOf(cam, key) {
    if (this.#bench.key !== key) {
      this.#bench = { key, pixels: benchPixels(cam, this.width, this.height, this.#bench.pixels) };
    }
    return this.#bench.pixels;
  }

  /** Ink where one thing or face ends: heavy against the bench, lighter between faces of one thing. */
  #drawInk(things) {
    const { owner, near, w, h, top, bottom, left, right } = this.canvas;
    const ink = this.#ink;
    ink.fill(0);
    const plain = new Uint8Array(256);
    things.forEach((thing, index) => {
      if (thing.ink === false) plain[index + 1] = 1;
    });
    const stamp = (index, pen) => {
      for (let i = 0; i < pen.length; i++) {
        const at = index + pen[i][1] * w + pen[i][0];
        if (ink[at] < pen[i][2]) ink[at] = pen[i][2];
      }
    };
    const parted = (p, q) => {
      const [a, b] = [owner[p], owner[q]];
      if (plain[a >> 8] || plain[b >> 8]) return;
      const front = near[p] >= near[q] ? p : q;
      if (a >> 8 === b >> 8) stamp(front, thin);
      else stamp(front, a === 0 || b === 0 ? heavy : middle);
    };
    const last = Math.min(h - 5, bottom + 1);
    for (let y = Math.max(4, top - 1); y <= last; y++) {
      const end = y * w + Math.min(w - 6, right + 1);
      for (let p = y * w + Math.max(4, left - 1); p <= end; p++) {
        const own = owner[p];
        const [r, d] = [p + 1, p + w];
        if (own !== owner[r]) parted(p, r);
        else if (own !== 0 && broken(near, p, 1) && !plain[own >> 8]) stamp(near[r] > near[p] ? r : p, thin);
        if (own !== owner[d]) parted(p, d);
        else if (own !== 0 && broken(near, p, w) && !plain[own >> 8]) stamp(near[d] > near[p] ? d : p, thin);
      }
    }
  }

  #compose(bench, shadow) {
    const { width, height, pixels, canvas } = this;
    const { owner, colour, w } = canvas;
    const ink = this.#ink;
    const [halfW, halfH] = [width >> 1, height >> 1];
    // Two points side by side read as one number: zero where neither a thing nor ink is.
    const owners = new Uint32Array(owner.buffer);
    const inks = new Uint16Array(ink.buffer);
    for (let y = 0; y < height; y++) {
      for (let x = 0; x < width; x++) {
        const out = (y * width + x) * 4;
        const shade = 1 - sampled(shadow, x, y, halfW, halfH);
        const backR = bench[out] * shade;
        const backG = bench[out + 1] * shade;
        const backB = bench[out + 2] * shade;
        const above = y * fine * width + x;
        pixels[out + 3] = 255;
        if (!(owners[above] || owners[above + width] || inks[above] || inks[above + width])) {
          pixels[out] = backR;
          pixels[out + 1] = backG;
          pixels[out + 2] = backB;
          continue;
        }
        let r = 0;
        let g = 0;
        let b = 0;
        for (let k = 0; k < 4; k++) {
          const at = (y * fine + (k >> 1)) * w + x * fine + (k & 1);
          const dark = ink[at] / 255;
          const tone = colour[at];
          const own = owner[at] !== 0;
          r += (own ? tone & 255 : backR) * (1 - dark) + inkColour[0] * dark;
          g += (own ? (tone >> 8) & 255 : backG) * (1 - dark) + inkColour[1] * dark;
          b += (own ? (tone >> 16) & 255 : backB) * (1 - dark) + inkColour[2] * dark;
        }
        pixels[out] = r / 4;
        pixels[out + 1] = g / 4;
        pixels[out + 2] = b / 4;
      }
    }
  }
}

/** Whether one face breaks off and goes on behind itself between a point and its neighbour. */
function broken(near, p, step) {
  const here = near[p];
  const jump = near[p + step] - here;
  if (Math.abs(jump) <= 0.004 * here) return false;
  const bend =
    Math.abs(jump - (here - near[p - step])) + Math.abs(near[p + 2 * step] - near[p + step] - jump);
  return bend > 0.008 * here;
}

const numbers = new WeakMap();
let solids = 0;
function solidNumber(solid) {
  if (!numbers.has(solid)) numbers.set(solid, ++solids);
  return numbers.get(solid);
}
