import { convertRational } from "./convert.ts";
import {
  absolute,
  compare,
  divide,
  multiply,
  one,
  type Rational,
  rational,
  subtract,
  tenTo,
} from "./rational.ts";
import type { Quantity, Value } from "./types.ts";

/** Share by which a figure that ends in noughts may have been rounded to them: 100 psi is 700 kPa, near enough. */
const noughtsShare = rational("0.02");
/** Share by which the first figure may have been rounded from the second. */
const backwardShare = rational("0.05");
/** Share within which a figure called "about" is taken. */
const aboutShare = rational("0.1");
/** Share below which a digit cut off instead of rounded is let pass. */
const cutShare = rational("0.002");

/**
 * True where two figures for one value disagree beyond the rounding of either as written. The first, converted,
 * must round to the second at the second's last place (a tie either way), or the second to the first at the
 * first's; a fraction of an inch is exact, so that it is never the rounded one when it stands first.
 */
export function disagrees(first: Quantity, second: Quantity): boolean {
  return ends(first, second).some(
    ([a, b]) => !agreesForward(first, a, second, b) && !agreesBackward(first, a, second, b),
  );
}

/** True where the second is the first converted, and not the other way about. */
export function isConvertedFrom(first: Quantity, second: Quantity): boolean {
  return ends(first, second).every(([a, b]) => agreesForward(first, a, second, b));
}

function ends(first: Quantity, second: Quantity): [Value, Value][] {
  const pairs: [Value, Value][] = [[first.value, second.value]];
  if (first.high && second.high) pairs.push([first.high, second.high]);
  return pairs;
}

function agreesForward(first: Quantity, a: Value, second: Quantity, b: Value): boolean {
  const forward = converted(first, a, second);
  if (forward === null) return true;
  if (first.terms || second.terms) return ratiosAgree(rational(a.exact), first, rational(b.exact), second);
  if (isRough(first) || isRough(second))
    return isNear(forward, rational(b.exact), aboutShare) || roundsTo(forward, b);
  return roundsTo(forward, b) || isInside(first, second, b);
}

const isRough = (quantity: Quantity): boolean => quantity.qualifier === "about" || quantity.roughly === true;

/** A single figure agrees with a range that holds it. */
function isInside(first: Quantity, second: Quantity, b: Value): boolean {
  const [low, high] = [
    converted(first, first.value, second),
    first.high ? converted(first, first.high, second) : null,
  ];
  if (second.high || low === null || high === null) return false;
  const [least, most] = compare(low, high) <= 0 ? [low, high] : [high, low];
  return compare(least, rational(b.exact)) <= 0 && compare(rational(b.exact), most) <= 0;
}

function agreesBackward(first: Quantity, a: Value, second: Quantity, b: Value): boolean {
  const backward = a.style.kind === "fraction" || first.terms ? null : converted(second, b, first);
  return backward !== null && roundsTo(backward, a) && isNear(backward, rational(a.exact), backwardShare);
}

function isNear(value: Rational, other: Rational, share: Rational): boolean {
  return compare(absolute(subtract(value, other)), multiply(absolute(value), share)) <= 0;
}

/** What the value of one quantity should read in the unit of the other; null where no rule joins them. */
export function converted(from: Quantity, value: Value, to: Quantity): Rational | null {
  if (from.dimension === "thread pitch" && to.dimension === "length") return pitchOf(from, value, to);
  if (from.dimension !== to.dimension) return null;
  const role = from.role === "difference" || to.role === "difference" ? "difference" : undefined;
  return convertRational(rational(value.exact), from.ucum, to.ucum, role);
}

/** So many threads an inch, as a pitch. */
function pitchOf(from: Quantity, value: Value, to: Quantity): Rational | null {
  const perMetre = convertRational(rational(value.exact), from.ucum, "/[in_i]");
  return perMetre.n === 0n ? null : convertRational(divide(one, perMetre), "[in_i]", to.ucum);
}

function roundsTo(value: Rational, written: Value): boolean {
  const gap = absolute(subtract(value, rational(written.exact)));
  const step = stepOf(written);
  if (compare(multiply(gap, rational("2")), step) <= 0) return true;
  const share = value.n === 0n ? null : divide(gap, absolute(value));
  if (share === null) return false;
  if (compare(gap, step) < 0 && compare(share, cutShare) <= 0) return true;
  const noughts = endingNoughts(written);
  return compare(multiply(gap, rational("2")), noughts) <= 0 && compare(share, noughtsShare) <= 0;
}

/** Fractions are rounded to sixteenths at the coarsest: nobody calls 54 mm two and a quarter inches. */
function stepOf(written: Value): Rational {
  const step = rational(written.step);
  const coarsest = rational("1/16");
  return written.style.kind === "fraction" && compare(step, coarsest) > 0 ? coarsest : step;
}

function endingNoughts(written: Value): Rational {
  const noughts = /^-?\d*?(0+)$/.exec(written.exact)?.[1]?.length ?? 0;
  return written.style.kind === "decimal" && written.style.places === 0 ? tenTo(noughts) : rational("0");
}

/** Ratios agree within two parts in a hundred, whichever way round they are written. */
function ratiosAgree(a: Rational, first: Quantity, b: Rational, second: Quantity): boolean {
  const [x, y] = [convertRational(a, first.ucum, "1"), convertRational(b, second.ucum, "1")];
  if (x.n === 0n || y.n === 0n) return x.n === y.n;
  return [y, divide(one, y)].some((other) => isNear(x, other, noughtsShare));
}
