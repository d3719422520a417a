import fc from "fast-check";
import { type Drawing, type FigureSize, type Point, plainDrawing } from "#lib/figure/index.ts";
import "../seed.ts";

/** Places to a thousandth of the picture: nobody points more exactly. */
const thousandth = fc.integer({ min: 0, max: 1000 }).map((part) => part / 1000);
export const somePoint = fc.record({ x: thousandth, y: thousandth });

const someCrop = fc.tuple(thousandth, thousandth, thousandth, thousandth).map(([x, y, w, h]) => ({
  x: x * 0.9,
  y: y * 0.9,
  width: Math.max(0.05, w * (1 - x * 0.9)),
  height: Math.max(0.05, h * (1 - y * 0.9)),
}));

/** A picture turned, straightened, cropped and lit in any way, with nothing drawn on it. */
export const someTurn = fc
  .record({
    quarter: fc.constantFrom<Drawing["quarter"]>(0, 90, 180, 270),
    straighten: fc.oneof(fc.constant(0), fc.double({ min: -15, max: 15, noNaN: true })),
    crop: fc.oneof(fc.constant(plainDrawing.crop), someCrop),
    light: fc.double({ min: -1, max: 1, noNaN: true }),
  })
  .map((turn): Drawing => ({ ...plainDrawing, ...turn }));

export const someSize = fc.record({
  width: fc.integer({ min: 40, max: 6000 }),
  height: fc.integer({ min: 40, max: 6000 }),
});

/** Pictures of every proportion, slivers among them. */
const sizes = fc.constantFrom(
  { width: 1280, height: 720 },
  { width: 3000, height: 4000 },
  { width: 1600, height: 1600 },
  { width: 4000, height: 160 },
  { width: 200, height: 4000 },
);

/** Room and text of a print in millimetres, and of a screen in pixels. */
const sheets = fc.constantFrom(
  { room: { width: 142, height: 104 }, text: 4.23 },
  { room: { width: 142, height: 48 }, text: 4.23 },
  { room: { width: 69, height: 60 }, text: 4.23 },
  { room: { width: 142, height: 72 }, text: 6.35 },
  { room: { width: 440, height: Number.POSITIVE_INFINITY }, text: 15.5 },
);

/** Places that are hard to serve: in a bunch, in a row, in the corners, several at one place; and anywhere. */
function placesOf(count: number): fc.Arbitrary<Point[]> {
  const many = (one: fc.Arbitrary<Point>) => fc.array(one, { minLength: count, maxLength: count });
  const corners = [0, 1].flatMap((x) => [0, 1].map((y) => ({ x, y })));
  return fc.oneof(
    many(somePoint),
    somePoint.chain((middle) => many(near(middle, 0.06))),
    fc.tuple(somePoint, somePoint).chain(([a, b]) => many(thousandth.map((part) => between(a, b, part)))),
    many(fc.constantFrom(...corners).chain((corner) => near(corner, 0.03))),
    fc
      .tuple(somePoint, many(somePoint))
      .map(([same, rest]) => rest.map((one, index) => (index % 3 === 0 ? same : one))),
  );
}

function near({ x, y }: Point, by: number): fc.Arbitrary<Point> {
  const within = (one: number) => Math.min(1, Math.max(0, one));
  return somePoint.map((off) => ({
    x: within(x + by * (2 * off.x - 1)),
    y: within(y + by * (2 * off.y - 1)),
  }));
}

function between(a: Point, b: Point, part: number): Point {
  return { x: a.x + part * (b.x - a.x), y: a.y + part * (b.y - a.y) };
}

/** A figure with 1 to 40 balloons, each of an item of its own, and what it is laid out at. */
export const someFigure: fc.Arbitrary<{ drawing: Drawing; size: FigureSize }> = fc
  .integer({ min: 1, max: 40 })
  .chain((count) => fc.record({ places: placesOf(count), picture: sizes, sheet: sheets }))
  .map(({ places, picture, sheet }) => ({
    drawing: withBalloons(places),
    size: { picture, ...sheet },
  }));

/** A drawing with a balloon at each of these places: item "1" at the first, and so on. */
export function withBalloons(places: readonly Point[]): Drawing {
  const balloons = places.map((at, index) => ({ id: `b${index}`, item: `${index + 1}`, at, seat: null }));
  return { ...plainDrawing, balloons };
}
