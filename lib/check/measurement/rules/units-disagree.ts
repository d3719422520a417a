import {
  boundsOf,
  type Disagreement,
  disagreement,
  type Quantity,
  type Reading,
  rational,
  toNumber,
} from "#lib/quantity/index.ts";
import { near, sayIn } from "../figures.ts";
import { nominalOf } from "../nominal.ts";
import type { EntryRule, Remark } from "../rule.ts";
import { type Decimal, readOnce } from "../sight.ts";

/** A value written in two units that do not say the same. */
export const unitsDisagree: EntryRule = {
  id: "units-disagree",
  title: "Two units, one value",
  explanation:
    "Where a value is written in two units, one must be the other converted, within what rounding allows. If they disagree, one of them was misread, mistyped or converted wrongly, and a reader cannot tell which.",
  source: "NIST SP 811 (2008), appendix B: conversion factors and rounding",
  check: (sight) =>
    sight.readings
      .filter(({ text, reading }) => mayDisagree(reading) && !/\+.*=/.test(text))
      .flatMap(({ text, reading }) => [
        ...disagrees(text, reading),
        ...farApart(text, reading),
        ...besideEachOther(text, reading),
        ...toleranceDisagrees(text, reading),
        ...gaugeDisagrees(text, sight.decimal),
      ])
      .slice(0, 1),
  examples: [
    { says: "a figure in the wrong unit", entry: { text: "25 lbf ft (22 N·m)", what: "torque" }, finds: 1 },
    { says: "rounded as people round", entry: { text: "25 lbf ft (34 N·m)", what: "torque" }, finds: 0 },
    { says: "No. 30 drill is 0.1285 in", entry: { text: "No. 30 drill (3.8 mm)", what: "drill" }, finds: 1 },
    { says: "No. 30 drill is 3.26 mm", entry: { text: "No. 30 drill (3.3 mm)", what: "drill" }, finds: 0 },
    {
      says: "tube of 1-3/8 in and of 1-1/2 in outside diameter are both sold: 34.9 and 38.1 mm",
      entry: { text: "1-3/8 in (38.1 mm)", what: "tube outside diameter" },
      finds: 1,
    },
    {
      says: "one and a half turns are 540 degrees",
      entry: { text: "1.5 turns (540°)", what: "screw, out from its stop" },
      finds: 0,
    },
    { says: "and not 360", entry: { text: "1.5 turns (360°)", what: "screw, out from its stop" }, finds: 1 },
  ],
};

/** Where there are two figures at all. */
const mayDisagree = (reading: Reading): boolean =>
  reading.kind === "list" ||
  reading.kind === "question" ||
  (reading.kind === "quantity" && reading.quantities.length > 1);

/** Two beats of a balance are one swing to and fro: 18,000 beats an hour are 5 beats a second, and 2.5 Hz. */
const inSwings = (text: string, reading: Reading): boolean =>
  /\b(?:bph|vph|a\/h|beats|vibrations|alternations)\b.*\bhz\b/i.test(text) &&
  reading.kind === "quantity" &&
  near(reading.quantities[0]?.si ?? 0, 2 * (reading.quantities[1]?.si ?? 0), 0.001);

/** Sums have a rule of their own. */
function disagrees(text: string, reading: Reading): Remark[] {
  if (inSwings(text, reading)) return [];
  const wrong = withoutSums(reading)
    .map(inEveryMeaning)
    .find((one): one is Disagreement => one !== null);
  if (!wrong) return [];
  return [
    {
      severity: "wrong",
      found: `“${text}”: the second figure is ${wrong.found}.`,
      expected: `The first one is ${wrong.expected}.`,
      meant: `${wrong.expected}?`,
    },
  ];
}

/** Far apart, whatever was rounded: 0.8 mm is no sixteenth of an inch. */
function farApart(text: string, reading: Reading): Remark[] {
  if (reading.kind !== "quantity" || disagreementOnce(reading) || inSwings(text, reading)) return [];
  const [first, second] = reading.quantities;
  if (!first || !second || first.dimension !== second.dimension || first.terms || second.terms) return [];
  if (first.dimension === "temperature" || first.high || second.high || !(first.si > 0)) return [];
  const ratio = second.si / first.si;
  if (ratio > 0.75 && ratio < 1.35) return [];
  const expected = sayIn(first.si, second, 3);
  return [
    {
      severity: "wrong",
      found: `“${text}”: the second figure is ${Number(ratio.toPrecision(2))} times the first.`,
      expected: `The first one is ${expected}.`,
      meant: `${expected}?`,
    },
  ];
}

/** "1.75 in, 44.4 mm": two systems side by side, near each other and yet not the same. */
function besideEachOther(text: string, reading: Reading): Remark[] {
  if (reading.kind !== "list" || reading.parts.length !== 2) return [];
  const inProse = saidAgain(reading.parts[1]);
  const [first, second] = reading.parts.map((part) =>
    part.kind === "quantity" && part.quantities.length === 1 && (inProse || !part.words)
      ? part.quantities[0]
      : undefined,
  );
  if (!first || !second || first.dimension !== second.dimension || first.high || second.high) return [];
  if (first.dimension === "temperature" || first.ucum === second.ucum) return [];
  if (!inProse && isInch(first) === isInch(second)) return [];
  const step = Math.abs(toNumber(rational(second.value.step)) * (second.si / second.value.number));
  if (near(first.si, second.si, 0.012) || Math.abs(first.si - second.si) <= step * 0.51) return [];
  if (!inProse && !near(first.si, second.si, 0.3)) return [];
  const expected = sayIn(first.si, second, 3);
  return [
    {
      severity: "doubtful",
      found: `“${text}”: the second figure is not the first in another unit.`,
      expected: `The first one is ${expected}.`,
      meant: `${expected}?`,
    },
  ];
}

