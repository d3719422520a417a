import { allThreads, numberedDiameter } from "#lib/reference/index.ts";
import { fineness, metricSizes, screwWords, threadNames } from "../lexicon/threads.ts";
import type { Amount, Memory } from "./amount.ts";
import { numberAt } from "./number.ts";
import type { Spoken } from "./spoken.ts";
import type { Token } from "./stream.ts";

const inch = 25.4;
const pairs = new Set(
  allThreads.filter((row) => row.tpi !== undefined).map((row) => `${Math.round(row.major * 50)}/${row.tpi}`),
);
const baMajor = new Map(
  allThreads.filter((row) => row.system === "BA").map((row) => [Number(row.size), row.major] as const),
);

/** A thread that begins at a place, and the length of its screw where that is said with it; none elsewhere. */
export function threadAt(memory: Memory, place: number, limit: number): Amount[] {
  const metric = metricAt(memory, place, limit);
  if (metric.length > 0) return metric;
  const { tokens } = memory;
  const size = sizeAt(tokens, place, limit);
  if (!size) return [];
  const thread = baAt(tokens, size, limit) ?? namedAt(tokens, size, limit) ?? countedAt(memory, size, limit);
  return thread ? withLength(tokens, thread, limit) : [];
}

interface Size {
  number: Spoken;
  /** Behind the number, and an inch if one is said. */
  to: number;
}

function sizeAt(tokens: readonly Token[], place: number, limit: number): Size | null {
  const number = numberAt(tokens, place, limit);
  if (!number || number.value <= 0) return null;
  const behind = tokens[number.to]?.word;
  const said = (behind === "inch" || behind === "in") && number.to < limit;
  return { number, to: said ? number.to + 1 : number.to };
}

/** "M6", "M six by one", "M5 by 20". */
function metricAt(memory: Memory, place: number, limit: number): Amount[] {
  const { tokens } = memory;
  const word = tokens[place]?.word ?? "";
  const written = /^m(\d{1,2}(?:\.\d)?)(?:x(\d{1,2}(?:\.\d{1,2})?))?$/.exec(word);
  const spoken = word === "m" || word === "em" ? numberAt(tokens, place + 1, limit) : null;
  const size = written ? Number(written[1]) : (spoken?.value ?? 0);
  const to = written ? place + 1 : (spoken?.to ?? place);
  if (!metricSizes.has(size) || to > limit || (word === "em" && !hasBy(tokens, to))) return [];
  const thread: Amount = {
    ...made(place, to, size, `${size}`, "mm"),
    designation: written?.[2] ? `M${size}x${written[2]}` : `M${size}`,
  };
  const next = hasBy(tokens, to) ? numberAt(tokens, to + 1, limit) : null;
  if (!next || next.value <= 0) return [thread];
  if (next.value <= size / 3) return [{ ...thread, to: next.to, designation: `M${size}x${next.typed}` }];
  const length = made(next.from, behindMm(tokens, next.to, limit), next.value, next.typed, "mm");
  return next.value > size && next.value < 500 ? [thread, length] : [thread];
}

function behindMm(tokens: readonly Token[], place: number, limit: number): number {
  const word = tokens[place]?.word ?? "";
  return place < limit && ["mil", "mm", "millimetres", "millimeters", "mils"].includes(word)
    ? place + 1
    : place;
}

/** "2BA", "four BA". */
function baAt(tokens: readonly Token[], { number }: Size, limit: number): Amount | null {
  const [a, b] = [tokens[number.to]?.word, tokens[number.to + 1]?.word];
  const to = a === "ba" ? number.to + 1 : a === "b" && b === "a" ? number.to + 2 : 0;
  const major = baMajor.get(number.value);
  if (to === 0 || to > limit || major === undefined) return null;
  return { ...made(number.from, to, major, `${major}`, "mm"), designation: `${number.value} BA` };
}

/** "quarter BSF", "half inch Whit", "three eighths UNF", "three eighths fine". */
function namedAt(tokens: readonly Token[], { number, to }: Size, limit: number): Amount | null {
  if (number.value > 6 || tokens[to - 1]?.stop === ".") return null;
  const count = numberAt(tokens, to, limit);
  const counted = count !== null && isCount(count) && pairIsListed(number, count);
  const at = counted ? count.to : to;
  const name = nameAt(tokens, at, limit) ?? finenessAt(tokens, at, number);
  if (!name) return null;
  const size = counted ? `${number.typed}-${count.typed}` : number.typed;
  return {
    ...made(number.from, name.to, number.value, number.typed, "[in_i]"),
    designation: `${size} ${name.letters}`,
  };
}

