import { disagrees, isConvertedFrom } from "./agreement.ts";
import { measureAt } from "./measure.ts";
import { ratioAt } from "./ratio.ts";
import { at } from "./text.ts";
import type { Quantity, ReadOptions } from "./types.ts";

/** The same value in other units, written behind it; `fits` are the readings of the first that it leaves. */
export interface ConversionAt {
  quantities: Quantity[];
  fits: Quantity[];
  end: number;
}

const opens = /\s?([([])\s?|\s?(?:=|≈|~|\bor\b|\bi\.e\.|,\s?i\.e\.)\s?|\s?\/\s?/iy;
const closes = /\s?[)\]]/y;

/**
 * The conversion behind a value: "(34.9 mm)", "= 34.9 mm", "/ 34.9 mm". Where either could be several
 * things, the pairs that agree are kept: "2 pints (1.14 l)" are imperial pints.
 */
export function bracketAfter(
  text: string,
  place: number,
  firsts: Quantity[],
  options: ReadOptions,
): ConversionAt | null {
  const open = at(opens, text, place);
  if (!open) return null;
  const inside = insideAt(text, open.end, options);
  if (!inside) return null;
  const close = open.groups[1] ? at(closes, text, inside.end) : { end: inside.end };
  if (!close) return null;
  const pairs = firsts.flatMap((first) =>
    inside.quantities.filter((other) => isConversion(first, other)).map((other) => [first, other] as const),
  );
  if (pairs.length === 0) return null;
  const kept = [
    pairs.filter(([a, b]) => isConvertedFrom(a, b)),
    pairs.filter(([a, b]) => !disagrees(a, b)),
    pairs,
  ].find((some) => some.length > 0);
  if (!kept) return null;
  const [best] = kept;
  const end = close.end;
  if (!best) return null;
  const further = bracketAfter(text, end, [best[0]], options);
  const fits = [...new Set(kept.map(([first]) => first))];
  return { quantities: [best[1], ...(further?.quantities ?? [])], fits, end: further?.end ?? end };
}

function insideAt(
  text: string,
  place: number,
  options: ReadOptions,
): { quantities: Quantity[]; end: number } | null {
  const ratio = ratioAt(text, place, options);
  if (ratio?.reading.kind === "quantity") return { quantities: ratio.reading.quantities, end: ratio.end };
  const measure = measureAt(text, place, options);
  return measure && !measure.loose ? measure : null;
}

/** A conversion has the same dimension and another unit. */
function isConversion(first: Quantity, other: Quantity): boolean {
  if (first.dimension === "thread pitch" && other.dimension === "length") return true;
  return (
    first.dimension === other.dimension &&
    first.dimension !== "number" &&
    first.dimension !== "count" &&
    (first.ucum !== other.ucum || first.terms !== undefined)
  );
}
