import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type Drawing, type FigureLines, figureLines, type Point, plainDrawing } from "#lib/figure/index.ts";
import "../seed.ts";

/** Room and text of the print, in millimetres: pictures across the page, in pairs, and small ones. */
const rooms = [
  { room: { width: 142, height: 104 }, text: 4.2 },
  { room: { width: 142, height: 60 }, text: 4.2 },
  { room: { width: 69, height: 60 }, text: 4.2 },
  { room: { width: 360, height: Number.POSITIVE_INFINITY }, text: 12 },
];

const near = (around: Point, by: number) =>
  fc
    .tuple(fc.integer({ min: -1000, max: 1000 }), fc.integer({ min: -1000, max: 1000 }))
    .map(([x, y]) => ({ x: clamp(around.x + (by * x) / 1000), y: clamp(around.y + (by * y) / 1000) }));
const clamp = (one: number) => Math.min(1, Math.max(0, one));
const somePoint = fc
  .tuple(fc.integer({ min: 0, max: 1000 }), fc.integer({ min: 0, max: 1000 }))
  .map(([x, y]) => ({ x: x / 1000, y: y / 1000 }));

/** Places that are hard to serve: in a bunch, on one line, in the corners, at one place; and anywhere. */
const placesOf = (count: number): fc.Arbitrary<Point[]> => {
  const many = (one: fc.Arbitrary<Point>) => fc.array(one, { minLength: count, maxLength: count });
  return fc.oneof(
    many(somePoint),
    somePoint.chain((middle) => many(near(middle, 0.06))),
    fc.tuple(somePoint, somePoint).chain(([a, b]) =>
      many(
        fc
          .integer({ min: 0, max: 1000 })
          .map((n) => n / 1000)
          .map((t) => ({ x: a.x + t * (b.x - a.x), y: a.y + t * (b.y - a.y) })),
      ),
    ),
    many(
      fc
        .constantFrom({ x: 0, y: 0 }, { x: 1, y: 0 }, { x: 0, y: 1 }, { x: 1, y: 1 })
        .chain((corner) => near(corner, 0.03)),
    ),
    fc
      .tuple(somePoint, many(somePoint))
      .map(([same, rest]) => rest.map((one, index) => (index % 3 === 0 ? same : one))),
  );
};

const sizes = fc.constantFrom(
  { width: 1280, height: 720 },
  { width: 3000, height: 4000 },
  { width: 1600, height: 1600 },
  { width: 4000, height: 160 },
  { width: 200, height: 4000 },
);

const someFigure = fc
  .integer({ min: 1, max: 40 })
  .chain((count) => fc.tuple(placesOf(count), sizes, fc.constantFrom(...rooms)));

test("look", () => {
  const stats: Record<string, number> = {};
  const t0 = Date.now();
  let n = 0,
    worst = 0;
  fc.assert(
    fc.property(someFigure, ([places, picture, sheet]) => {
      const t = Date.now();
      const lines = laid(places, picture, sheet);
      worst = Math.max(worst, Date.now() - t);
      n++;
      const c = crossings(lines);
      if (c) stats.crossFig = (stats.crossFig ?? 0) + 1;
      if (lines.crossings !== c && (stats.dis ?? 0) < 4)
        console.log(
          places.length,
          picture,
          sheet,
          lines.crossings,
          c,
          lines.text,
          JSON.stringify(places.slice(0, 4)),
        );
      if (lines.crossings !== c) stats.dis = (stats.dis ?? 0) + 1;
      if (lines.overruns) stats.over = (stats.over ?? 0) + 1;
      stats.overs = (stats.overs ?? 0) + lines.overruns;
      if (places.length <= 12) {
        stats.small = (stats.small ?? 0) + 1;
        if (lines.overruns) stats.smallover = (stats.smallover ?? 0) + 1;
      }
      if (lines.text < sheet.text) stats.shrunk = (stats.shrunk ?? 0) + 1;
      if (lines.text < sheet.text * 0.6) stats.shrunk6 = (stats.shrunk6 ?? 0) + 1;
      if (lines.balloons.length !== places.length) stats.lost = (stats.lost ?? 0) + 1;
    }),
    { numRuns: 300 },
  );
  console.log(stats, n, Date.now() - t0, worst);
});

function laid(
  places: Point[],
  picture: { width: number; height: number },
  sheet: (typeof rooms)[number],
): FigureLines {
  const drawing: Drawing = {
    ...plainDrawing,
    balloons: places.map((at, index) => ({ id: `b${index}`, item: `i${index}`, at, seat: null })),
  };
  return figureLines(
    drawing,
    { picture, ...sheet },
    (item) => Number(item.slice(1)) + 1,
    () => null,
  );
}

function crossings(lines: FigureLines): number {
  let count = 0;
  lines.balloons.forEach((one, i) => {
    for (const other of lines.balloons.slice(i + 1)) if (cross(one.leader, other.leader)) count++;
  });
  return count;
}

/** By the signs of areas; written here apart from the program's own. */
function cross(p: { from: Point; to: Point }, q: { from: Point; to: Point }): boolean {
  const area = (a: Point, b: Point, c: Point) => (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x);
  const [a, b] = [area(p.from, p.to, q.from), area(p.from, p.to, q.to)];
  const [c, d] = [area(q.from, q.to, p.from), area(q.from, q.to, p.to)];
  const tiny = 1e-9;
  return a * b < -tiny && c * d < -tiny;
}
