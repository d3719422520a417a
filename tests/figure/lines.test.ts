import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  asSeat,
  atOriginal,
  type BalloonLines,
  type Drawing,
  type FigureLines,
  type FigureSize,
  figureLines,
  type Point,
  plainDrawing,
} from "#lib/figure/index.ts";
import { someFigure, somePoint, someTurn, withBalloons } from "./made.ts";

const lay = (drawing: Drawing, size: FigureSize) =>
  figureLines(
    drawing,
    size,
    (item) => Number(item),
    (mark) => mark,
  );
const wide: FigureSize = {
  picture: { width: 1280, height: 720 },
  room: { width: 142, height: 104 },
  text: 4.23,
};

describe("balloons of many figures, 1 to 40 on each, bunched, in a row, in corners, at one place", () => {
  test("none covers another or a place that is pointed at, leaders never cross, and none is left out", () => {
    fc.assert(
      fc.property(someFigure, ({ drawing, size }) => {
        const lines = lay(drawing, size);
        expect(lines.balloons.map(({ number }) => number)).toEqual(
          drawing.balloons.map(({ item }) => Number(item)),
        );
        expect(lines.undrawn).toEqual([]);
        forPairs(lines.balloons, (one, other) => {
          expect(far(one.centre, other.centre)).toBeGreaterThan(one.radius + other.radius);
          expect(crosses(one, other)).toBe(false);
        });
        for (const one of lines.balloons)
          for (const { dot } of lines.balloons)
            expect(far(one.centre, dot.centre)).toBeGreaterThan(one.radius + dot.radius);
      }),
      { numRuns: process.env.LONG ? 1000 : 150 },
    );
  }, 240_000);

  test("each stands in the figure and beside the picture, and its leader goes from its place to its circle", () => {
    fc.assert(
      fc.property(someFigure, ({ drawing, size }) => {
        const lines = lay(drawing, size);
        expect(lines.width).toBeLessThanOrEqual(size.room.width + 1e-6);
        expect(lines.height).toBeLessThanOrEqual(size.room.height + 1e-6);
        for (const [index, one] of lines.balloons.entries()) {
          const { x, y, width, height } = lines.picture;
          const place = drawing.balloons[index]?.at as Point;
          expect(one.leader.from.x).toBeCloseTo(x + place.x * width, 6);
          expect(one.leader.from.y).toBeCloseTo(y + place.y * height, 6);
          expect(far(one.leader.to, one.centre)).toBeCloseTo(one.radius, 6);
          expect(outside(one.centre, one.radius, lines.picture)).toBe(true);
          expect(inside(one.centre, one.radius, lines)).toBe(true);
        }
      }),
      { numRuns: 100 },
    );
  }, 60_000);
});

