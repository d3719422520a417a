import { readFileSync } from "node:fs";
import { fontFiles } from "./fonts.ts";

/**
 * Tells whether the print can show a text: whether one of its fonts has a sign for all of its code points. A
 * letter and the accents on it must come from the same font.
 */
export type Coverage = (text: string) => boolean;

let known: Coverage | undefined;

/** Coverage of the fonts of the print: a sign counts where regular and bold have it. Read once. */
export function printCoverage(): Coverage {
  if (known) return known;
  const { words, signs } = fontFiles();
  const fonts = [words, signs].map((role) => role.map((file) => codePoints(readFileSync(file))));
  known = (text) => {
    const codes = Array.from(text, (character) => character.codePointAt(0) as number);
    return fonts.some((role) => codes.every((code) => role.every((font) => font.has(code))));
  };
  return known;
}

/**
 * The code points that a TrueType font maps to a glyph: its `cmap` table, subtables of format 4 and 12
 * (OpenType 1.9, "cmap — Character to Glyph Index Mapping Table").
 */
export function codePoints(font: Buffer): Set<number> {
  const found = new Set<number>();
  const cmap = tableOffset(font, "cmap");
  for (let index = 0; index < font.readUInt16BE(cmap + 2); index++) {
    const subtable = cmap + font.readUInt32BE(cmap + 4 + index * 8 + 4);
    const format = font.readUInt16BE(subtable);
    if (format === 4) readFormat4(font, subtable, found);
    if (format === 12) readFormat12(font, subtable, found);
  }
  return found;
}

function tableOffset(font: Buffer, tag: string): number {
  for (let index = 0; index < font.readUInt16BE(4); index++) {
    const record = 12 + index * 16;
    if (font.toString("latin1", record, record + 4) === tag) return font.readUInt32BE(record + 8);
  }
  throw new Error(`A font without the table "${tag}" was found; a TrueType font was expected.`);
}

function readFormat4(font: Buffer, at: number, found: Set<number>): void {
  const segments = font.readUInt16BE(at + 6) / 2;
  const word = (block: number, segment: number) => at + 14 + block * segments * 2 + segment * 2;
  for (let segment = 0; segment < segments; segment++) {
    const end = font.readUInt16BE(word(0, segment));
    const start = font.readUInt16BE(word(1, segment) + 2);
    const delta = font.readUInt16BE(word(2, segment) + 2);
    const rangeAt = word(3, segment) + 2;
    const range = font.readUInt16BE(rangeAt);
    for (let code = start; code <= end && code !== 0xffff; code++) {
      const listed = range === 0 ? code : font.readUInt16BE(rangeAt + range + (code - start) * 2);
      const glyph = range === 0 || listed !== 0 ? (listed + delta) & 0xffff : 0;
      if (glyph !== 0) found.add(code);
    }
  }
}

function readFormat12(font: Buffer, at: number, found: Set<number>): void {
  for (let group = 0; group < font.readUInt32BE(at + 12); group++) {
    const record = at + 16 + group * 12;
    const first = font.readUInt32BE(record);
    const glyph = font.readUInt32BE(record + 8);
    for (let code = first; code <= font.readUInt32BE(record + 4); code++) {
      if (glyph + code - first !== 0) found.add(code);
    }
  }
}
