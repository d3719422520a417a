import fc from "fast-check";
import { type Drawing, plainDrawing } from "#lib/figure/index.ts";
import "../seed.ts";

const fraction = fc.double({ min: 0, max: 1, noNaN: true });
export const somePoint = fc.record({ x: fraction, y: fraction });

const someCrop = fc.tuple(fraction, fraction, fraction, fraction).map(([x, y, w, h]) => ({
  x: x * 0.9,
  y: y * 0.9,
  width: Math.max(0.05, w * (1 - x * 0.9)),
  height: Math.max(0.05, h * (1 - y * 0.9)),
}));

/** A picture turned, straightened, cropped and lightened in any way, with nothing drawn on it. */
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
