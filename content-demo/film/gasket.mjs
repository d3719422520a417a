import { outline, studHoles } from "./flange.mjs";
import { circle } from "./outlines.mjs";
import { extrude } from "./shapes.mjs";

/** A gasket lies on the face of the body, 0 to `thick` along x. */
export const gasket = (material) =>
  divided(extrude(outline, [circle([0, 0], 1.5, 72), ...studHoles], 0, 0.05, { material }), 0.28);

/** The solid with every triangle split until no edge is longer than `longest`. */
function divided(solid, longest) {
  const out = [];
  const middle = (p, q) => p.map((value, i) => (value + q[i]) / 2);
  const split = (t) => {
    const lengths = [0, 1, 2].map((i) => {
      const [p, q] = [t.points[i], t.points[(i + 1) % 3]];
      return Math.hypot(p[0] - q[0], p[1] - q[1], p[2] - q[2]);
    });
    const at = lengths.indexOf(Math.max(...lengths));
    if (lengths[at] <= longest) return out.push(t);
    const [i, j, k] = [at, (at + 1) % 3, (at + 2) % 3];
    for (const [a, b] of [
      [i, "first"],
      [j, "second"],
    ]) {
      const pick = (list) => {
        const half = middle(list[i], list[j]);
        return b === "first" ? [list[a], half, list[k]] : [half, list[a], list[k]];
      };
      split({ ...t, points: pick(t.points), normals: pick(t.normals), marks: pick(t.marks) });
    }
  };
  solid.forEach(split);
  return out;
}

/** A gasket peeled forward from the top: `done` from 0 (flat on the face) to 1 (wholly off). */
export function peeled(solid, done) {
  const fold = 2.5 - done * 5;
  const radius = 1.05;
  const limit = Math.PI * 0.62;
  const bend = ([x, y, z]) => {
    const s = y - fold;
    if (s <= 0) return { at: [x, y, z], angle: 0 };
    const angle = Math.min(s / radius, limit);
    const straight = Math.max(0, s - radius * limit);
    const [c, n] = [Math.cos(angle), Math.sin(angle)];
    return {
      at: [radius * (1 - c) + x * c + straight * n, fold + radius * n - x * n + straight * c, z],
      angle,
    };
  };
  return solid.map((t) => {
    const bent = t.points.map(bend);
    const normals = t.normals.map(([x, y, z], i) => {
      const [c, n] = [Math.cos(bent[i].angle), Math.sin(bent[i].angle)];
      return [x * c + y * n, -x * n + y * c, z];
    });
    return { ...t, points: bent.map((b) => b.at), normals };
  });
}
