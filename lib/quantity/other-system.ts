import { convertRational } from "./convert.ts";
import { hardSpace } from "./format.ts";
import { compare, divide, one, type Rational, rational } from "./rational.ts";
import { power, toPlaces, trimZeros } from "./round.ts";
import type { Quantity, ReadOptions, Value } from "./types.ts";
import { unitByCode } from "./units.ts";

/** Whose pints are shown, and with which decimal sign. */
export type SayOptions = Pick<ReadOptions, "region" | "decimal">;

/** Units of volume in the other system, by region; both are said where it is not known. */
const volumes: Record<string, Record<string, string>> = {
  L: { GB: "[pt_br]", US: "[qt_us]" },
  mL: { GB: "[foz_br]", US: "[foz_us]" },
};

/**
 * The quantity in the unit the other system uses: "34.925 mm" for 1-3/8 in. Rounded half to even at the
 * power of ten next below the step written, so that it shows no digit the writer did not give; a fraction of
 * an inch names an exact size and is given to a thousandth of a millimetre. Null where there is no other unit.
 */
export function otherSystem(quantity: Quantity, options: SayOptions = {}): string | null {
  if (quantity.terms) return null;
  if (quantity.dimension === "thread pitch") return pitchInMm(quantity, options);
  const unit = unitByCode(quantity.ucum);
  const byRegion = volumes[quantity.ucum];
  const targets = byRegion
    ? options.region === "GB" || options.region === "US"
      ? [byRegion[options.region]]
      : Object.values(byRegion)
    : [unit?.other];
  const shown = targets.flatMap((target) => (target ? [inUnit(quantity, target)] : []));
  return shown.length > 0 ? withSign(shown.join(" or "), options) : null;
}

/** Digits with the decimal sign of the build. */
const withSign = (text: string, { decimal }: SayOptions): string =>
  decimal === "," ? text.replace(/(\d)\.(\d)/g, "$1,$2") : text;

function pitchInMm(quantity: Quantity, options: SayOptions): string | null {
  const count = convertRational(rational(quantity.value.exact), quantity.ucum, "/[in_i]");
  if (count.n <= 0n || quantity.high) return null;
  const pitch = toPlaces(convertRational(divide(one, count), "[in_i]", "mm"), 3);
  return withSign(`${pitch}${hardSpace}mm${hardSpace}pitch`, options);
}

function inUnit(quantity: Quantity, target: string): string {
  const { value, high } = quantity;
  const symbol = unitByCode(target)?.symbol ?? target;
  const places = placesFor(quantity, target);
  const show = (one: Value) => shown(quantity, one, target, places);
  const [near, far] = [show(value), high ? show(high) : null];
  const dash = near.startsWith("-") || far?.startsWith("-") ? `${hardSpace}to${hardSpace}` : "–";
  const amount = far === null ? near : `${near}${dash}${far}`;
  const words = quantity.qualifier === "about" || quantity.roughly ? `about${hardSpace}` : "";
  const limit =
    quantity.qualifier === "at least" || quantity.qualifier === "at most"
      ? `${quantity.qualifier}${hardSpace}`
      : "";
  const sign = quantity.qualifier === "either way" ? "±" : "";
  return `${limit}${words}${sign}${amount}${tolerance(quantity, target)}${gapBefore(symbol)}${symbol.replaceAll(" ", hardSpace)}${role(quantity)}`;
}

const gapBefore = (symbol: string): string => (symbol === "°" ? "" : hardSpace);
const role = ({ role }: Quantity): string => (role ? `${hardSpace}${role}` : "");

function shown(quantity: Quantity, value: Value, target: string, places: number | null): string {
  const number = convertRational(rational(value.exact), quantity.ucum, target, quantity.role);
  if (number.n === 0n) return "0";
  if (places !== null && value.style.kind === "fraction" && places > 0) return endedDigits(number, places);
  return places === null ? trimZeros(toPlaces(number, 3)) : toPlaces(number, places);
}

/** Digits without closing noughts where they are exact: a quarter turn is 90°. */
function endedDigits(number: Rational, places: number): string {
  const digits = toPlaces(number, places);
  return compare(rational(digits), number) === 0 ? trimZeros(digits) : digits;
}

/** Decimal places that carry no false digit; null for a fraction of an inch, which is exact. */
function placesFor(quantity: Quantity, target: string): number | null {
  const rough = quantity.qualifier === "about" || quantity.roughly === true;
  if (
    quantity.value.style.kind === "fraction" &&
    quantity.dimension === "length" &&
    target === "mm" &&
    !rough
  )
    return null;
  const steps = [quantity.value, ...(quantity.high ? [quantity.high] : []), ...deviations(quantity)].map(
    (one) => rational(one.step),
  );
  const finest = steps.reduce((a, b) => (compare(a, b) <= 0 ? a : b));
  const step = convertRational(
    rough ? roughStep(quantity.value) : finest,
    quantity.ucum,
    target,
    "difference",
  );
  const whole =
    quantity.dimension === "temperature"
      ? Math.round(Math.log10(Number(step.n) / Number(step.d)))
      : power(step);
  if (quantity.dimension === "temperature") return Math.max(0, -whole);
  const size = power(convertRational(rational(quantity.value.exact), quantity.ucum, target, quantity.role));
  return Math.max(-whole, fewestDigits(quantity) - 1 - size);
}

/** Two digits at the least, since one would lose more than it guards; three for volumes and fractions, which are nominal. */
function fewestDigits({ dimension, value, qualifier, roughly }: Quantity): number {
  if (qualifier === "about" || roughly) return 2;
  return dimension === "volume" || value.style.kind === "fraction" ? 3 : 2;
}

/** Of "about 1000" no more is meant than the thousands. */
function roughStep(value: Value): Rational {
  const noughts =
    value.style.kind === "decimal" && value.style.places === 0
      ? (/0*$/.exec(value.exact)?.[0].length ?? 0)
      : 0;
  return noughts > 0 && value.exact !== "0" ? rational(`1${"0".repeat(noughts)}`) : rational(value.step);
}

function deviations({ tolerance, ucum }: Quantity): Value[] {
  return tolerance?.kind === "limits" && tolerance.ucum === ucum ? [tolerance.plus, tolerance.minus] : [];
}

function tolerance({ tolerance }: Quantity, target: string): string {
  if (tolerance?.kind !== "limits") return "";
  const { plus, minus, ucum, even } = tolerance;
  const show = (value: Value) => {
    const step = convertRational(rational(value.step), ucum, target, "difference");
    return toPlaces(
      convertRational(rational(value.exact), ucum, target, "difference"),
      Math.max(0, -power(step)),
    );
  };
  const signed = (digits: string) => (digits.startsWith("-") ? digits : `+${digits}`);
  return even ? `${hardSpace}±${show(plus)}` : `${hardSpace}${signed(show(plus))}/${signed(show(minus))}`;
}
