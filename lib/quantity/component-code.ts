import { siNumber } from "./convert.ts";
import type { Part } from "./part.ts";
import { decimal, rational, tenTo } from "./rational.ts";
import { at, isAt } from "./text.ts";
import { percentAt } from "./tolerance.ts";
import type { Dimension, Quantity, ReadOptions, Tolerance } from "./types.ts";
import { unitByCode } from "./units.ts";
import { wholeValue, writtenValue } from "./value.ts";

/** Letters that stand for the decimal point of a resistor or capacitor. Source: IEC 60062 (from memory). */
const letters: Record<string, string> = {
  R: "Ohm",
  K: "kOhm",
  k: "kOhm",
  M: "MOhm",
  p: "pF",
  n: "nF",
  u: "uF",
  µ: "uF",
};
/** Letters for the tolerance behind the code, in per cent. Source: IEC 60062 (from memory). */
const allowances: Record<string, number> = { F: 1, G: 2, J: 5, K: 10, M: 20 };

const codeAhead = /\d{0,4}(?:[.,]\d{1,3})?[RKkMpnuµ]/y;
const within = /(\d{1,3})([RKkMpnuµ])(\d{1,3})([FGJKM])?(?![\p{L}\p{N}])/uy;
const leading = /([Rpnuµ])(\d{2,3})([FGJKM])?(?![\p{L}\p{N}.]|\s?(?:mm|in\b|"|thou))/uy;
const behind =
  /(\d{1,4})(?:[.,](\d{1,3}))?(?:([RKkpnuµ])(?!F)([FGJKM])?)(?![\p{L}\p{N}]|\s?(?:rpm|miles|revs?)\b)/uy;

/** "4k7", "R47", "2M2", "470R", "4n7", "100n", with a tolerance behind: a resistance or a capacitance. */
export function componentCodeAt(text: string, place: number, options: ReadOptions): Part | null {
  if (!isAt(codeAhead, text, place)) return null;
  const inside = at(within, text, place);
  if (inside && !isFit(inside.groups, options))
    return part(
      inside.groups[1],
      inside.groups[2],
      inside.groups[3],
      inside.groups[4],
      place,
      inside.end,
      text,
    );
  const first = at(leading, text, place);
  if (first) return part("", first.groups[1], first.groups[2], first.groups[3], place, first.end, text);
  const last = at(behind, text, place);
  return last && part(last.groups[1], last.groups[3], last.groups[2], last.groups[4], place, last.end, text);
}

/** Values of E24. Source: IEC 60063 (from memory). */
const preferred = new Set(
  "10 11 12 13 15 16 18 20 22 24 27 30 33 36 39 43 47 51 56 62 68 75 82 91".split(" "),
);

/** "25k6" is a shaft of 25 mm to ISO 286-1: its figures are no preferred value, and k6 is a class. "4k7" is 4.7 kΩ. */
function isFit([, whole = "", letter = "", grade = ""]: string[], { expect }: ReadOptions): boolean {
  if (
    expect === "resistance" ||
    expect === "capacitance" ||
    !/^[knp]$/.test(letter) ||
    !/^[4-8]$/.test(grade)
  )
    return false;
  return expect === "length" || !preferred.has(`${whole}${grade}`);
}

function part(whole = "", letter = "", places = "", allowance = "", start = 0, end = 0, text = ""): Part {
  const ucum = letters[letter] ?? "Ohm";
  const number = decimal(`${whole || "0"}.${places || "0"}`);
  const style = {
    kind: "decimal" as const,
    places: places.length,
    letter,
    ...(whole === "" ? { bare: true as const } : {}),
  };
  const capacitor = /[pnuµ]/.test(letter);
  const percent = capacitor && allowance === "F" ? undefined : allowances[allowance];
  const written = percent === undefined ? percentAt(text, end) : null;
  const tolerance = written?.tolerance ?? toleranceOf(percent);
  const quantity: Quantity = {
    dimension: unitByCode(ucum)?.dimension ?? ("resistance" satisfies Dimension),
    ucum,
    unit: "",
    value: writtenValue(number, tenTo(-places.length), style),
    qualifier: "exact",
    ...(tolerance ? { tolerance } : {}),
    si: siNumber(number, ucum),
  };
  return { reading: { kind: "quantity", quantities: [quantity] }, start, end: written?.end ?? end };
}

/** So many per cent either way, as a tolerance. */
export function toleranceOf(percent: number | undefined): Tolerance | undefined {
  if (percent === undefined) return undefined;
  const size =
    percent % 1 === 0
      ? wholeValue(percent)
      : writtenValue(rational(`${percent}`), rational("1/100"), { kind: "decimal", places: 2 });
  const minus = { ...size, exact: `-${size.exact}`, number: -size.number };
  return { kind: "percent", plus: size, minus, even: true };
}
