import type { Point } from "./drawing.ts";
import type { Size } from "./shown.ts";

/** A straight line between two points. Everything here is in the unit that is drawn in, y downwards. */
export interface Segment {
  from: Point;
  to: Point;
}

/** An upright rectangle by its upper left corner. */
export interface Box extends Size {
  x: number;
  y: number;
}

export function distance(a: Point, b: Point): number {
  return Math.hypot(a.x - b.x, a.y - b.y);
}

/** How far a point lies from the nearest point of a segment. */
export function distanceTo({ from, to }: Segment, point: Point): number {
  const [dx, dy] = [to.x - from.x, to.y - from.y];
  const square = dx * dx + dy * dy;
  const along = square === 0 ? 0 : ((point.x - from.x) * dx + (point.y - from.y) * dy) / square;
  const part = Math.min(1, Math.max(0, along));
  return Math.hypot(point.x - from.x - part * dx, point.y - from.y - part * dy);
}

/** Whether two segments cross, each between its own ends. Lines that only touch do not. */
export function cross(one: Segment, other: Segment): boolean {
  return side(one, other.from) * side(one, other.to) < 0 && side(other, one.from) * side(other, one.to) < 0;
}

/** On which side of a segment a point lies: -1, 1, or 0 for on it, within what rounding leaves. */
function side({ from, to }: Segment, point: Point): number {
  const area = (to.x - from.x) * (point.y - from.y) - (to.y - from.y) * (point.x - from.x);
  const far = Math.abs(to.x - from.x) + Math.abs(to.y - from.y);
  return Math.abs(area) <= 1e-9 * far * far ? 0 : Math.sign(area);
}

/** Whether a segment runs through a box or lies in it. */
export function meets(segment: Segment, { x, y, width, height }: Box): boolean {
  const inside = ({ from }: Segment) => from.x > x && from.x < x + width && from.y > y && from.y < y + height;
  const diagonals: Segment[] = [
    { from: { x, y }, to: { x: x + width, y: y + height } },
    { from: { x: x + width, y }, to: { x, y: y + height } },
  ];
  return inside(segment) || diagonals.some((diagonal) => cross(segment, diagonal));
}

/** The smallest box around all of these. */
export function union(boxes: readonly Box[]): Box {
  const x = Math.min(...boxes.map((box) => box.x));
  const y = Math.min(...boxes.map((box) => box.y));
  const right = Math.max(...boxes.map((box) => box.x + box.width));
  const lower = Math.max(...boxes.map((box) => box.y + box.height));
  return { x, y, width: right - x, height: lower - y };
}

/** The box around a circle. */
export function around({ x, y }: Point, radius: number): Box {
  return { x: x - radius, y: y - radius, width: 2 * radius, height: 2 * radius };
}

/** The box around some points, at least one. */
export function boxOf(points: readonly Point[]): Box {
  return union(points.map((point) => around(point, 0)));
}

export function moved({ x, y }: Point, by: Point): Point {
  return { x: x + by.x, y: y + by.y };
}
