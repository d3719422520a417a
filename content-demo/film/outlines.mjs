/** Flat outlines and paths: points are [a, b], angles in degrees. */

/** The point at an angle and a distance from the origin. */
export function polar(degrees, radius) {
  const angle = (degrees * Math.PI) / 180;
  return [radius * Math.cos(angle), radius * Math.sin(angle)];
}

/** An outline written as a text: "0,0 0,0.5 2,0.5 2,0". */
export const points = (text) =>
  text
    .trim()
    .split(/\s+/)
    .map((pair) => pair.split(",").map(Number));

/** Points on an arc about [a, b], in degrees. */
export function arc([a, b], radius, from, to, steps = 24) {
  return Array.from({ length: steps + 1 }, (_, k) => {
    const angle = ((from + ((to - from) * k) / steps) * Math.PI) / 180;
    return [a + radius * Math.cos(angle), b + radius * Math.sin(angle)];
  });
}

export const circle = (centre, radius, steps = 32) => arc(centre, radius, 0, 360, steps).slice(0, -1);

/** A regular hexagon by its width across flats, one flat on top. */
export function hexagon(across, [a, b] = [0, 0], turned = 0) {
  const radius = across / Math.sqrt(3);
  return Array.from({ length: 6 }, (_, k) => {
    const angle = ((k * 60 + turned) * Math.PI) / 180;
    return [a + radius * Math.cos(angle), b + radius * Math.sin(angle)];
  });
}

/** A path through points, rounded by steps between them (Catmull and Rom). */
export function curve(points, steps = 8) {
  const at = (i) => points[Math.min(points.length - 1, Math.max(0, i))];
  const out = [];
  for (let i = 0; i + 1 < points.length; i++) {
    for (let k = 0; k < steps; k++) {
      const t = k / steps;
      const [p, q, r, s] = [at(i - 1), at(i), at(i + 1), at(i + 2)];
      out.push(
        q.map(
          (_, j) =>
            0.5 *
            (2 * q[j] +
              (r[j] - p[j]) * t +
              (2 * p[j] - 5 * q[j] + 4 * r[j] - s[j]) * t * t +
              (3 * q[j] - p[j] - 3 * r[j] + s[j]) * t ** 3),
        ),
      );
    }
  }
  return [...out, points[points.length - 1]];
}

/** A rectangle with round corners, its middle at the origin. */
export function roundedRectangle(width, height, radius) {
  const [a, b] = [width / 2 - radius, height / 2 - radius];
  return [
    [a, b, 0],
    [-a, b, 90],
    [-a, -b, 180],
    [a, -b, 270],
  ].flatMap(([x, y, start]) =>
    Array.from({ length: 7 }, (_, k) => {
      const angle = ((start + k * 15) * Math.PI) / 180;
      return [x + radius * Math.cos(angle), y + radius * Math.sin(angle)];
    }),
  );
}