describe("what the restorer decides", () => {
  test("a balloon put by hand stays where it was put, and no other covers it", () => {
    fc.assert(
      fc.property(
        fc.array(somePoint, { minLength: 2, maxLength: 12 }),
        fc.double({ min: -0.3, max: 1.3, noNaN: true }),
        fc.double({ min: -0.3, max: 1.3, noNaN: true }),
        (places, x, y) => {
          const drawing = withBalloons(places);
          const [first, ...rest] = drawing.balloons;
          const lines = lay(
            { ...drawing, balloons: [{ ...first, seat: { x, y } } as (typeof rest)[0], ...rest] },
            wide,
          );
          const [hand, ...others] = lines.balloons as [BalloonLines, ...BalloonLines[]];
          const seat = asSeat(lines, hand.centre);
          expect(seat.x).toBeCloseTo(x, 6);
          expect(seat.y).toBeCloseTo(y, 6);
          for (const one of others) expect(far(one.centre, hand.centre)).toBeGreaterThan(2 * one.radius);
        },
      ),
      { numRuns: 200 },
    );
  });

  test("one part pointed out at two places beside each other has one circle and two leaders; far apart, two circles", () => {
    const at = (x: number, y: number, id: string) => ({ id, item: "7", at: { x, y }, seat: null });
    const near = lay({ ...plainDrawing, balloons: [at(0.4, 0.5, "a"), at(0.45, 0.5, "b")] }, wide);
    expect(near.balloons.map(({ shares }) => shares)).toEqual([false, true]);
    expect(near.balloons[0]?.centre).toEqual(near.balloons[1]?.centre);
    expect(near.balloons[0]?.leader.from).not.toEqual(near.balloons[1]?.leader.from);
    const apart = lay({ ...plainDrawing, balloons: [at(0.1, 0.5, "a"), at(0.9, 0.5, "b")] }, wide);
    expect(apart.balloons.map(({ number, shares }) => [number, shares])).toEqual([
      [7, false],
      [7, false],
    ]);
  });

  test("a balloon whose part is gone, or whose place has been cropped away, is kept and not drawn", () => {
    const drawing = withBalloons([
      { x: 0.1, y: 0.5 },
      { x: 0.5, y: 0.5 },
      { x: 0.9, y: 0.5 },
    ]);
    const cropped = { ...drawing, crop: { x: 0.3, y: 0, width: 0.7, height: 1 } };
    const lines = figureLines(
      cropped,
      wide,
      (item) => (item === "3" ? null : Number(item)),
      () => null,
    );
    expect(lines.balloons.map(({ number }) => number)).toEqual([2]);
    expect(lines.undrawn).toEqual(["b0", "b2"]);
  });

  test("where a finger is on the figure, that is the place on the original, however it is shown", () => {
    fc.assert(
      fc.property(someTurn, somePoint, (turn, at) => {
        const drawing = { ...turn, balloons: [{ id: "b", item: "1", at, seat: null }] };
        const lines = lay(drawing, wide);
        for (const { leader } of lines.balloons) {
          const back = atOriginal(lines, wide.picture, leader.from);
          expect(back.x).toBeCloseTo(at.x, 6);
          expect(back.y).toBeCloseTo(at.y, 6);
        }
      }),
    );
  });
});

describe("a dimension, after ISO 129-1", () => {
  const dimension = (from: Point, to: Point, stand: number) =>
    lay({ ...plainDrawing, dimensions: [{ id: "d", mark: "12 mm", from, to, stand }] }, wide)
      .dimensions[0] as FigureLines["dimensions"][number];
  const level = (stand: number) => dimension({ x: 0.2, y: 0.5 }, { x: 0.8, y: 0.5 }, stand);

  test("stands off by what was said, to the left of who looks along it, with an extension line at each end", () => {
    const { line, extensions, arrows } = level(0.1);
    expect(line.from.y).toBeCloseTo(line.to.y, 9);
    expect(extensions).toHaveLength(2);
    expect((extensions[0]?.from.y as number) - line.from.y).toBeGreaterThan(0);
    expect(arrows.map(([tip]) => tip)).toEqual([line.from, line.to]);
    expect(level(-0.1).extensions[0]?.from.y).toBeLessThan(level(-0.1).line.from.y);
    expect(level(0).extensions).toEqual([]);
  });

  test("has its text above the line, to be read from below or from the right, whichever way it was drawn", () => {
    fc.assert(
      fc.property(somePoint, somePoint, (from, to) => {
        fc.pre(Math.hypot(from.x - to.x, from.y - to.y) > 0.05);
        const { textTurn, textAt, line } = dimension(from, to, 0);
        expect(textTurn).toBeGreaterThanOrEqual(-90 - 1e-9);
        expect(textTurn).toBeLessThan(90);
        const middle = { x: (line.from.x + line.to.x) / 2, y: (line.from.y + line.to.y) / 2 };
        const above = Math.abs(textTurn + 90) < 1e-6 ? middle.x - textAt.x : middle.y - textAt.y;
        expect(above).toBeGreaterThan(0);
      }),
    );
  });

  test("that is too short for its arrowheads has them outside, pointing in", () => {
    const { line, arrows } = dimension({ x: 0.5, y: 0.5 }, { x: 0.52, y: 0.5 }, 0);
    const [[left], [right]] = arrows as unknown as [[Point], [Point]];
    expect(line.from.x).toBeLessThan(left.x);
    expect(line.to.x).toBeGreaterThan(right.x);
  });

  test("has its value on a ground that its own line does not touch, however it slants", () => {
    fc.assert(
      fc.property(
        somePoint,
        somePoint,
        fc.double({ min: -0.3, max: 0.3, noNaN: true }),
        (from, to, stand) => {
          fc.pre(Math.hypot(from.x - to.x, from.y - to.y) > 0.01);
          const { line, plate, arrows } = dimension(from, to, stand);
          const edges = plate.map((corner, at) => ({ from: corner, to: plate[(at + 1) % 4] as Point }));
          for (const edge of edges) expect(meet(line, edge)).toBe(false);
          for (const point of [line.from, line.to, ...arrows.flat()])
            expect(within(point, plate)).toBe(false);
        },
      ),
      { numRuns: 500 },
    );
  });

  test("has no leader run over its lines where another seat keeps clear of them", () => {
    // A shaft that is measured across; what is pointed at lies between the extension lines.
    const lines = lay(
      {
        ...withBalloons([{ x: 0.435, y: 0.535 }]),
        crop: { x: 0.2, y: 0, width: 0.6, height: 1 },
        dimensions: [
          { id: "d", mark: "12.65 mm", from: { x: 0.515, y: 0.555 }, to: { x: 0.5, y: 0.63 }, stand: -0.16 },
        ],
      },
      wide,
    );
    const [leader] = lines.balloons.map((one) => one.leader);
    const [drawn] = lines.dimensions;
    expect(lines.overruns).toBe(0);
    for (const line of [drawn?.line, ...(drawn?.extensions ?? [])])
      expect(leader && line && meet(leader, line)).toBe(false);
  });

  test("makes no margin in which no balloon stands", () => {
    fc.assert(
      fc.property(somePoint, (place) => {
        const { picture, balloons, width, height } = lay(withBalloons([place]), wide);
        const [{ centre, radius }] = balloons as [BalloonLines];
        const [right, foot] = [width - picture.x - picture.width, height - picture.y - picture.height];
        if (picture.x > 1e-6) expect(centre.x).toBeLessThan(2 * radius);
        if (picture.y > 1e-6) expect(centre.y).toBeLessThan(2 * radius);
        if (right > 1e-6) expect(width - centre.x).toBeLessThan(2 * radius);
        if (foot > 1e-6) expect(height - centre.y).toBeLessThan(2 * radius);
        expect(inside(centre, radius, { width, height } as FigureLines)).toBe(true);
      }),
    );
  });
});

