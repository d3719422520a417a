import { type DimensionLines, dimensionLines } from "./dimension.ts";
import type { Drawable, NumberedBalloon } from "./drawable.ts";
import type { Point } from "./drawing.ts";
import { type Box, boxOf, distance, union } from "./geometry.ts";
import { type Placing, placeBalloons } from "./place.ts";
import type { Size } from "./shown.ts";
import { type Measures, reachOf, type Strips, seatsBeside, sidesOfFigures, wholeOf } from "./strips.ts";

/** What a figure is drawn at, in one unit: millimetres, points or pixels of a screen. */
export interface Sheet {
  /** The most that the whole figure may take; its height may be without end. */
  room: Size;
  /** The height of its texts. */
  text: number;
}

/** Balloons that stand in one circle: one, or a few of one item that point at places near each other. */
export interface Group {
  number: number;
  members: { id: string; at: Point }[];
  hand: Point | null;
}

/** A figure laid out, from the upper left corner of its picture. */
export interface Layout {
  /** Drawn units for each pixel of the shown picture. */
  scale: number;
  text: number;
  strips: Strips;
  measures: Measures;
  whole: Box;
  dimensions: DimensionLines[];
  groups: Group[];
  placing: Placing;
}

/** Shares of the height of the text. */
const share = { radius: 1.05, gap: 0.85, pitch: 2.45, clear: 0.3, near: 5 };

/** Rounds in which balloons exchange seats, and for how many of the best layouts that is tried. */
const rounds = 4;
const tried = 6;

/** The layout that serves best: few conflicts, a large picture, short leaders. Null where there is no room for any. */
export function bestLayout(drawable: Drawable, sheet: Sheet): Layout | null {
  const measures = measuresOf(sheet.text);
  for (const choices of choicesOf(drawable, sheet, measures)) {
    const first = choices.flatMap((strips) => layOut(drawable, sheet, strips, measures, 0) ?? []);
    const [best, ...others] = bestFirst(first, drawable, sheet);
    if (!best) continue;
    if (isClean(best)) return best;
    const again = [best, ...others.slice(0, tried - 1)].flatMap(
      ({ strips }) => layOut(drawable, sheet, strips, measures, rounds) ?? [],
    );
    return bestFirst(again, drawable, sheet)[0] ?? best;
  }
  return null;
}

function isClean({ placing }: Pick<Layout, "placing">): boolean {
  return placing.crossings === 0 && placing.overruns === 0;
}

function bestFirst(layouts: Layout[], drawable: Drawable, sheet: Sheet): Layout[] {
  const worth = new Map(layouts.map((one) => [one, worthOf(one, drawable, sheet)]));
  return layouts.sort((a, b) => (worth.get(a) as number) - (worth.get(b) as number));
}

function measuresOf(text: number): Measures {
  return { radius: share.radius * text, gap: share.gap * text, pitch: share.pitch * text };
}

/** Margins beside the picture; and, where those are too short for all balloons, such as go on past it. */
function choicesOf({ balloons }: Drawable, { room }: Sheet, measures: Measures): Strips[][] {
  if (balloons.every(({ seat }) => seat !== null)) return [[{ sides: [], reach: null }]];
  const past = (...ends: Strips["sides"]) => {
    const length = reachOf(room, ends.includes("left"), measures, balloons.length);
    return sidesOfFigures
      .filter((sides) => ends.some((end) => sides.includes(end)))
      .map((sides) => ({ sides, reach: { sides: ends, length } }));
  };
  const beside = sidesOfFigures.map((sides) => ({ sides, reach: null }));
  return [beside, [...past("left", "right"), ...past("above", "below")]];
}

/** Less is better: conflicts count most, then how much smaller the picture is, then how long the leaders are. */
function worthOf({ placing, scale, groups, whole }: Layout, { shown }: Drawable, { room }: Sheet): number {
  const lost = 1 - (scale / mostOf(shown, room)) ** 2;
  const leader = placing.length / Math.max(1, groups.length) / Math.hypot(whole.width, whole.height);
  return 100 * placing.crossings + 2 * placing.overruns + lost + 1.5 * leader;
}

