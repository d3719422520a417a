import { describe, expect, test } from "vitest";
import { asTaken, cropped, onOriginal, turned } from "#lib/figure/change.ts";
import {
  type Drawing,
  drawing,
  isAsTaken,
  type Point,
  plainDrawing,
  shown,
  wholePicture,
} from "#lib/figure/index.ts";
import { random as seeded } from "#tests/gotcha/random.ts";

const { next: random } = seeded(6433);
const between = (low: number, high: number) => low + random() * (high - low);
const somewhere = (): Point => ({ x: random(), y: random() });

/** Pictures of any size, turned and cropped anyhow, with something drawn on each. */
const made = Array.from({ length: 300 }, () => {
  const [x, y] = [between(0, 0.4), between(0, 0.4)];
  const one: Drawing = {
    ...plainDrawing,
    quarter: ([0, 90, 180, 270] as const)[Math.floor(random() * 4)] ?? 0,
    crop: { x, y, width: between(0.3, 1 - x), height: between(0.3, 1 - y) },
    balloons: [
      { id: "by hand", item: "nut", at: somewhere(), seat: { x: between(0, 1), y: between(0, 1) } },
      { id: "by rule", item: "nut", at: somewhere(), seat: null },
    ],
    dimensions: [{ id: "d", mark: "m", from: somewhere(), to: somewhere(), stand: between(-0.1, 0.1) }],
  };
  return { one, size: { width: Math.round(between(300, 4000)), height: Math.round(between(300, 4000)) } };
});

/** Where the balloon placed by hand stands, on the original. */
function seatOnOriginal(one: Drawing, size: { width: number; height: number }): Point {
  const seat = one.balloons[0]?.seat ?? { x: NaN, y: NaN };
  const view = shown(one, size);
  return view.fromShown({ x: seat.x * view.width, y: seat.y * view.height });
}

describe("changes of a drawing", () => {
  test("a quarter turn moves nothing against the picture, and four are none", () => {
    for (const { one, size } of made) {
      const quarter = turned(one, 90, size);
      expect(drawing.safeParse(quarter).success).toBe(true);
      const [before, after] = [seatOnOriginal(one, size), seatOnOriginal(quarter, size)];
      // Shown pictures have whole pixels, so places may differ by less than one.
      expect(Math.abs(before.x - after.x) * size.width).toBeLessThan(1);
      expect(Math.abs(before.y - after.y) * size.height).toBeLessThan(1);
      const [wide, narrow] = [shown(one, size), shown(quarter, size)];
      expect([narrow.width, narrow.height]).toEqual([wide.height, wide.width]);
      const stand = (one.dimensions[0]?.stand ?? 0) * wide.width;
      expect((quarter.dimensions[0]?.stand ?? 0) * narrow.width).toBeCloseTo(stand, 6);
      const round = turned(turned(turned(quarter, 90, size), 90, size), 90, size);
      expect(close(round, one)).toBe(true);
      expect(close(turned(quarter, 270, size), one)).toBe(true);
    }
  });

  test("cropping moves neither what is pointed at nor a balloon placed by hand, and a crop can be taken back", () => {
    for (const { one, size } of made) {
      const whole = cropped(one, wholePicture);
      const again = cropped(whole, one.crop);
      expect(close(again, one)).toBe(true);
      expect(whole.balloons.map(({ at }) => at)).toEqual(one.balloons.map(({ at }) => at));
      const [before, after] = [seatOnOriginal(one, size), seatOnOriginal(whole, size)];
      expect(Math.abs(before.x - after.x) * size.width).toBeLessThan(1);
      expect(Math.abs(before.y - after.y) * size.height).toBeLessThan(1);
    }
  });

  test("a balloon that a crop would leave far outside goes back to the rule", () => {
    const one = made[0]?.one as Drawing;
    const seated = {
      ...one,
      crop: wholePicture,
      balloons: one.balloons.map((each) => ({ ...each, seat: { x: 0, y: 0 } })),
    };
    const corner = cropped(seated, { x: 0.8, y: 0.8, width: 0.2, height: 0.2 });
    expect(corner.balloons.map(({ seat }) => seat)).toEqual([null, null]);
  });

  test("any crop that is asked for becomes one that can be kept", () => {
    for (const { one } of made) {
      const wild = {
        x: between(-2, 2),
        y: between(-2, 2),
        width: between(-2, 2),
        height: between(-2, 2),
      };
      expect(drawing.safeParse(cropped(one, wild)).success).toBe(true);
    }
  });

  test("as it was taken keeps what is drawn", () => {
    for (const { one } of made) {
      const back = asTaken({ ...one, straighten: 3, light: 0.4 });
      expect(isAsTaken(back)).toBe(true);
      expect(back.balloons.map(({ at }) => at)).toEqual(one.balloons.map(({ at }) => at));
      expect(back.dimensions).toHaveLength(one.dimensions.length);
    }
  });

  test("a place pointed at is the one that is then shown there", () => {
    for (const { one, size } of made) {
      const at = somewhere();
      const view = shown(one, size);
      const back = view.toShown(onOriginal(at, one, size));
      expect(back.x).toBeCloseTo(at.x * view.width, 6);
      expect(back.y).toBeCloseTo(at.y * view.height, 6);
    }
  });
});

/** Equal but for what arithmetic in doubles leaves. */
function close(a: unknown, b: unknown): boolean {
  if (typeof a === "number" && typeof b === "number") return Math.abs(a - b) < 1e-9;
  if (a === null || b === null || typeof a !== "object" || typeof b !== "object") return a === b;
  const keys = [...new Set([...Object.keys(a), ...Object.keys(b)])];
  return keys.every((key) => close((a as Record<string, unknown>)[key], (b as Record<string, unknown>)[key]));
}
