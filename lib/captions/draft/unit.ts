import { moneyBehind } from "../lexicon/not-measures.ts";
import { countedInTime, spokenUnits, unitsByContext } from "../lexicon/units.ts";
import type { Token } from "./stream.ts";

/** A unit as said. `name` is its UCUM code, or the name of a choice that context decides ("mil"). */
export interface SaidUnit {
  name: string;
  /** Whether `name` is a code. */
  settled: boolean;
  from: number;
  to: number;
}

interface Spelling {
  words: string[];
  name: string;
  settled: boolean;
  /** Counts only where it clings to its figure. */
  clings: boolean;
}

const spellings = new Map<string, Spelling[]>();
for (const [table, settled] of [
  [spokenUnits, true],
  [unitsByContext, false],
] as const) {
  for (const line of table.trim().split("\n")) {
    const [name = "", all = ""] = line.split(" | ");
    for (const spelling of all.split(", ")) {
      const words = spelling.toLowerCase().split(" ");
      const list = spellings.get(words[0] ?? "") ?? [];
      list.push({ words, name: name.trim(), settled, clings: /^[A-Z]+$/.test(spelling) });
      spellings.set(words[0] ?? "", list);
    }
  }
}
for (const list of spellings.values()) list.sort((a, b) => b.words.length - a.words.length);

/** The longest unit that begins at a place, or null. Behind a comma or a full stop it counts only where it is `alone`. */
export function unitAt(
  tokens: readonly Token[],
  place: number,
  limit: number,
  alone = false,
): SaidUnit | null {
  const first = tokens[place];
  if (!first || place >= limit || (!alone && blocks(tokens[place - 1]))) return null;
  for (const one of spellings.get(first.word) ?? []) {
    if (one.clings && first.joint !== "" && first.joint !== "-") continue;
    if (place + one.words.length > limit) continue;
    if (!one.words.every((word, i) => tokens[place + i]?.word === word)) continue;
    if (one.words.some((_, i) => i > 0 && blocks(tokens[place + i - 1]))) continue;
    return { name: one.name, settled: one.settled, from: place, to: place + one.words.length };
  }
  return countedAt(tokens, place, limit);
}

/** "beats an hour", "drops a minute". */
function countedAt(tokens: readonly Token[], place: number, limit: number): SaidUnit | null {
  if (!isCounted(tokens[place]?.word ?? "") || blocks(tokens[place])) return null;
  const [a, b] = [tokens[place + 1]?.word, tokens[place + 2]?.word];
  const spoken = tokens[place + 1]?.word !== "a" && isRateHere(tokens, place);
  if (spoken) return { name: "/min", settled: true, from: place, to: place + 1 };
  const rate =
    b !== undefined && (a === "a" || a === "an" || a === "per" || a === "every") ? rates.get(b) : undefined;
  if (rate === undefined || place + 3 > limit) return null;
  return { name: rate, settled: true, from: place, to: place + 3 };
}

/** What can be counted in a minute: the usual things, and whatever stands in the plural and is no money. */
function isCounted(word: string): boolean {
  return countedInTime.has(word) || (/^[a-z]{3,}s$/.test(word) && !moneyBehind.has(word));
}

/** "at sixty a minute … about 250 stitches": the minute was said before. */
function isRateHere(tokens: readonly Token[], place: number): boolean {
  const word = tokens[place]?.word ?? "";
  if (!["strokes", "stitches", "beats", "impressions"].includes(word)) return false;
  const before = tokens.slice(Math.max(0, place - 25), place).map((token) => token.word);
  return before.includes("minute") || before.slice(-5).some((one) => ["geared", "doing"].includes(one));
}

/** Codes for so many in a time. */
export const rates: ReadonlyMap<string, string> = new Map(
  Object.entries({
    second: "/s",
    minute: "/min",
    hour: "/h",
    min: "/min",
  }),
);

function blocks(token: Token | undefined): boolean {
  return token !== undefined && token.stop !== "" && token.stop !== "-";
}
