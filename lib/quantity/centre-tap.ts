import { measureAt } from "./measure.ts";
import type { Part } from "./part.ts";
import { at } from "./text.ts";
import type { Reading, ReadOptions } from "./types.ts";

const halves = /(\d{1,4}(?:[.,]\d{1,2})?)\s?-\s?0\s?-\s?(?=\1\s?(?:V|volt))/y;

/** "350-0-350 V": a winding with a tap in its middle, so many volts to each side of it. */
export function centreTapAt(text: string, place: number, options: ReadOptions): Part | null {
  const first = at(halves, text, place);
  const half = first && measureAt(text, first.end, options);
  const [side] = half?.quantities ?? [];
  if (!half || !side) return null;
  const reading: Reading = { kind: "quantity", quantities: [side] };
  return { reading: { kind: "list", parts: [reading, reading] }, start: place, end: half.end };
}
