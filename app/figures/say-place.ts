import type { Point } from "#lib/figure/index.ts";
import type { InHand } from "./pointing.ts";

/**
 * Where a place is, for who does not see it: "upper left, 20 % across, 15 % down"; beside it "above the picture, 45 %
 * across". In fractions of the shown picture.
 */
export function sayPlace({ x, y }: Point): string {
  const across = `${percent(x)} across`;
  const down = `${percent(y)} down`;
  if (y < 0 || y > 1) return `${y < 0 ? "above" : "below"} the picture, ${across}`;
  if (x < 0 || x > 1) return `${x < 0 ? "left" : "right"} of the picture, ${down}`;
  const row = third(y, ["upper", "", "lower"]);
  const column = third(x, ["left", "", "right"]);
  return [[row, column].filter(Boolean).join(" ") || "middle", across, down].join(", ");
}

function third(value: number, [low, middle, high]: readonly [string, string, string]): string {
  return value < 1 / 3 ? low : value > 2 / 3 ? high : middle;
}

const percent = (value: number) => `${Math.round(value * 100)} %`;

/** The nearest thing that is drawn, where one is close: "at balloon 3, Cover". */
export function sayNear(at: Point, things: readonly { at: Point; words: string }[]): string {
  const near = things
    .map((thing) => ({ ...thing, far: Math.hypot(thing.at.x - at.x, thing.at.y - at.y) }))
    .sort((a, b) => a.far - b.far)[0];
  return near && near.far < 0.06 ? `, at ${near.words}` : "";
}

/** What the next place will be. */
export function sayHand(hand: InHand): string {
  switch (hand.deed) {
    case "balloon":
      return `Point at: ${hand.name}`;
    case "target":
      return `Point anew at: ${hand.name}`;
    case "seat":
      return `Where the balloon stands: ${hand.name}`;
    case "dimension":
      return hand.from ? `Second end of: ${hand.name}` : `First end of: ${hand.name}`;
    case "end":
      return `New ${hand.end === "from" ? "first" : "second"} end of: ${hand.name}`;
    case "crop":
      return hand.corner ? "The opposite corner of what stays" : "A corner of what stays";
  }
}
