import { toleranceOf } from "./component-code.ts";
import { siNumber } from "./convert.ts";
import type { Part } from "./part.ts";
import { multiply, over, type Rational, tenTo, toNumber } from "./rational.ts";
import { at } from "./text.ts";
import type { Quantity } from "./types.ts";
import { unitByCode } from "./units.ts";
import { writtenValue } from "./value.ts";

/** Digit, power of ten and tolerance of each colour. Source: IEC 60062 (from memory). */
const colours: Record<string, { digit?: number; tens: number; percent?: number }> = {
  black: { digit: 0, tens: 0 },
  brown: { digit: 1, tens: 1, percent: 1 },
  red: { digit: 2, tens: 2, percent: 2 },
  orange: { digit: 3, tens: 3 },
  yellow: { digit: 4, tens: 4 },
  green: { digit: 5, tens: 5, percent: 0.5 },
  blue: { digit: 6, tens: 6, percent: 0.25 },
  violet: { digit: 7, tens: 7, percent: 0.1 },
  grey: { digit: 8, tens: 8 },
  white: { digit: 9, tens: 9 },
  gold: { tens: -1, percent: 5 },
  silver: { tens: -2, percent: 10 },
};
const same: Record<string, string> = { purple: "violet", gray: "grey" };

const colour =
  /(black|brown|red|orange|yellow|green|blue|violet|purple|grey|gray|white|gold|silver)(?![\p{L}\p{N}])/iuy;
const between = /\s?[,/-]\s?(?:and\s)?|\s(?:and\s)?/iy;

/** "bands brown, black, orange": the resistance that three to six colours stand for, or null. */
export function colourBandsAt(text: string, place: number): Part | null {
  const names: string[] = [];
  let end = place;
  let next = at(colour, text, place);
  while (next && names.length < 7) {
    const name = (next.groups[1] ?? "").toLowerCase();
    names.push(same[name] ?? name);
    end = next.end;
    next = at(colour, text, at(between, text, end)?.end ?? end);
  }
  const quantity = names.length >= 3 && names.length <= 6 && areBands(text, names) ? resistance(names) : null;
  return quantity && { reading: { kind: "quantity", quantities: [quantity] }, start: place, end };
}

/** Colours are bands where the text says so, holds nothing else, or ends them with gold or silver. */
function areBands(text: string, names: string[]): boolean {
  const metal = names.at(-1) === "gold" || names.at(-1) === "silver";
  const onlyColours =
    text
      .replace(/[\s,/-]+/g, " ")
      .trim()
      .split(" ").length <=
    names.length + 1;
  return metal || onlyColours || /\bband|\bcolou?r code|\bresistor/i.test(text);
}

function resistance(names: string[]): Quantity | null {
  const bands = names.map((name) => colours[name] ?? { tens: 0 });
  const count = names.length >= 5 ? 3 : 2;
  const digits = bands.slice(0, count).map((band) => band.digit);
  if (digits.some((digit) => digit === undefined) || bands[count] === undefined) return null;
  const number = multiply(over(BigInt(digits.join("")), 1n), tenTo(bands[count].tens));
  return quantityOf(number, bands[count + 1]?.percent);
}

function quantityOf(ohms: Rational, percent: number | undefined): Quantity {
  const size = toNumber(ohms);
  const ucum = size >= 1e6 ? "MOhm" : size >= 1000 ? "kOhm" : "Ohm";
  const scale = { Ohm: 0, kOhm: -3, MOhm: -6 }[ucum];
  const value = multiply(ohms, tenTo(scale));
  const places = value.d === 1n ? 0 : value.d <= 10n ? 1 : 2;
  const tolerance = toleranceOf(percent);
  return {
    dimension: "resistance",
    ucum,
    unit: unitByCode(ucum)?.symbol ?? "",
    value: writtenValue(value, tenTo(-places), { kind: "decimal", places }),
    qualifier: "exact",
    ...(tolerance ? { tolerance } : {}),
    si: siNumber(value, ucum),
  };
}
