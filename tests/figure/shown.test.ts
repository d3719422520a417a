import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type Drawing, drawing, isPlain, plainDrawing, shown, turnedSize } from "#lib/figure/index.ts";
import { somePoint, someSize, someTurn } from "./made.ts";

const turned = (more: Partial<Drawing>): Drawing => ({ ...plainDrawing, ...more });

describe("how a picture is shown", () => {
  test("there and back is where it was, however it is turned and cropped", () => {
    fc.assert(
      fc.property(someTurn, someSize, somePoint, (turn, size, at) => {
        const view = shown(turn, size);
        const back = view.fromShown(view.toShown(at));
        expect(back.x).toBeCloseTo(at.x, 8);
        expect(back.y).toBeCloseTo(at.y, 8);
      }),
    );
  });

  test("every place of the shown picture is one of the original: no corner is empty", () => {
    fc.assert(
      fc.property(someTurn, someSize, somePoint, (turn, size, { x, y }) => {
        const view = shown(turn, size);
        const at = view.fromShown({ x: x * view.width, y: y * view.height });
        for (const one of [at.x, at.y]) {
          expect(one).toBeGreaterThan(-1e-9);
          expect(one).toBeLessThan(1 + 1e-9);
        }
      }),
    );
  });

  test("the size is the crop's of the turned picture, to the pixel", () => {
    fc.assert(
      fc.property(someTurn, someSize, (turn, size) => {
        const { width, height } = shown(turn, size);
        const whole = turnedSize(turn, size);
        expect(Math.abs(width - whole.width * turn.crop.width)).toBeLessThanOrEqual(1);
        expect(Math.abs(height - whole.height * turn.crop.height)).toBeLessThanOrEqual(1);
      }),
    );
  });

  // By hand on paper: what was at the upper left is, a quarter turn clockwise, at the upper right.
  test.each([
    [0, { x: 0, y: 0 }],
    [90, { x: 300, y: 0 }],
    [180, { x: 400, y: 300 }],
    [270, { x: 0, y: 400 }],
  ] as const)(
    "turned by %i degrees the upper left corner lies where it goes clockwise",
    (quarter, corner) => {
      const view = shown(turned({ quarter }), { width: 400, height: 300 });
      expect(view.toShown({ x: 0, y: 0 })).toEqual({
        x: expect.closeTo(corner.x),
        y: expect.closeTo(corner.y),
      });
    },
  );

  test("straightening is clockwise too: the middle of the right edge goes down", () => {
    const view = shown(turned({ straighten: 10 }), { width: 400, height: 300 });
    expect(view.toShown({ x: 1, y: 0.5 }).y).toBeGreaterThan(view.height / 2);
  });

  test("a square turned by 15 degrees keeps the square that fits in it: 1 / (cos 15° + sin 15°) of its side", () => {
    expect(turnedSize(turned({ straighten: 15 }), { width: 1000, height: 1000 }).width).toBeCloseTo(816.5, 1);
  });

  test("the lower right quarter begins at the middle", () => {
    const view = shown(turned({ crop: { x: 0.5, y: 0.5, width: 0.5, height: 0.5 } }), {
      width: 400,
      height: 300,
    });
    expect(view).toMatchObject({ width: 200, height: 150 });
    expect(view.toShown({ x: 0.5, y: 0.5 })).toEqual({ x: expect.closeTo(0), y: expect.closeTo(0) });
  });
});

describe("a drawing", () => {
  test("with nothing in it is plain, and a name alone makes it one", () => {
    expect(isPlain(plainDrawing)).toBe(true);
    expect(isPlain(turned({ view: "view A" }))).toBe(false);
    expect(isPlain(turned({ light: 0.1 }))).toBe(false);
  });

  test("that is cropped past the edge, or to a sliver, is refused", () => {
    for (const crop of [
      { x: 0.6, y: 0, width: 0.5, height: 1 },
      { x: 0, y: 0, width: 0.01, height: 1 },
    ])
      expect(drawing.safeParse(turned({ crop })).success).toBe(false);
    expect(drawing.safeParse(turned({ quarter: 45 as 0 })).success).toBe(false);
  });
});
