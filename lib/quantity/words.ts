import type { Part } from "./part.ts";
import { withUnit } from "./product.ts";
import { singleSpaced } from "./text.ts";
import type { Reading } from "./types.ts";

/** Joins the parts of a text and the words between them to one reading. */
export function together(text: string, parts: Part[]): Reading {
  const words = parts.map(() => [] as string[]);
  let from = 0;
  for (const [i, part] of parts.entries()) {
    share(text.slice(from, part.start), words[i - 1], words[i] ?? []);
    from = part.end;
  }
  share(text.slice(from), words.at(-1), undefined);
  const filled = withNextUnit(text, parts);
  const readings = filled.map((part, i) => withWords(part.reading, (words[i] ?? []).join(" ")));
  const [only] = readings;
  return readings.length === 1 && only ? only : { kind: "list", parts: readings };
}

/** In "12, 15 thou" and "110/240 V" the first figure has the unit of the second, if it is of its size. */
export function withNextUnit(text: string, parts: Part[]): Part[] {
  const filled = [...parts];
  for (let i = filled.length - 2; i >= 0; i--) {
    const [part, next] = [filled[i], filled[i + 1]];
    if (!part || !next || !/^\s?(?:[,/&]|and)\s?$/.test(text.slice(part.end, next.start))) continue;
    filled[i] = { ...part, reading: adopt(part.reading, next.reading) };
  }
  return filled;
}

function adopt(bare: Reading, next: Reading): Reading {
  if (bare.kind !== "bare" || next.kind !== "quantity") return bare;
  const [[one], [model]] = [bare.quantities, next.quantities];
  if (!one || !model || model.ucum === "1" || model.dimension === "count") return bare;
  const share = one.value.number / model.value.number;
  return share > 0.1 && share < 10 ? { kind: "quantity", quantities: [withUnit(one, model)] } : bare;
}

const comma = /[,;]/;

/** Words up to a comma go with what stands before them; those after it with what follows. */
function share(between: string, before: string[] | undefined, after: string[] | undefined): void {
  if (between === "") return;
  const cut = between.search(comma);
  const [head, tail] = cut < 0 ? [between, ""] : [between.slice(0, cut), between.slice(cut + 1)];
  if (before) push(before, head);
  else if (after) push(after, head);
  push(after ?? before ?? [], tail);
}

function push(words: string[], text: string): void {
  if (text === "") return;
  const clean = singleSpaced(text).replace(/^[\s,;.:()[\]{}=-]+|[\s,;:()[\]{}=-]+$/g, "");
  if (clean !== "") words.push(clean);
}

function withWords(reading: Reading, words: string): Reading {
  if (words === "" || reading.kind === "empty" || reading.kind === "unread" || reading.kind === "list")
    return reading;
  return { ...reading, words };
}
