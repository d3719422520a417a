import type { Point } from "#lib/figure/index.ts";
import type { InHand } from "./pointing.ts";

/** Where a place is, for who does not see it: "upper left, 20 % across, 15 % down". Fractions of the shown picture. */
export function sayPlace({ x, y }: Point): string {
  const third = (value: number, [low, middle, high]: readonly [string, string, string]) =>
    value < 1 / 3 ? low : value > 2 / 3 ? high : middle;
  const row = third(y, ["upper", "", "lower"]);
  const column = third(x, ["left", "", "right"]);
  const region = [row, column].filter(Boolean).join(" ") || "middle";
  return `${region}, ${percent(x)} across, ${percent(y)} down`;
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
