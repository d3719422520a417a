import { convert, quantitiesOf, rational, read, toDigits, toNumber, toPlaces } from "#lib/quantity/index.ts";
import { againstMaximum } from "#lib/reference/index.ts";
import { after, first } from "../read/figures.ts";
import type { Adapter, Answer } from "../row.ts";

const placesOf = (step: string): number => step.split(".")[1]?.length ?? 0;

function againstLimit(text: string): Answer {
  const limit = `${/max ([\d.]+)/.exec(text)?.[1]}`;
  const observed = after(text, "observed") ?? Number.NaN;
  const rounded = toPlaces(rational(`${observed}`), placesOf(limit));
  const { roundingMethod, absoluteMethod } = againstMaximum(observed, Number(limit), Number(rounded));
  const verdict = (conforms: boolean): string => (conforms ? "conforms" : "does not conform");
  return {
    rounding_method: `${verdict(roundingMethod)} (${rounded})`,
    absolute_method: verdict(absoluteMethod),
  };
}

function digitsOf(text: string): Answer {
  const written = first(quantitiesOf(read(/of (\S+)$/.exec(text)?.[1] ?? "")), "a number").value;
  const places = written.style.kind === "decimal" ? written.style.places : 0;
  return { digits: toPlaces(rational(written.exact), places).replace(/^[-0.]+|\./g, "").length };
}

/** "36 ft in metres, exact then to 3 digits" */
function convertedThenRounded(text: string): Answer {
  const length = first(quantitiesOf(read(text.split(" in metres")[0] ?? "")), "a length");
  const metres = rational(convert(length.value.exact, length.ucum, "m"));
  const exact = toNumber(metres);
  return { exact_m: `${exact}`, rounded_m: toDigits(metres, Number(/to (\d+) digits/.exec(text)?.[1])) };
}

export const adapter: Adapter = ({ input }) => {
  const { text } = input;
  if (/^limit max/.test(text)) return againstLimit(text);
  if (/^significant digits/.test(text)) return digitsOf(text);
  if (/in metres/.test(text)) return convertedThenRounded(text);
  const [written = "", target = ""] = text.split(" to ");
  if (/whole mm/.test(text)) {
    const length = first(quantitiesOf(read(written)), "a length");
    const millimetres = rational(convert(length.value.exact, length.ucum, "mm"));
    const even = Number(toPlaces(millimetres, 0));
    return { mm: even, half_even_mm: even, half_up_mm: Math.floor(toNumber(millimetres) + 0.5) };
  }
  const value = rational(written);
  const digits = /^(\d+) digits/.exec(target)?.[1];
  const step = target.split(" ")[0] ?? "";
  const rounded = digits ? toDigits(value, Number(digits)) : toPlaces(value, placesOf(step));
  const staged = toPlaces(rational(toPlaces(value, placesOf(step) + 1)), placesOf(step));
  return { value: rounded, half_even: rounded, in_stages: `${staged} in stages would be wrong` };
};
