import type { Point } from "./drawing.ts";
import { around, type Box, union } from "./geometry.ts";
import type { Size } from "./shown.ts";

/** A margin beside the picture in which balloons stand in a row or a column. */
export type Side = "left" | "right" | "above" | "below";

/** Which margins a figure has; of two that face each other, rows may go on past the picture where it is narrow. */
export interface Strips {
  sides: readonly Side[];
  /** How long rows and columns may be where they go on past the picture; null where they keep beside it. */
  reach: { sides: readonly Side[]; length: number } | null;
}

const all: readonly Side[] = ["right", "left", "above", "below"];

/** Every choice of margins, the plainest first. */
export const sidesOfFigures: readonly (readonly Side[])[] = Array.from({ length: 15 }, (_, index) =>
  all.filter((_side, bit) => ((index + 1) >> bit) & 1),
).sort((a, b) => a.length - b.length);

/** Measures of balloons, in the unit that is drawn in. */
export interface Measures {
  radius: number;
  /** Between the picture and the circles beside it. */
  gap: number;
  /** Least distance between the centres of two balloons in a row. */
  pitch: number;
}

/** Between circles and the edge of the figure, as a share of the gap. */
const edgeShare = 0.25;

/** The centres of the places for balloons beside a box. */
export function seatsBeside(inner: Box, { sides, reach }: Strips, measures: Measures): Point[] {
  return sides.flatMap((side) => {
    const upright = side === "left" || side === "right";
    const own = upright ? inner.height : inner.width;
    const length = reach?.sides.includes(side) ? Math.max(own, reach.length) : own;
    const middle = upright ? inner.y + inner.height / 2 : inner.x + inner.width / 2;
    const across = acrossOf(side, inner, measures);
    return places(length, middle, measures).map((along) =>
      upright ? { x: across, y: along } : { x: along, y: across },
    );
  });
}

/** The whole of a figure: the box, its margins, and balloons that were put outside it by hand. */
export function wholeOf(inner: Box, seats: readonly Point[], { radius, gap }: Measures): Box {
  return union([inner, ...seats.map((seat) => around(seat, radius + edgeShare * gap))]);
}

/** How long rows that go on past the picture may be. */
export function reachOf(
  { width, height }: Size,
  upright: boolean,
  { radius, pitch }: Measures,
  count: number,
) {
  const length = upright ? height : width;
  return Number.isFinite(length) ? length : (count + 1) * pitch + 2 * radius;
}

function acrossOf(side: Side, { x, y, width, height }: Box, { radius, gap }: Measures): number {
  const off = gap + radius;
  return { left: x - off, right: x + width + off, above: y - off, below: y + height + off }[side];
}

/** As many places as a length has room for, evenly over it. */
function places(length: number, middle: number, { radius, gap, pitch }: Measures): number[] {
  const free = length - 2 * radius - 2 * edgeShare * gap;
  const count = Math.max(1, Math.floor(free / pitch + 1e-9) + 1);
  if (count === 1) return [middle];
  return Array.from({ length: count }, (_, index) => middle + (index / (count - 1) - 0.5) * free);
}
