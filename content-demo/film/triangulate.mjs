/** Triangles of a flat outline with holes, by cutting ears. Points are [a, b]; outlines run either way. */
export function triangulate(outline, holes = []) {
  let ring = orient(outline, 1);
  const rest = holes.map((hole) => orient(hole, -1));
  while (rest.length > 0) {
    const bridge = nearestBridge(ring, rest);
    const [hole] = rest.splice(bridge.hole, 1);
    const turned = [...hole.slice(bridge.to), ...hole.slice(0, bridge.to + 1)];
    ring = [...ring.slice(0, bridge.from + 1), ...turned, ...ring.slice(bridge.from)];
  }
  return cutEars(ring);
}

export function area(points) {
  let sum = 0;
  for (let i = 0; i < points.length; i++) {
    const [a, b] = points[i];
    const [c, d] = points[(i + 1) % points.length];
    sum += a * d - b * c;
  }
  return sum / 2;
}

export const orient = (points, sign) => (area(points) * sign < 0 ? [...points].reverse() : [...points]);

/** The shortest line from the ring to a hole. Being the shortest, it crosses neither. */
function nearestBridge(ring, holes) {
  let best = { distance: Number.POSITIVE_INFINITY, from: 0, to: 0, hole: 0 };
  holes.forEach((points, hole) => {
    points.forEach(([c, d], to) => {
      ring.forEach(([a, b], from) => {
        const distance = (a - c) ** 2 + (b - d) ** 2;
        if (distance < best.distance) best = { distance, from, to, hole };
      });
    });
  });
  return best;
}

const side = (p, q, r) => (q[0] - p[0]) * (r[1] - p[1]) - (q[1] - p[1]) * (r[0] - p[0]);
const same = (p, q) => p[0] === q[0] && p[1] === q[1];

function cutEars(ring) {
  const left = [...ring];
  const triangles = [];
  let misses = 0;
  for (let i = 0; left.length > 3 && misses <= left.length; ) {
    const count = left.length;
    const at = i % count;
    const [p, q, r] = [left[(at + count - 1) % count], left[at], left[(at + 1) % count]];
    const convex = side(p, q, r) > 1e-12;
    const ear =
      convex &&
      !left.some(
        (s) =>
          !(same(s, p) || same(s, q) || same(s, r)) &&
          side(p, q, s) >= -1e-12 &&
          side(q, r, s) >= -1e-12 &&
          side(r, p, s) >= -1e-12,
      );
    if (ear || (Math.abs(side(p, q, r)) <= 1e-12 && misses > count / 2)) {
      if (ear) triangles.push([p, q, r]);
      left.splice(at, 1);
      misses = 0;
      i = at;
    } else {
      misses++;
      i = at + 1;
    }
  }
  if (left.length === 3) triangles.push(left);
  return triangles;
}
