import type { Point } from "./drawing.ts";
import { type Box, boxOf, distance, moved, type Segment } from "./geometry.ts";

/**
 * A dimension as it is drawn, in the manner of ISO 129-1: a line between filled arrowheads, extension lines from what
 * is measured, and the value above the line, to be read from below or from the right.
 */
export interface DimensionLines {
  line: Segment;
  /** Corners of two filled triangles, the tip first. */
  arrows: readonly (readonly [Point, Point, Point])[];
  extensions: readonly Segment[];
  /** The middle of the text's foot. */
  textAt: Point;
  /** Degrees clockwise by which the text is turned. */
  textTurn: number;
  /** Corners of the white ground that the text stands on, in order. */
  plate: readonly Point[];
  /** Around all of it. */
  box: Box;
}

/** Everything but the text is a share of the text's height. */
const share = { arrow: 0.85, halfArrow: 0.15, gap: 0.25, past: 0.4, foot: 0.5, aside: 0.15 };

/** How wide signs are at most, as shares of the height: those of Source Sans 3, semi-bold, by its own table of widths. */
const widths: readonly (readonly [RegExp, number])[] = [
  [/[\s\u00a0]/u, 0.2],
  [/[.,:;'|ijlI]/u, 0.3],
  [/[-()/[\]{}!frt]/u, 0.4],
  [/[\d+=<>−±×]/u, 0.55],
  [/[mwMW%@]/u, 0.9],
  [/[a-z\u00b5]/u, 0.6],
];
const widest = 0.75;

/** How wide a text is, or a little less. */
export function widthOf(text: string, height: number): number {
  const signs = [...text].map((sign) => widths.find(([of]) => of.test(sign))?.[1] ?? widest);
  return signs.reduce((sum, one) => sum + one, 0) * height;
}

/**
 * The lines of a dimension between two places.
 *
 * @param stand how far the line stands off them, to the left of who looks from `from` to `to`, in the unit drawn in
 * @param height height of the text, same unit
 */
export function dimensionLines(
  { from, to }: Segment,
  { stand, text, height }: { stand: number; text: string; height: number },
): DimensionLines {
  const length = distance(from, to) || 1;
  const along = { x: (to.x - from.x) / length, y: (to.y - from.y) / length };
  const left = { x: along.y, y: -along.x };
  const line = { from: go(from, left, stand), to: go(to, left, stand) };
  const narrow = length < 3 * share.arrow * height;
  const outward = narrow ? -1 : 1;
  const arrows = [
    arrowhead(line.from, along, outward * height),
    arrowhead(line.to, along, -outward * height),
  ] as const;
  const tail = narrow ? 2 * share.arrow * height : 0;
  const drawn = { from: go(line.from, along, -tail), to: go(line.to, along, tail) };
  const textWidth = widthOf(text, height);
  const { textAt, textTurn } = textOf(drawn, along, height, textWidth > length);
  const extensions = extensionsOf({ from, to }, left, stand, height);
  const plate = plateOf(textAt, textTurn, textWidth, height);
  const box = boxOf([
    drawn.from,
    drawn.to,
    ...arrows.flat(),
    ...extensions.flatMap((one) => [one.from, one.to]),
    ...plate,
  ]);
  return { line: drawn, arrows, extensions, textAt, textTurn, plate, box };
}

/** The ground of a text: around its letters, from its foot, ending short of its own line. */
function plateOf(foot: Point, turn: number, width: number, height: number): Point[] {
  const along = { x: Math.cos((turn * Math.PI) / 180), y: Math.sin((turn * Math.PI) / 180) };
  const up = { x: along.y, y: -along.x };
  const half = width / 2 + share.aside * height;
  const corners = [
    [-half, -0.28],
    [half, -0.28],
    [half, 0.85],
    [-half, 0.85],
  ] as const;
  return corners.map(([far, rise]) => go(go(foot, up, rise * height), along, far));
}

function arrowhead(tip: Point, along: Point, length: number): readonly [Point, Point, Point] {
  const foot = go(tip, along, share.arrow * length);
  const aside = { x: along.y, y: -along.x };
  return [tip, go(foot, aside, share.halfArrow * length), go(foot, aside, -share.halfArrow * length)];
}

function extensionsOf({ from, to }: Segment, left: Point, stand: number, height: number): Segment[] {
  const way = Math.sign(stand);
  if (Math.abs(stand) <= share.gap * height) return [];
  return [from, to].map((point) => ({
    from: go(point, left, way * share.gap * height),
    to: go(point, left, stand + way * share.past * height),
  }));
}

/**
 * Above the line as it is read: from below, or from the right where the line is upright. On a steep line that is
 * shorter than its text, level above its upper end.
 */
function textOf(line: Segment, along: Point, height: number, isCrowded: boolean) {
  if (isCrowded && Math.abs(along.y) > 0.35) {
    const upper = line.from.y < line.to.y ? line.from : line.to;
    return { textAt: go(upper, { x: 0, y: -1 }, share.foot * height), textTurn: 0 };
  }
  const middle = { x: (line.from.x + line.to.x) / 2, y: (line.from.y + line.to.y) / 2 };
  const backwards = along.x < -1e-9 || (Math.abs(along.x) <= 1e-9 && along.y > 0);
  const reading = backwards ? { x: -along.x, y: -along.y } : along;
  const up = { x: reading.y, y: -reading.x };
  return {
    textAt: go(middle, up, share.foot * height),
    textTurn: (Math.atan2(reading.y, reading.x) * 180) / Math.PI,
  };
}

function go(point: Point, way: Point, far: number): Point {
  return moved(point, { x: way.x * far, y: way.y * far });
}
