import { siNumber } from "./convert.ts";
import type { Part } from "./part.ts";
import { add, decimal, multiply, type Rational, rational, tenTo } from "./rational.ts";
import { at, isAt } from "./text.ts";
import type { LargerPart, Quantity, ReadOptions } from "./types.ts";
import { writtenValue } from "./value.ts";

const timeAhead = /P[\dT]|\d{1,4}[:h]/y;
const iso = /P(?:(\d{1,6})D)?(?:T(?:(\d{1,6})H)?(?:(\d{1,6})M)?(?:(\d{1,6}(?:\.\d{1,9})?)S)?)?(?![\w.])/y;
const clock = /(\d{1,4}):([0-5]\d):([0-5]\d(?:\.\d{1,6})?)(?![\d:])/y;
const short = /(\d{1,4}):([0-5]\d)\s?(h|hrs?|hours?|min|mins|minutes)(?![\p{L}\p{N}])/iuy;
const glued = /(\d{1,3})h([0-5]\d)(?![\p{L}\p{N}])/uy;

/** Durations that are not a number and a unit: "PT1H30M", "1:30:00", "1:30 h", "1h30". */
export function timeAt(text: string, place: number, _options: ReadOptions): Part | null {
  if (!isAt(timeAhead, text, place)) return null;
  const period = at(iso, text, place);
  if (period && period.end > place + 2 && !/[PT]$/.test(period.groups[0])) {
    const [, d, h, min, s] = period.groups;
    return part(place, period.end, [d, "d"], [h, "h"], [min, "min"], [s, "s"]);
  }
  const long = at(clock, text, place);
  if (long)
    return part(place, long.end, [long.groups[1], "h"], [long.groups[2], "min"], [long.groups[3], "s"]);
  const two = at(short, text, place) ?? at(glued, text, place);
  if (!two) return null;
  const minutes = /^m/i.test(two.groups[3] ?? "h");
  return part(place, two.end, [two.groups[1], minutes ? "min" : "h"], [two.groups[2], minutes ? "s" : "min"]);
}

const seconds: Record<string, number> = { d: 86_400, h: 3600, min: 60, s: 1 };

function part(start: number, end: number, ...counts: [string | undefined, string][]): Part {
  const given = counts.filter((one): one is [string, string] => one[0] !== undefined);
  const [count = "0", unit = "s"] = given.at(-1) ?? [];
  const larger: LargerPart[] = given
    .slice(0, -1)
    .map(([n, of]) => ({ count: `${Number(n)}`, ucum: of, unit: of }));
  const scale = (of: string): Rational => rational(`${seconds[of]}/${seconds[unit]}`);
  const value = larger.reduce(
    (sum, one) => add(sum, multiply(rational(one.count), scale(one.ucum))),
    decimal(count),
  );
  const places = count.split(".")[1]?.length ?? 0;
  const quantity: Quantity = {
    dimension: "time",
    ucum: unit,
    unit,
    value: writtenValue(value, tenTo(-places), { kind: "decimal", places }),
    qualifier: "exact",
    ...(larger.length > 0 ? { larger } : {}),
    si: siNumber(value, unit),
  };
  return { reading: { kind: "quantity", quantities: [quantity] }, start, end };
}