/** "14-1/2 lb, so 5.9 kg", "two pints, which my jug shows as 940 ml": the same again, in a sentence. */
const saidAgain = (part?: Reading): boolean =>
  part !== undefined &&
  "words" in part &&
  /^(?:,? ?(?:and )?(?:so|that is|that's|which is|which makes?|i\.?e\.?|or in (?:metric|english|inches|new money)|equal(?:s| to)|call it|makes it|meaning)|which (?:\w+ ){1,3}(?:shows?|reads?|gives?|calls?|says?)(?: as| for)?)$/.test(
    `${part.words ?? ""}`.trim().toLowerCase(),
  );

const isInch = ({ ucum }: Quantity): boolean =>
  ucum.includes("_i]") || ucum.includes("_av]") || ucum === "[psi]";

/** "0.5 ± 0.001 in (12.70 ± 0.25 mm)": the tolerances must agree as the sizes do. */
function toleranceDisagrees(text: string, reading: Reading): Remark[] {
  if (reading.kind !== "quantity") return [];
  const [first, second] = reading.quantities.map(widthOf);
  if (!first || !second || near(first, second, 0.25)) return [];
  const ratio = second / first;
  if (ratio > 0.6 && ratio < 1.67) return [];
  return [
    {
      severity: "wrong",
      found: `“${text}”: the second tolerance is ${Number(ratio.toPrecision(2))} times the first.`,
      expected: "One tolerance in two units.",
    },
  ];
}

/** Width of a tolerance in SI units; null where none is given in figures. */
function widthOf(quantity: Quantity): number | null {
  if (quantity.tolerance?.kind !== "limits") return null;
  const { low, high } = boundsOf(quantity);
  return low !== null && high !== null && high > low ? high - low : null;
}

const compared = new WeakMap<Reading, Disagreement | "none">();

/** The readings of a text are kept, and what they contradict with them. */
function disagreementOnce(reading: Reading): Disagreement | null {
  const known = compared.get(reading) ?? disagreement(reading) ?? "none";
  compared.set(reading, known);
  return known === "none" ? null : known;
}

/** Of a question, only what disagrees whatever was meant. */
function inEveryMeaning(reading: Reading): Disagreement | null {
  if (reading.kind !== "question") return disagreementOnce(reading);
  const meanings = reading.candidates.map(disagreementOnce);
  return meanings.every((one) => one !== null) ? (meanings[0] ?? null) : null;
}

const withoutSums = (reading: Reading): Reading[] =>
  reading.kind === "sum" ? [] : reading.kind === "list" ? reading.parts.flatMap(withoutSums) : [reading];

/** "7/16 in (0.4375 in)": one value twice in one unit. */
function sameUnit(
  text: string,
  one: Reading & { kind: "quantity" },
  other: Reading & { kind: "quantity" },
): Remark[] {
  const [[a], [b]] = [one.quantities, other.quantities];
  if (
    !a ||
    !b ||
    a.dimension !== b.dimension ||
    a.ucum !== b.ucum ||
    a.high ||
    b.high ||
    a.tolerance ||
    b.tolerance
  )
    return [];
  const room = toNumber(rational(b.value.step)) * 0.51;
  if (near(a.value.number, b.value.number, 0.01) || Math.abs(a.value.number - b.value.number) <= room)
    return [];
  const expected = sayIn(a.si, b, 4);
  return [
    {
      severity: "wrong",
      found: `“${text}”: the second figure is not the first.`,
      expected,
      meant: `${expected}?`,
    },
  ];
}

/** "No. 7 (5.1 mm)", "10 SWG (3.25 mm)": a name for a size, and the size. */
function gaugeDisagrees(text: string, decimal: Decimal): Remark[] {
  const bracket = /^([^()]{1,60})\((?:=\s*)?([^()]{1,40})\)\s*$/.exec(text);
  if (!bracket) return [];
  const [name, size] = [readOnce(bracket[1] ?? "", decimal), readOnce(bracket[2] ?? "", decimal)];
  if (name.kind === "quantity" && size.kind === "quantity" && !name.words && !size.words)
    return sameUnit(text, name, size);
  if (name.kind !== "designation" || size.kind !== "quantity") return [];
  const [written] = size.quantities;
  const mm = nominalOf(name.designation);
  if (written?.dimension !== "length" || mm === null) return [];
  const found = written.si * 1000;
  const step = toNumber(rational(written.value.step)) * (written.ucum === "mm" ? 1 : 25.4);
  if (near(found, mm, 0.012) || Math.abs(found - mm) <= step * 0.51) return [];
  const expected = `${Number(mm.toPrecision(4))} mm`;
  return [
    {
      severity: "wrong",
      found: `“${text}”: ${bracket[2]}.`,
      expected: `${name.designation.name} is ${expected}.`,
      meant: `${expected}?`,
    },
  ];
}