function mostOf(shown: Size, room: Size): number {
  return Math.min(room.width / shown.width, room.height / shown.height);
}

/** Lays a figure out with these margins, as large as the room allows; null where it does not fit. */
function layOut(
  drawable: Drawable,
  { room, text }: Sheet,
  strips: Strips,
  measures: Measures,
  rounds: number,
): Layout | null {
  const at = (scale: number) => framed(drawable, text, strips, measures, scale);
  const fits = (scale: number) => {
    const { width, height } = at(scale).whole;
    return width <= room.width + 1e-9 && height <= room.height + 1e-9;
  };
  const scale = largest(fits, mostOf(drawable.shown, room));
  if (scale === null) return null;
  const { inner, seats, dimensions } = at(scale);
  const texts = dimensions.map(({ plate }) => boxOf(plate));
  const lines = dimensions.flatMap(({ line, extensions }) => [line, ...extensions]);
  const options = { radius: measures.radius, clear: share.clear * text, rounds };
  // Two places that share a circle may be in the way of others; then each has its own.
  for (const near of [share.near * text, 0]) {
    const groups = groupsOf(drawable, scale, near);
    const targets = groups.map(({ members, hand }) => ({ at: members.map((one) => one.at), hand }));
    const placing = placeBalloons(targets, { seats, texts, lines }, options);
    const isLast = near === 0 || groups.length === drawable.balloons.length;
    // Margins that no balloon stands in are no part of the figure.
    if (placing && (isClean({ placing }) || isLast))
      return {
        scale,
        text,
        strips,
        measures,
        whole: wholeOf(inner, placing.centres, measures),
        dimensions,
        groups,
        placing,
      };
  }
  return null;
}

/** The largest scale at which something fits, within a millionth; null where it does not at a hundredth of the most. */
function largest(fits: (scale: number) => boolean, most: number): number | null {
  if (fits(most)) return most;
  let [low, high] = [most / 100, most];
  if (!fits(low)) return null;
  for (let step = 0; step < 20; step++) {
    const middle = (low + high) / 2;
    if (fits(middle)) low = middle;
    else high = middle;
  }
  return low;
}

function framed(
  { shown, dimensions, balloons }: Drawable,
  text: number,
  strips: Strips,
  measures: Measures,
  scale: number,
) {
  const place = placeAt(shown, scale);
  const lines = dimensions.map((one) =>
    dimensionLines(
      { from: place(one.from), to: place(one.to) },
      { stand: one.stand * shown.width * scale, text: one.text, height: text },
    ),
  );
  const picture = boxOf([place({ x: 0, y: 0 }), place({ x: 1, y: 1 })]);
  const inner = union([picture, ...lines.map(({ box }) => box)]);
  const seats = seatsBeside(inner, strips, measures);
  const hands = balloons.flatMap(({ seat }) => (seat ? [place(seat)] : []));
  return { inner, seats, dimensions: lines, whole: wholeOf(inner, [...seats, ...hands], measures) };
}

/** Balloons of one item that point at places near each other are one, unless one was put by hand. */
function groupsOf({ shown, balloons }: Drawable, scale: number, near: number): Group[] {
  const place = placeAt(shown, scale);
  const groups: Group[] = [];
  const shares = (group: Group, one: NumberedBalloon, at: Point) =>
    group.number === one.number &&
    group.hand === null &&
    one.seat === null &&
    group.members.every((other) => distance(other.at, at) < near);
  for (const one of balloons) {
    const at = place(one.place);
    const group = groups.find((other) => shares(other, one, at));
    if (group) group.members.push({ id: one.id, at });
    else
      groups.push({ number: one.number, members: [{ id: one.id, at }], hand: one.seat && place(one.seat) });
  }
  return groups;
}

function placeAt(shown: Size, scale: number) {
  return ({ x, y }: Point): Point => ({ x: x * shown.width * scale, y: y * shown.height * scale });
}
