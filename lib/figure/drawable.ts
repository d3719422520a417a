import type { Balloon, Drawing, Point } from "./drawing.ts";
import { distance } from "./geometry.ts";
import { lightFactor, type Matrix, type Size, shown } from "./shown.ts";

/** The number of an item in the parts list; null where there is no such item. */
export type NumberOf = (item: string) => number | null;
/** What stands on the dimension of a measurement; null where there is no such measurement. */
export type WordsOf = (mark: string) => string | null;

/** A balloon with its number, and its place in fractions of the shown picture. */
export interface NumberedBalloon extends Balloon {
  number: number;
  place: Point;
}

/** A dimension with its text, and its places in fractions of the shown picture. */
export interface ValuedDimension {
  id: string;
  text: string;
  from: Point;
  to: Point;
  stand: number;
}

/** The picture in its own pixels, the way to it from the original, and how many times as light it is. */
export interface ShownPicture extends Size {
  matrix: Matrix;
  light: number;
}

/** What of a drawing can be drawn on its picture. */
export interface Drawable {
  shown: ShownPicture;
  balloons: NumberedBalloon[];
  dimensions: ValuedDimension[];
  /** What cannot: nothing stands for it, or it points outside the shown picture. */
  undrawn: string[];
}

/** What of a drawing can be drawn on a picture of that many pixels. */
export function drawableOf(drawing: Drawing, picture: Size, numberOf: NumberOf, wordsOf: WordsOf): Drawable {
  const { width, height, matrix, toShown } = shown(drawing, picture);
  const place = (at: Point): Point | null => {
    const { x, y } = toShown(at);
    const part = { x: x / width, y: y / height };
    return Math.min(part.x, part.y, 1 - part.x, 1 - part.y) >= -1e-9 ? part : null;
  };
  const balloons = drawing.balloons.flatMap((one) => {
    const [number, at] = [numberOf(one.item), place(one.at)];
    return number === null || !at ? [] : [{ ...one, number, place: at }];
  });
  const dimensions = drawing.dimensions.flatMap((one) => {
    const [text, from, to] = [wordsOf(one.mark), place(one.from), place(one.to)];
    if (text === null || !from || !to || distance(from, to) < 1e-6) return [];
    return [{ id: one.id, text, from, to, stand: one.stand }];
  });
  const drawn = new Set([...balloons, ...dimensions].map(({ id }) => id));
  return {
    shown: { width, height, matrix, light: lightFactor(drawing) },
    balloons,
    dimensions,
    undrawn: [...drawing.balloons, ...drawing.dimensions].map(({ id }) => id).filter((id) => !drawn.has(id)),
  };
}
