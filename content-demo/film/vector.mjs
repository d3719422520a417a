/**
 * Vectors are arrays of three numbers, in inches: x along the pump's axis towards the cover, y up, z towards
 * the front of the bench. A pose is a matrix of twelve numbers, three rows of four, that takes a part's own
 * coordinates to the bench.
 */
export const sub = (a, b) => [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
export const scale = (a, k) => [a[0] * k, a[1] * k, a[2] * k];
export const cross = (a, b) => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];
export const unit = (a) => scale(a, 1 / (Math.hypot(a[0], a[1], a[2]) || 1));

/** First `b`, then `a`. */
export function times(a, b) {
  const result = new Array(12);
  for (let row = 0; row < 3; row++) {
    for (let column = 0; column < 4; column++) {
      let sum = column === 3 ? a[row * 4 + 3] : 0;
      for (let k = 0; k < 3; k++) sum += a[row * 4 + k] * b[k * 4 + column];
      result[row * 4 + column] = sum;
    }
  }
  return result;
}

/** Several poses, the last one applied first. */
export const chain = (...poses) => poses.reduce(times);

export const move = (x, y, z) => [1, 0, 0, x, 0, 1, 0, y, 0, 0, 1, z];

/** A turn about an axis through the origin, in degrees, right-handed. */
export function turn(axis, degrees) {
  const [x, y, z] = unit(axis);
  const angle = (degrees * Math.PI) / 180;
  const c = Math.cos(angle);
  const s = Math.sin(angle);
  const k = 1 - c;
  return [
    x * x * k + c,
    x * y * k - z * s,
    x * z * k + y * s,
    0,
    y * x * k + z * s,
    y * y * k + c,
    y * z * k - x * s,
    0,
    z * x * k - y * s,
    z * y * k + x * s,
    z * z * k + c,
    0,
  ];
}

/** From 0 to 1 between two moments, slow at both ends. */
export function ease(now, from, to) {
  const k = Math.min(1, Math.max(0, (now - from) / (to - from)));
  return k * k * k * (k * (6 * k - 15) + 10);
}

/** From 0 to 1 between two moments, evenly. */
export const ramp = (now, from, to) => Math.min(1, Math.max(0, (now - from) / (to - from)));
