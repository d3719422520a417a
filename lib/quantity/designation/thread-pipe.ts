import { numberAt } from "../numbers.ts";
import type { Part } from "../part.ts";
import { rational } from "../rational.ts";
import { at } from "../text.ts";
import type { ReadOptions, ThreadSystem, Value } from "../types.ts";
import { threadPart } from "./part.ts";
import { sizeText } from "./size.ts";

const inch = /\s?-?\s?(?:in\b\.?|inch\b|")?\s?-?\s?/iy;
const tpi = /(?:-|\s?[x×]\s?)(\d{1,2}(?:\.5)?)\s?(?:tpi\b)?\s?/iy;
const series =
  /(BSPP|BSPT|BSP|B\.S\.P\.?|NPTF|NPT|NPSM|NPSF|NPS|British Standard Pipe|gas thread)(?![\p{L}\p{N}])/iuy;
const seriesAhead = /.{1,30}?(?:B\.?S|NP[TS]|British|gas)/iy;
const prefix = /(G|Rp|Rc|Rs|R|BSPP|BSPT|BSP|NPT)\s?(?=\d{1,2}(?:[/ \u00a0-]|\s?$|[,;)]|\s?[AB]\b)|[½¼¾⅛⅜⅝])/y;

/** "1/2 BSP", "G 1/2", "R1/2", "1/2-14 NPT". Forms: ISO 228-1 (G), ISO 7-1 (R, Rp, Rc), ASME B1.20.1 (NPT). */
export function pipeThreadAt(text: string, place: number, options: ReadOptions): Part | null {
  const lead = at(prefix, text, place);
  if (lead) return prefixed(text, place, lead.groups[1] ?? "", lead.end, options);
  if (!at(seriesAhead, text, place)) return null;
  const size = numberAt(text, place, options);
  const value = size?.values[0];
  if (!size || !value || !isPipeSize(value)) return null;
  const gap = at(inch, text, size.end)?.end ?? size.end;
  const count = at(tpi, text, gap === size.end ? size.end : gap) ?? at(tpi, text, size.end);
  const name = at(series, text, count?.end ?? gap);
  if (!name) return null;
  return part(
    value,
    (name.groups[1] ?? "").toUpperCase().replaceAll(".", ""),
    count?.groups[1],
    place,
    name.end,
    text,
    options,
  );
}

function prefixed(
  text: string,
  start: number,
  letters: string,
  place: number,
  options: ReadOptions,
): Part | null {
  const size = numberAt(text, place, options);
  const value = size?.values[0];
  if (!size || !value || !isPipeSize(value)) return null;
  if (letters.length === 1 && value.style.kind !== "fraction" && letters === "R") return null;
  const end = letters === "G" ? (at(/\s?[AB]\b/y, text, size.end)?.end ?? size.end) : size.end;
  return part(value, letters, undefined, start, end, text, options);
}

const isPipeSize = (value: Value): boolean =>
  value.number > 0 && value.number <= 6 && 16n % rational(value.exact).d === 0n;

function part(
  value: Value,
  letters: string,
  tpi: string | undefined,
  start: number,
  end: number,
  text: string,
  options: ReadOptions,
): Part {
  const system: ThreadSystem = letters.startsWith("NP") ? "NPT" : "BSP";
  const size = sizeText(value);
  const plain = ["BRITISH STANDARD PIPE", "GAS THREAD"].includes(letters) ? "BSP" : letters;
  const isPrefix = /^(?:G|R|Rp|Rc|Rs)$/.test(plain);
  const name = isPrefix ? `${plain} ${size}` : `${size}${tpi ? `-${tpi}` : ""} ${plain}`;
  const thread = { type: "thread" as const, name, system, series: plain, size, ...(tpi ? { tpi } : {}) };
  return threadPart(thread, start, end, text, options);
}
