import type { DimensionLines } from "./dimension.ts";
import { type Drawable, drawableOf, type NumberOf, type ShownPicture, type WordsOf } from "./drawable.ts";
import type { Drawing, HandSeat, Point } from "./drawing.ts";
import { type Box, distance, type Segment } from "./geometry.ts";
import { bestLayout, type Group, type Layout, type Sheet } from "./layout.ts";
import type { Size } from "./shown.ts";

/** What a figure is drawn at: the room and the text in millimetres, points or pixels of a screen, all in one unit. */
export interface FigureSize extends Sheet {
  /** Pixels of the original picture. */
  picture: Size;
}

/** A balloon as it is drawn. */
export interface BalloonLines {
  id: string;
  number: number;
  centre: Point;
  radius: number;
  /** From the place to the edge of the circle. */
  leader: Segment;
  dot: { centre: Point; radius: number };
  /** It stands in the circle of one before it, which has the same number and points beside it. */
  shares: boolean;
}

/** A figure laid out: the one geometry that every output and every screen draws from. */
export interface FigureLines extends Size {
  /** The height of its texts: less than was asked for where there are more balloons than room. */
  text: number;
  /** Where the shown picture lies in it. */
  picture: Box;
  shown: ShownPicture;
  balloons: BalloonLines[];
  dimensions: (DimensionLines & { id: string; text: string })[];
  /** Balloons and dimensions that are not drawn: nothing stands for them, or they point outside the shown picture. */
  undrawn: string[];
  /** How many pairs of leaders cross. */
  crossings: number;
  /** How often a leader runs through another balloon, over another's place, or through a dimension. */
  overruns: number;
}

/** Radius of the dot at the end of a leader, as a share of the height of the text. */
const dotShare = 0.2;
/** The smallest text that is tried, as a share of what was asked for. */
const leastText = 0.1;

/**
 * Lays out what is drawn on a picture: dimension lines where they were put, and balloons clear of the picture, in rows
 * and columns beside it, but for those that were put by hand.
 */
export function figureLines(
  drawing: Drawing,
  size: FigureSize,
  numberOf: NumberOf,
  wordsOf: WordsOf,
): FigureLines {
  const drawable = drawableOf(drawing, size.picture, numberOf, wordsOf);
  for (let text = size.text; text > leastText * size.text; text *= 0.88) {
    const layout = bestLayout(drawable, { ...size, text });
    if (layout) return linesOf(drawable, layout);
  }
  return figureLines({ ...drawing, balloons: [], dimensions: [] }, size, numberOf, wordsOf);
}

/** Where a point of a figure lies on the original, in fractions of it; outside the picture it is outside 0 to 1. */
export function atOriginal({ picture, shown }: FigureLines, original: Size, at: Point): Point {
  const x = ((at.x - picture.x) * shown.width) / picture.width - shown.matrix.e;
  const y = ((at.y - picture.y) * shown.height) / picture.height - shown.matrix.f;
  const { a, b, c, d } = shown.matrix;
  const area = a * d - b * c;
  return { x: (d * x - c * y) / area / original.width, y: (a * y - b * x) / area / original.height };
}

/** A point of a figure as the seat of a balloon that is put there by hand. */
export function asSeat({ picture }: Pick<FigureLines, "picture">, at: Point): HandSeat {
  const within = (part: number) => Math.min(2, Math.max(-1, part));
  return { x: within((at.x - picture.x) / picture.width), y: within((at.y - picture.y) / picture.height) };
}

function linesOf(drawable: Drawable, layout: Layout): FigureLines {
  const { scale, text, whole, groups, placing, measures } = layout;
  const drawn = {
    picture: { x: 0, y: 0, width: drawable.shown.width * scale, height: drawable.shown.height * scale },
    balloons: groups.flatMap((group, index) =>
      balloonsOf(group, placing.centres[index] as Point, measures.radius, dotShare * text),
    ),
    dimensions: drawable.dimensions.map(({ id, text: words }, index) => ({
      ...(layout.dimensions[index] as DimensionLines),
      id,
      text: words,
    })),
  };
  return {
    width: whole.width,
    height: whole.height,
    text,
    ...shifted(drawn, { x: -whole.x, y: -whole.y }),
    shown: drawable.shown,
    undrawn: drawable.undrawn,
    crossings: placing.crossings,
    overruns: placing.overruns,
  };
}

function balloonsOf({ number, members }: Group, centre: Point, radius: number, dot: number): BalloonLines[] {
  return members.map(({ id, at }, index) => ({
    id,
    number,
    centre,
    radius,
    leader: { from: at, to: onCircle(centre, radius, at) },
    dot: { centre: at, radius: dot },
    shares: index > 0,
  }));
}

/** Where a line from a point to the middle of a circle meets it. */
function onCircle(centre: Point, radius: number, from: Point): Point {
  const part = Math.min(1, radius / (distance(centre, from) || 1));
  return { x: centre.x + part * (from.x - centre.x), y: centre.y + part * (from.y - centre.y) };
}

/** The same with every point in it moved. */
function shifted<T>(value: T, by: Point): T {
  if (Array.isArray(value)) return value.map((one) => shifted(one, by)) as T;
  if (typeof value !== "object" || value === null) return value;
  const all = Object.entries(value).map(([key, one]) => [key, shifted(one, by)]);
  const moved = Object.fromEntries(all);
  if ("x" in value && "y" in value) Object.assign(moved, { x: moved.x + by.x, y: moved.y + by.y });
  return moved;
}
