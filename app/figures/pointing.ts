import { type Crop, type Drawing, type Point, type Size, shown, wholePicture } from "#lib/figure/index.ts";

/** What the next place pointed at on the picture will be. */
export type InHand =
  | { deed: "balloon"; item: string; name: string }
  | { deed: "target"; balloon: string; name: string }
  | { deed: "seat"; balloon: string; name: string }
  | { deed: "dimension"; mark: string; name: string; from: Point | null }
  | { deed: "end"; dimension: string; name: string; end: "from" | "to" }
  /** The corner in fractions of the shown picture. */
  | { deed: "crop"; corner: Point | null };

/** What pointing comes to: the drawing changed, with its name in the history; or a first place, with one still to come. */
export type Pointed =
  | { kind: "drawn"; drawing: Drawing; label: string }
  | { kind: "half"; hand: InHand }
  | { kind: "refused"; words: string };

/**
 * Points at a place of the picture with what is in hand.
 *
 * @param at in fractions of the shown picture
 * @param newId of what is drawn anew
 */
export function pointAt(hand: InHand, at: Point, drawing: Drawing, size: Size, newId: string): Pointed {
  switch (hand.deed) {
    case "balloon": {
      const balloon = { id: newId, item: hand.item, at: onOriginal(at, drawing, size), seat: null };
      return drawn({ ...drawing, balloons: [...drawing.balloons, balloon] }, `Balloon: ${hand.name}`);
    }
    case "target":
      return drawn(
        changeBalloon(drawing, hand.balloon, { at: onOriginal(at, drawing, size) }),
        `Balloon points elsewhere: ${hand.name}`,
      );
    case "seat":
      return drawn(changeBalloon(drawing, hand.balloon, { seat: at }), `Balloon moved: ${hand.name}`);
    case "dimension":
      return dimension(hand, onOriginal(at, drawing, size), drawing, newId);
    case "end":
      return drawn(
        changeDimension(drawing, hand.dimension, { [hand.end]: onOriginal(at, drawing, size) }),
        `Dimension line moved: ${hand.name}`,
      );
    case "crop":
      return cropTo(hand, inside(at), drawing);
  }
}

function dimension(
  hand: Extract<InHand, { deed: "dimension" }>,
  to: Point,
  drawing: Drawing,
  id: string,
): Pointed {
  const { mark, name, from } = hand;
  if (!from) return { kind: "half", hand: { ...hand, from: to } };
  if (Math.hypot(to.x - from.x, to.y - from.y) < 0.005) {
    return { kind: "refused", words: "The second place is the first. Point at the other end." };
  }
  const line = { id, mark, from, to, stand: 0 };
  return drawn({ ...drawing, dimensions: [...drawing.dimensions, line] }, `Dimension line: ${name}`);
}

function cropTo(hand: Extract<InHand, { deed: "crop" }>, at: Point, drawing: Drawing): Pointed {
  const { corner } = hand;
  if (!corner) return { kind: "half", hand: { deed: "crop", corner: at } };
  const old = drawing.crop;
  const crop = {
    x: old.x + Math.min(corner.x, at.x) * old.width,
    y: old.y + Math.min(corner.y, at.y) * old.height,
    width: Math.abs(at.x - corner.x) * old.width,
    height: Math.abs(at.y - corner.y) * old.height,
  };
  if (crop.width < 0.05 || crop.height < 0.05) {
    return {
      kind: "refused",
      words: "Less than a twentieth of the picture would be left. Point further off.",
    };
  }
  return drawn(cropped(drawing, crop), "Picture cropped");
}

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
export function turned(drawing: Drawing, by: 90 | 270): Drawing {
  const { x, y, width, height } = drawing.crop;
  const crop =
    by === 90
      ? { x: 1 - y - height, y: x, width: height, height: width }
      : { x: y, y: 1 - x - width, width: height, height: width };
  const seatOf = (seat: Point) => (by === 90 ? { x: 1 - seat.y, y: seat.x } : { x: seat.y, y: 1 - seat.x });
  return {
    ...drawing,
    quarter: ((drawing.quarter + by) % 360) as Drawing["quarter"],
    crop: fitting(crop),
    balloons: drawing.balloons.map((one) => ({ ...one, seat: one.seat && seatOf(one.seat) })),
  };
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
  return {
    ...drawing,
    crop,
    balloons: drawing.balloons.map((one) => ({ ...one, seat: one.seat && seatOf(one.seat) })),
    dimensions: drawing.dimensions.map((one) => ({
      ...one,
      stand: clamp((one.stand * old.width) / crop.width, -1, 1),
    })),
  };
}

/** How the picture is shown, without what is drawn on it. */
export const asTaken = { quarter: 0, straighten: 0, crop: wholePicture, light: 0 } as const;

const clamp = (value: number, least: number, most: number) => Math.min(Math.max(value, least), most);

function drawn(drawing: Drawing, label: string): Pointed {
  return { kind: "drawn", drawing, label };
}

/** From fractions of the shown picture to fractions of the original, held inside it. */
function onOriginal(at: Point, drawing: Drawing, size: Size): Point {
  const view = shown(drawing, size);
  const { x, y } = inside(at);
  return inside(view.fromShown({ x: x * view.width, y: y * view.height }));
}

/** A place beside the picture means its edge. */
function inside({ x, y }: Point): Point {
  return { x: clamp(x, 0, 1), y: clamp(y, 0, 1) };
}
