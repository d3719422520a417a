import { type Crop, type Drawing, type Point, wholePicture } from "./drawing.ts";
import { type Size, shown } from "./shown.ts";

/** Changes of a drawing. Each gives a new one and leaves the old as it was. */

/** A crop inside the picture that leaves at least a twentieth of it each way. */
function fitting(crop: Crop): Crop {
  const x = clamp(crop.x, 0, 0.95);
  const y = clamp(crop.y, 0, 0.95);
  return {
    x,
    y,
    width: clamp(crop.width, 0.05, 1 - x),
    height: clamp(crop.height, 0.05, 1 - y),
  };
}

export function changeBalloon(
  drawing: Drawing,
  id: string,
  columns: Partial<Drawing["balloons"][number]>,
): Drawing {
  const balloons = drawing.balloons.map((one) => (one.id === id ? { ...one, ...columns } : one));
  return { ...drawing, balloons };
}

export function changeDimension(
  drawing: Drawing,
  id: string,
  columns: Partial<Drawing["dimensions"][number]>,
): Drawing {
  const dimensions = drawing.dimensions.map((one) => (one.id === id ? { ...one, ...columns } : one));
  return { ...drawing, dimensions };
}

export function withoutBalloon(drawing: Drawing, id: string): Drawing {
  return { ...drawing, balloons: drawing.balloons.filter((one) => one.id !== id) };
}

export function withoutDimension(drawing: Drawing, id: string): Drawing {
  return { ...drawing, dimensions: drawing.dimensions.filter((one) => one.id !== id) };
}

/** Turned by a quarter. Crop and balloons placed by hand go with the picture: what was shown is still shown. */
export function turned(drawing: Drawing, by: 90 | 270, size: Size): Drawing {
  const { x, y, width, height } = drawing.crop;
  const crop =
    by === 90
      ? { x: 1 - y - height, y: x, width: height, height: width }
      : { x: y, y: 1 - x - width, width: height, height: width };
  const seatOf = (seat: Point) => (by === 90 ? { x: 1 - seat.y, y: seat.x } : { x: seat.y, y: 1 - seat.x });
  const after: Drawing = {
    ...drawing,
    quarter: ((drawing.quarter + by) % 360) as Drawing["quarter"],
    crop: fitting(crop),
    balloons: drawing.balloons.map((one) => ({ ...one, seat: one.seat && seatOf(one.seat) })),
  };
  return standing(after, shown(drawing, size).width / shown(after, size).width);
}

/** Cropped. Balloons placed by hand stay where they stand on the picture; those left far outside go back to the rule. */
export function cropped(drawing: Drawing, wanted: Crop): Drawing {
  const crop = fitting(wanted);
  const old = drawing.crop;
  const seatOf = ({ x, y }: Point) => {
    const seat = {
      x: (old.x + x * old.width - crop.x) / crop.width,
      y: (old.y + y * old.height - crop.y) / crop.height,
    };
    return [seat.x, seat.y].every((place) => place > -0.5 && place < 1.5) ? seat : null;
  };
  const balloons = drawing.balloons.map((one) => ({ ...one, seat: one.seat && seatOf(one.seat) }));
  return standing({ ...drawing, crop, balloons }, old.width / crop.width);
}

/** Dimension lines stand as far off as they did, now that the shown picture is so many times narrower. */
function standing(drawing: Drawing, narrower: number): Drawing {
  const dimensions = drawing.dimensions.map((one) => ({ ...one, stand: clamp(one.stand * narrower, -1, 1) }));
  return { ...drawing, dimensions };
}

/** Shown as it was taken, with what is drawn on it. */
export function asTaken(drawing: Drawing): Drawing {
  return { ...cropped(drawing, wholePicture), quarter: 0, straighten: 0, light: 0 };
}

/** From fractions of the shown picture of `size` pixels to fractions of the original, held inside both. */
export function onOriginal(at: Point, drawing: Drawing, size: Size): Point {
  const view = shown(drawing, size);
  const { x, y } = inside(at);
  return inside(view.fromShown({ x: x * view.width, y: y * view.height }));
}

/** A place beside the picture means its edge. */
export function inside({ x, y }: Point): Point {
  return { x: clamp(x, 0, 1), y: clamp(y, 0, 1) };
}

const clamp = (value: number, least: number, most: number) => Math.min(Math.max(value, least), most);
