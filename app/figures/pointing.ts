import { changeBalloon, changeDimension, cropped, inside, onOriginal } from "#lib/figure/change.ts";
import type { Drawing, Point, Size } from "#lib/figure/index.ts";

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

function drawn(drawing: Drawing, label: string): Pointed {
  return { kind: "drawn", drawing, label };
}
