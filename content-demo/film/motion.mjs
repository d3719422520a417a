import { chain, ease, move, turn } from "./vector.mjs";

const rest = { x: 0, y: 0, z: 0, rx: 0, ry: 0, rz: 0 };

/**
 * Where a part is at a moment, by key positions `[second, place]`. A place names only what changes: x, y, z in
 * inches, rx, ry, rz in degrees. `pivot` is the point of the part that is put there.
 */
export function along(now, keys, pivot = [0, 0, 0]) {
  return placed(between(now, keys), pivot);
}

function between(now, keys) {
  let before = { ...rest, ...keys[0][1] };
  for (let i = 1; i < keys.length; i++) {
    const after = { ...before, ...keys[i][1] };
    const [from, to] = [keys[i - 1][0], keys[i][0]];
    if (now < to) {
      const k = ease(now, from, to);
      return Object.fromEntries(
        Object.keys(rest).map((name) => [name, before[name] + (after[name] - before[name]) * k]),
      );
    }
    before = after;
  }
  return before;
}

/** The pose of a part whose pivot is at a place, turned first about x, then z, then y. */
export function placed(place, pivot = [0, 0, 0]) {
  const { x, y, z, rx, ry, rz } = { ...rest, ...place };
  return chain(
    move(x, y, z),
    turn([0, 1, 0], ry),
    turn([0, 0, 1], rz),
    turn([1, 0, 0], rx),
    move(-pivot[0], -pivot[1], -pivot[2]),
  );
}

/** One number at a moment, by key values. */
export const number = (now, keys) =>
  between(
    now,
    keys.map(([at, x]) => [at, { x }]),
  ).x;
