import { z } from "zod";

/** A place on a picture, in fractions of the original's width and height: turning or cropping never moves it. */
export const point = z.object({ x: z.number().min(0).max(1), y: z.number().min(0).max(1) });
export type Point = z.infer<typeof point>;

/** A part of the turned picture, in fractions of its width and height. */
const crop = z
  .object({
    x: z.number().min(0).max(0.95),
    y: z.number().min(0).max(0.95),
    width: z.number().min(0.05).max(1),
    height: z.number().min(0.05).max(1),
  })
  .refine(({ x, y, width, height }) => x + width <= 1 + 1e-9 && y + height <= 1 + 1e-9, {
    error: "a part of the picture was expected: no further than its right and lower edge",
  });
export type Crop = z.infer<typeof crop>;

/** A balloon placed by hand: its centre in fractions of the shown picture, beside which it may stand. */
const seat = z.object({ x: z.number().min(-1).max(2), y: z.number().min(-1).max(2) });
export type HandSeat = z.infer<typeof seat>;

const ownId = z.string().min(1).max(100);

/** A number in a circle with a leader line to a part (ISO 6433). */
const balloon = z.object({
  id: ownId,
  /** The item of the parts list: its id, or `name:` and its name in lower case while it has none. */
  item: z.string().min(1).max(520),
  at: point,
  /** Null: placed by rule. */
  seat: seat.nullable(),
});
export type Balloon = z.infer<typeof balloon>;

/** A dimension line between two places of a part. */
const dimension = z.object({
  id: ownId,
  /** The mark of the measurement that says how much it is. */
  mark: ownId,
  from: point,
  to: point,
  /**
   * How far the line stands off the measured points, as a fraction of the shown picture's width: to the left of who
   * looks from `from` to `to` where it is more than nought, else to the right.
   */
  stand: z.number().min(-1).max(1),
});
export type Dimension = z.infer<typeof dimension>;

/** What is drawn on a still, and how it is shown. The still itself is never changed. */
export const drawing = z.object({
  version: z.literal(1),
  /** What the picture is a view of: "view A", "detail B", "before", "after", or other words. */
  view: z.string().max(40),
  /** Degrees by which it is turned clockwise. */
  quarter: z.literal([0, 90, 180, 270]),
  /** Degrees clockwise by which it is turned besides, to stand straight. */
  straighten: z.number().min(-15).max(15),
  crop,
  /** From -1, half as light, over 0, as taken, to 1, twice as light. */
  light: z.number().min(-1).max(1),
  balloons: z.array(balloon).max(60),
  dimensions: z.array(dimension).max(30),
});
export type Drawing = z.infer<typeof drawing>;

/** The whole of a turned picture. */
export const wholePicture: Crop = { x: 0, y: 0, width: 1, height: 1 };

/** Nothing drawn, shown as it was taken. */
export const plainDrawing: Drawing = {
  version: 1,
  view: "",
  quarter: 0,
  straighten: 0,
  crop: wholePicture,
  light: 0,
  balloons: [],
  dimensions: [],
};

/** Whether the picture is shown as it was taken, with nothing on it and no name of its own. */
export function isPlain(drawing: Drawing): boolean {
  return isAsTaken(drawing) && !hasLines(drawing) && drawing.view.trim() === "";
}

/** Whether the picture is shown as it was taken, whatever is drawn on it. */
export function isAsTaken({ quarter, straighten, crop, light }: Drawing): boolean {
  const whole = crop.x === 0 && crop.y === 0 && crop.width === 1 && crop.height === 1;
  return quarter === 0 && straighten === 0 && light === 0 && whole;
}

/** Whether anything is drawn on the picture. */
export function hasLines({ balloons, dimensions }: Drawing): boolean {
  return balloons.length > 0 || dimensions.length > 0;
}
