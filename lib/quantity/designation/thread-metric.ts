import { numberAt } from "../numbers.ts";
import type { Part } from "../part.ts";
import { compare, exact, multiply, type Rational, rational } from "../rational.ts";
import { at } from "../text.ts";
import type { ReadOptions, ThreadDesignation } from "../types.ts";
import { threadPart } from "./part.ts";

const size = /(M|m|Tr|TR)(\s?)(?=\d)/y;
const join = /\s?[x×X*-]\s?|\s(?:by|x)\s/iy;
const fitClass = /\s?-\s?([3-9][a-hA-H](?:\s?[3-9]?[a-hA-H])?)(?![\p{L}\p{N}])/uy;
const mm = /\s?mm\b/iy;

/** "M6", "M6x0.75", "M6 x 20", "M10-1.5", "M8x1x30-6g", "Tr20x4". Source of the form: ISO 261, ISO 965-1, ISO 2904. */
export function metricThreadAt(text: string, place: number, options: ReadOptions): Part | null {
  const letter = at(size, text, place);
  if (!letter || (letter.groups[1] === "m" && letter.groups[2] !== "")) return null;
  const nominal = figureAt(text, letter.end, options);
  if (
    !nominal ||
    nominal.value.d > 10n ||
    compare(nominal.value, rational("1")) < 0 ||
    compare(nominal.value, rational("300")) > 0
  )
    return null;
  if (
    /^(?:\s?[/:]|[\p{L}](?![xX×]?\d))/u.test(text.slice(nominal.end, nominal.end + 2)) &&
    !at(join, text, nominal.end)
  )
    return null;
  const trapezoid = /^t/i.test(letter.groups[1] ?? "");
  return withPitch(text, place, nominal, trapezoid, options);
}

function withPitch(
  text: string,
  start: number,
  nominal: Figure,
  trapezoid: boolean,
  options: ReadOptions,
): Part {
  const sign = at(join, text, nominal.end);
  const second = sign && figureAt(text, sign.end, options);
  const pitch =
    second && isPitch(second.value, nominal.value, trapezoid) && !at(fitClass, text, nominal.end)
      ? second
      : null;
  const end = pitch ? (at(mm, text, pitch.end)?.end ?? pitch.end) : nominal.end;
  const letter = trapezoid ? "Tr" : "M";
  const diameter = exact(nominal.value);
  const shown = decimalText(nominal.value);
  const thread: ThreadDesignation = {
    type: "thread",
    name: `${letter}${shown}${pitch ? `x${decimalText(pitch.value)}` : ""}`,
    system: trapezoid ? "trapezoidal" : "ISO metric",
    size: shown,
    diameter,
    ucum: "mm",
    ...(pitch ? { pitch: exact(pitch.value) } : {}),
  };
  const fit = at(fitClass, text, end);
  if (fit) thread.fitClass = fit.groups[1] ?? "";
  return threadPart(thread, start, fit?.end ?? end, text, options);
}

interface Figure {
  value: Rational;
  end: number;
}

function figureAt(text: string, place: number, options: ReadOptions): Figure | null {
  const found = numberAt(text, place, options);
  const value = found?.values.at(-1);
  return found && value ? { value: rational(value.exact), end: found.end } : null;
}

/** A second figure is a pitch while it is below two fifths of the diameter, and a length above. No thread is coarser. */
function isPitch(second: Rational, diameter: Rational, trapezoid: boolean): boolean {
  const coarsest = multiply(diameter, rational(trapezoid ? "1/2" : "2/5"));
  return (
    second.n > 0n && compare(second, coarsest) <= 0 && compare(second, rational(trapezoid ? "40" : "8")) <= 0
  );
}

const decimalText = (value: Rational): string => `${Number(value.n) / Number(value.d)}`;