/** Whether two segments cross, by the signs of four areas. */
function meet(p: { from: Point; to: Point }, q: { from: Point; to: Point }): boolean {
  const side = (a: Point, b: Point, c: Point) =>
    Math.sign((b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x));
  return (
    side(p.from, p.to, q.from) * side(p.from, p.to, q.to) < 0 &&
    side(q.from, q.to, p.from) * side(q.from, q.to, p.to) < 0
  );
}

/** Whether a point lies in a convex polygon: on the same side of all its edges. */
function within({ x, y }: Point, corners: readonly Point[]): boolean {
  const sides = corners.map((a, at) => {
    const b = corners[(at + 1) % corners.length] as Point;
    return Math.sign((b.x - a.x) * (y - a.y) - (b.y - a.y) * (x - a.x));
  });
  return sides.every((one) => one > 0) || sides.every((one) => one < 0);
}

function far(a: Point, b: Point): number {
  return Math.hypot(a.x - b.x, a.y - b.y);
}

function forPairs(
  all: readonly BalloonLines[],
  check: (one: BalloonLines, other: BalloonLines) => void,
): void {
  for (const [index, one] of all.entries()) for (const other of all.slice(index + 1)) check(one, other);
}

/** Whether two leaders cross, by the signs of areas: counted here apart from the program's own geometry. */
function crosses({ leader: p }: BalloonLines, { leader: q }: BalloonLines): boolean {
  const turn = (a: Point, b: Point, c: Point) =>
    ((b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x)) / (far(a, b) || 1);
  const apart = (one: number, other: number) => Math.min(one, other) < -1e-6 && Math.max(one, other) > 1e-6;
  return (
    apart(turn(p.from, p.to, q.from), turn(p.from, p.to, q.to)) &&
    apart(turn(q.from, q.to, p.from), turn(q.from, q.to, p.to))
  );
}

function outside({ x, y }: Point, radius: number, box: FigureLines["picture"]): boolean {
  const beside = Math.max(box.x - x, x - box.x - box.width, box.y - y, y - box.y - box.height);
  return beside >= radius;
}

function inside({ x, y }: Point, radius: number, { width, height }: FigureLines): boolean {
  return Math.min(x, y, width - x, height - y) >= radius - 1e-6;
}
