import { assign } from "./assign.ts";
import type { Point } from "./drawing.ts";
import { type Box, cross, distance, distanceTo, meets, type Segment } from "./geometry.ts";

/** A balloon to be placed: the places it points at, one or a few near each other. */
export interface Target {
  at: readonly Point[];
  /** Where it has been put by hand; null where it is to be placed. */
  hand: Point | null;
}

/** Where balloons may stand, and what their leaders keep clear of. All in the unit that is drawn in. */
export interface Frame {
  /** Centres of the places that balloons may take. No two are nearer to each other than balloons may be. */
  seats: readonly Point[];
  /** Boxes that leaders avoid where they can: texts of dimensions. */
  texts: readonly Box[];
  /** Lines that leaders avoid where they can: dimension lines with their arrowheads, and their extension lines. */
  lines: readonly Segment[];
}

export interface PlaceOptions {
  radius: number;
  /** Least distance between a circle and what is not its own. */
  clear: number;
  /** How many rounds of exchanging seats there may be. */
  rounds: number;
}

/** Where balloons stand, how well, and how long their leaders are together. */
export interface Placing {
  /** The centre of each, in the order of the targets. A leader runs straight from there to each place it points at. */
  centres: Point[];
  /** How many pairs of leaders cross. */
  crossings: number;
  /** How often a leader runs through another balloon, over another's place, or through a dimension. */
  overruns: number;
  length: number;
}

/**
 * Where each balloon stands: on seats of the frame, so that the leaders are as short as they can be together. Of
 * straight lines between two sets of points the shortest never cross. What is left to avoid then, such as a leader
 * through another balloon, is avoided by exchanging seats. Balloons put by hand stay.
 *
 * @returns null where the frame has fewer seats than balloons need
 */
export function placeBalloons(
  targets: readonly Target[],
  frame: Frame,
  options: PlaceOptions,
): Placing | null {
  const byRule = targets.flatMap(({ hand }, index) => (hand === null ? [index] : []));
  const free = frame.seats.filter((seat) => isFree(seat, targets, options));
  if (free.length < byRule.length) return null;
  const chosen = assign(byRule.map((index) => free.map((seat) => reach(targets[index] as Target, seat))));
  const centres = targets.map(({ hand }) => hand ?? { x: 0, y: 0 });
  for (const [at, index] of byRule.entries()) centres[index] = free[chosen[at] as number] as Point;
  const standing = { targets, centres, frame, options };
  for (let round = 0; round < options.rounds && exchange(standing, byRule, free); round++);
  const each = targets.map((_, index) => troubles(standing, index));
  // What is between two balloons was counted at both.
  const total = each.reduce((sum, { shared, own }) => sum + shared / 2 + own, 0);
  return {
    centres,
    crossings: Math.floor(total / crossing),
    overruns: total % crossing,
    length: targets.reduce((sum, target, index) => sum + reach(target, centres[index] as Point), 0),
  };
}

/** A crossing is worse than any number of overruns. */
const crossing = 10_000;

/** How many of the seats nearest to its places a balloon tries. */
const triedSeats = 14;

/** How long the leaders from a seat to all places of a target are. */
function reach({ at }: Target, seat: Point): number {
  return at.reduce((sum, one) => sum + distance(one, seat), 0);
}

/** Whether a balloon on that seat would cover neither a balloon put by hand nor a place that is pointed at. */
function isFree(seat: Point, targets: readonly Target[], { radius, clear }: PlaceOptions): boolean {
  return targets.every(
    ({ at, hand }) =>
      at.every((one) => distance(one, seat) >= radius + clear) &&
      (hand === null || distance(hand, seat) >= 2 * radius + clear),
  );
}

interface Standing {
  targets: readonly Target[];
  centres: Point[];
  frame: Frame;
  options: PlaceOptions;
}

/** Gives each balloon that is in the way the seat, free or another's, that is least so. False where nothing is gained. */
function exchange(standing: Standing, byRule: readonly number[], free: readonly Point[]): boolean {
  const { centres } = standing;
  let gained = false;
  for (const one of byRule) {
    if (trouble(standing, [one]) === 0) continue;
    const here = centres[one] as Point;
    const holder = new Map(byRule.map((index) => [centres[index] as Point, index]));
    let best = { gain: 0, seat: here };
    for (const seat of nearest(standing.targets[one] as Target, free)) {
      if (seat === here) continue;
      const other = holder.get(seat);
      const both = other === undefined ? [one] : [one, other];
      const before = trouble(standing, both);
      if (before <= best.gain) continue;
      centres[one] = seat;
      if (other !== undefined) centres[other] = here;
      const gain = before - trouble(standing, both);
      if (gain > best.gain) best = { gain, seat };
      centres[one] = here;
      if (other !== undefined) centres[other] = seat;
    }
    if (best.gain === 0) continue;
    const other = holder.get(best.seat);
    centres[one] = best.seat;
    if (other !== undefined) centres[other] = here;
    gained = true;
  }
  return gained;
}

function nearest(target: Target, seats: readonly Point[]): Point[] {
  const far = new Map(seats.map((seat) => [seat, reach(target, seat)]));
  return [...seats].sort((a, b) => (far.get(a) as number) - (far.get(b) as number)).slice(0, triedSeats);
}

/** What is in the way of one or two balloons, or in whose way they are. */
function trouble(standing: Standing, some: readonly number[]): number {
  const all = some.map((one) => troubles(standing, one));
  const between = some.length === 2 ? inTheWay(standing, some[0] as number, some[1] as number) : 0;
  return all.reduce((sum, { shared, own }) => sum + shared + own, 0) - between;
}

function troubles(standing: Standing, one: number): { shared: number; own: number } {
  const { targets, centres, frame } = standing;
  const centre = centres[one] as Point;
  let shared = 0;
  for (let other = 0; other < targets.length; other++)
    if (other !== one) shared += inTheWay(standing, one, other);
  const { at } = targets[one] as Target;
  const own = at.reduce((sum, from) => sum + overDimensions({ from, to: centre }, frame), 0);
  return { shared, own };
}

/** How often a leader runs through the texts and lines of dimensions. */
function overDimensions(leader: Segment, { texts, lines }: Frame): number {
  return (
    texts.filter((box) => meets(leader, box)).length + lines.filter((line) => cross(leader, line)).length
  );
}

/** How often the leaders of two balloons are in each other's way, or in that of their circles and places. */
function inTheWay({ targets, centres, options }: Standing, one: number, other: number): number {
  const [a, b] = [targets[one] as Target, targets[other] as Target];
  const [centreA, centreB] = [centres[one] as Point, centres[other] as Point];
  const apart = options.radius + options.clear;
  let count = 0;
  for (const from of a.at) {
    const mine = { from, to: centreA };
    if (distanceTo(mine, centreB) < apart) count++;
    for (const at of b.at) {
      const their = { from: at, to: centreB };
      if (cross(mine, their)) count += crossing;
      if (isOver(mine, at, options.clear)) count++;
      if (isOver(their, from, options.clear)) count++;
    }
  }
  for (const at of b.at) if (distanceTo({ from: at, to: centreB }, centreA) < apart) count++;
  return count;
}

/** Whether a leader runs over another's place. One that points at the same place, or beside it, cannot help it. */
function isOver(leader: Segment, at: Point, clear: number): boolean {
  return distanceTo(leader, at) < clear && distance(leader.from, at) > 2 * clear;
}