const named = new Map<string, { words: string[]; letters: string }[]>();
for (const [said, letters] of threadNames) {
  const words = said.split(" ");
  const list = named.get(words[0] ?? "") ?? [];
  named.set(words[0] ?? "", [...list, { words, letters }]);
}

function nameAt(
  tokens: readonly Token[],
  place: number,
  limit: number,
): { letters: string; to: number } | null {
  for (const { words, letters } of named.get(tokens[place]?.word ?? "") ?? []) {
    if (place + words.length > limit || !words.every((word, i) => tokens[place + i]?.word === word)) continue;
    return { letters, to: place + words.length };
  }
  return null;
}

function finenessAt(
  tokens: readonly Token[],
  place: number,
  number: Spoken,
): { letters: string; to: number } | null {
  const word = tokens[place]?.word ?? "";
  const letters = Object.hasOwn(fineness, word) ? fineness[word] : undefined;
  return letters && number.form !== "whole" ? { letters, to: place + 1 } : null;
}

/** "quarter twenty", "5/16 18", "five sixteenths by 22", "10-32", "number ten thirty two". */
function countedAt(memory: Memory, { number, to }: Size, limit: number): Amount | null {
  const { tokens } = memory;
  if (number.form === "whole") return numberedAt(memory, number, limit);
  const by = hasBy(tokens, to);
  if (number.form === "decimal" && !(by && number.value < 2)) return null;
  if (tokens[to - 1]?.stop !== "") return null;
  const count = numberAt(tokens, by ? to + 1 : to, limit);
  if (!count || !isCount(count)) return null;
  const decimal = number.form === "decimal" && usualCounts.has(count.value);
  if (!decimal && !pairIsListed(number, count) && !(by && isLikely(number, count))) return null;
  const thread = made(number.from, count.to, number.value, number.typed, "[in_i]");
  return { ...thread, designation: `${number.typed}-${count.typed}` };
}

function numberedAt(memory: Memory, number: Spoken, limit: number): Amount | null {
  const { tokens } = memory;
  const joined = tokens[number.to]?.joint === "-";
  const count = numberAt(tokens, number.to, limit) ?? pairOf(number);
  if (number.value > 12 || !count || !isCount(count) || tokens[number.to - 1]?.stop !== "") return null;
  const inches = numberedDiameter(number.value);
  if (!pairs.has(`${Math.round(inches * inch * 50)}/${count.value}`)) return null;
  const near = tokens
    .slice(Math.max(0, number.from - 6), count.to + 4)
    .some(({ word }) => screwWords.has(word));
  if (!joined && !near && tokens[number.from - 1]?.word !== "number") return null;
  const thread = made(number.from, count.to, inches, `${inches}`, "[in_i]");
  return { ...thread, designation: `#${number.value}-${count.value}` };
}

function pairOf(number: Spoken): Spoken | null {
  if (!number.paired) return null;
  const value = number.paired.value - number.value * 100;
  return { value, typed: `${value}`, form: "whole", from: number.to, to: number.paired.to };
}

/** Counts that threads with a decimal size have: "1.37 by 24". */
const usualCounts = new Set([14, 16, 18, 20, 24, 26, 28, 32, 40, 48]);
const isCount = (count: Spoken) => count.form === "whole" && count.value >= 4 && count.value <= 80;

function pairIsListed(number: Spoken, count: Spoken): boolean {
  return pairs.has(`${Math.round(number.value * inch * 50)}/${count.value}`);
}

/** A thread that no table lists, but that could be cut: old makers had their own. */
function isLikely(number: Spoken, count: Spoken): boolean {
  const product = number.value * count.value;
  return count.value >= 8 && product >= 2.5 && product <= 16;
}

function hasBy(tokens: readonly Token[], place: number): boolean {
  return ["by", "x", "×"].includes(tokens[place]?.word ?? "") && tokens[place - 1]?.stop === "";
}

/** "quarter twenty by three quarters": the length is in inches too. */
function withLength(tokens: readonly Token[], thread: Amount, limit: number): Amount[] {
  const length = hasBy(tokens, thread.to) ? numberAt(tokens, thread.to + 1, limit) : null;
  if (!length || thread.unit !== "[in_i]" || length.value <= 0 || length.value > 40) return [thread];
  const [a, b] = [tokens[length.to]?.word ?? "", tokens[length.to + 1]?.word ?? ""];
  const said = a === "inch" || a === "inches";
  const to = said ? length.to + 1 : a === "an" && b === "inch" ? length.to + 2 : length.to;
  return [thread, { ...made(length.from, to, length.value, length.typed, "[in_i]"), form: length.form }];
}

function made(from: number, to: number, value: number, typed: string, unit: string): Amount {
  return { from, to, value, typed, form: "whole", unit, dimension: "length", unitFrom: "said" };
}
