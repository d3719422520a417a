import { quantitiesOf, read } from "#lib/quantity/index.ts";
import { number, numberOrNone, sheet, source, words } from "../sheet.ts";
import type { Source } from "../source.ts";

/** The colour code of IEC 60062: digit, power of ten, tolerance in per cent. */
export const colourRows = sheet(
  { colour: words, digit: numberOrNone, power: number, tolerance: numberOrNone, source },
  `
  colour digit power tolerance source
  black  0     0     -         iec60062
  brown  1     1     1         iec60062
  red    2     2     2         iec60062
  orange 3     3     -         iec60062
  yellow 4     4     -         iec60062
  green  5     5     0.5       iec60062
  blue   6     6     0.25      iec60062
  violet 7     7     0.1       iec60062
  grey   8     8     0.05      iec60062
  white  9     9     -         iec60062
  gold   -     -1    5         iec60062
  silver -     -2    10        iec60062
  `,
);

/** A resistor by its bands. */
export interface BandedResistor {
  ohms: number;
  /** Per cent; 20 where there is no fourth band. */
  tolerance: number;
  /** Least and most in ohms. */
  least: number;
  most: number;
  source: Source;
}

/** Reads colour bands ("brown black red gold") through the text reader; nothing when the text is not bands. */
export function colourBands(text: string): BandedResistor | undefined {
  if (!colourRows.some(({ colour }) => text.toLowerCase().includes(colour))) return undefined;
  const [found] = quantitiesOf(read(text)).filter(({ dimension }) => dimension === "resistance");
  const [row] = colourRows;
  if (!found || !row) return undefined;
  const tolerance = found.tolerance?.kind === "percent" ? found.tolerance.plus.number : 20;
  const edge = (found.si * tolerance) / 100;
  return {
    ohms: found.si,
    tolerance,
    least: found.si - edge,
    most: found.si + edge,
    source: row.source,
  };
}

/** The bands that a resistance would carry: three or four for two digits, with the tolerance's colour where given. */
export function bandsFor(ohms: number, tolerance?: number): string[] | undefined {
  const power = Math.floor(Math.log10(ohms)) - 1;
  const digits = Math.round(ohms / 10 ** power);
  const colour = (find: (row: (typeof colourRows)[number]) => boolean): string | undefined =>
    colourRows.find(find)?.colour;
  const bands = [
    colour(({ digit }) => digit === Math.floor(digits / 10)),
    colour(({ digit }) => digit === digits % 10),
    colour((row) => row.power === power),
    ...(tolerance === undefined ? [] : [colour((row) => row.tolerance === tolerance)]),
  ];
  const exact = Math.abs(digits * 10 ** power - ohms) < 1e-9 * ohms;
  return exact && bands.every((band) => band !== undefined) ? (bands as string[]) : undefined;
}
