import { after, at } from "../text.ts";
import type { ThreadSystem, Value } from "../types.ts";

/** The letters of a series of inch threads, and the system they belong to. */
export interface Series {
  system: ThreadSystem;
  letters: string;
  end: number;
}

const systems: [RegExp, ThreadSystem][] = [
  [/(UNC|UNF|UNEF|UNS|UNRC|UNRF|UNJF|UNJC|UN|ANC|ANF|NC|NF|USS|SAE)(?![\p{L}\p{N}])/uy, "UN"],
  [/(BSW|B\.S\.W|Whitworth|Whit)(?![\p{L}\p{N}])\.?/iuy, "BSW"],
  [/(W)(?![\p{L}\p{N}.])/uy, "BSW"],
  [/(BSF|B\.S\.F)(?![\p{L}\p{N}])\.?/iuy, "BSF"],
  [/(BSCy|BSC|CEI|C\.E\.I|cycle)(?![\p{L}\p{N}/])\.?(?: thread)?/iuy, "BSC"],
  [/(BSB|brass thread|British Brass)(?![\p{L}\p{N}])/iuy, "BSB"],
  [/(ME|Model Engineer)(?![\p{L}\p{N}])/uy, "ME"],
  [/(Acme)(?![\p{L}\p{N}])/iuy, "Acme"],
];
const gap = /\s?[-,]?\s?/y;
const shown: Partial<Record<ThreadSystem, string>> = {
  BSW: "BSW",
  BSF: "BSF",
  BSB: "BSB",
  ME: "ME",
  Acme: "Acme",
};

/** The series at a place, one space or hyphen allowed before it, or null. */
export function seriesAt(text: string, place: number): Series | null {
  const start = after(gap, text, place);
  for (const [pattern, system] of systems) {
    const found = at(pattern, text, start);
    if (!found) continue;
    const letters = (found.groups[1] ?? "").replaceAll(".", "");
    return { system, letters: shown[system] ?? (/^cycle$/i.test(letters) ? "BSC" : letters), end: found.end };
  }
  return null;
}

const shortLetters = /^[\s-]*(?:W|SAE|ME|NC|NF|UN)$/;

/** Letters that mean other things too ("1/4 W" of a resistor) count only behind a fraction, and not beside watts or ohms. */
export function isSeriesHere(series: Series, value: Value, text: string, size: number): boolean {
  const letters = text.slice(size, series.end).replace(/\.$/, "");
  if (!shortLetters.test(letters)) return true;
  return value.style.kind === "fraction" && !/\bwatt|resist|\bohm|Ω|\blamp|\bbulb|\d\s?[kKM]\b/i.test(text);
}
