/**
 * The many characters people type for the same sign, made one, place for place: the result is as long as the
 * text, so that a place in one is a place in the other.
 */
const signs: Record<string, string> = {
  "-": "‐‑‒–—―−﹣－",
  "×": "✕✖⨯╳",
  '"': "“”„″‟〃ˮ",
  "'": "‘’‚′´`ʹʼ",
  "/": "⁄∕／",
  µ: "μ",
  Ω: "Ω",
  "°": "º˚",
  "·": "⋅∙•‧",
  "~": "∼～",
  "≈": "≃≅≒",
  "+": "＋",
  "(": "（",
  ")": "）",
  ":": "∶：",
  " ": "\t\n\r\v\f\u200b\u200c\u200d\u2060\ufeff\u00ad",
  "\u00a0": "\u1680\u2000\u2001\u2002\u2003\u2004\u2005\u2006\u2007\u2008\u2009\u200a\u202f\u205f\u3000",
  ",": "，",
  ".": "．",
  "⌀": "Ø∅øϕ",
};
const one = new Map(
  Object.entries(signs).flatMap(([sign, others]) => [...others].map((other) => [other, sign])),
);

const onlyPlain = /^[ -_a-~]*$/;

/** The text with one sign for each meaning. Hard spaces stay hard (they may group digits). */
export function plainSigns(text: string): string {
  if (onlyPlain.test(text)) return text;
  let plain = "";
  for (let i = 0; i < text.length; i++) plain += one.get(text.charAt(i)) ?? text.charAt(i);
  return plain;
}

/** What a pattern (with the `y` flag) finds at a place: its groups, and where it ends. */
export function at(
  pattern: RegExp,
  text: string,
  place: number,
): { groups: RegExpExecArray; end: number } | null {
  pattern.lastIndex = place;
  const groups = pattern.exec(text);
  return groups ? { groups, end: pattern.lastIndex } : null;
}

/** True where a pattern (with the `y` flag) stands at a place. */
export function isAt(pattern: RegExp, text: string, place: number): boolean {
  pattern.lastIndex = place;
  return pattern.test(text);
}

/** Where a pattern (with the `y` flag) that stands at a place ends; the place itself where it does not. */
export function after(pattern: RegExp, text: string, place: number): number {
  return isAt(pattern, text, place) ? pattern.lastIndex : place;
}

const otherSpace = /[^\S ]|\s\s/;

/** The text with one plain space for each run of spaces. */
export function singleSpaced(text: string): string {
  return otherSpace.test(text) ? text.replace(/\s+/g, " ") : text;
}

/** True where a figure from 0 to 9 stands. */
export function isDigitAt(text: string, place: number): boolean {
  const code = text.charCodeAt(place);
  return code >= 48 && code <= 57;
}

/** Where the spaces that begin at a place end. */
export function afterSpaces(text: string, place: number): number {
  let end = place;
  while (end < text.length && (text[end] === " " || text[end] === "\u00a0")) end++;
  return end;
}

const inWord = /[\p{L}\p{N}_]/u;

/** True where a word cannot go on: at the end, or before anything that is no letter and no digit. */
export function endsWord(text: string, place: number): boolean {
  return place >= text.length || !inWord.test(text.charAt(place));
}
