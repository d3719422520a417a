import { type Source, type SourceName, sourceNamed } from "./source.ts";
import { sources } from "./sources.ts";

type Column<T> = (text: string) => T;
type Row<C extends Record<string, Column<unknown>>> = { [K in keyof C]: ReturnType<C[K]> };

/** A column of words. */
export const words: Column<string> = (text) => text;

/** A column of numbers; an empty place or a dash is no number and throws. */
export const number: Column<number> = (text) => {
  const value = Number(text);
  if (text === "" || Number.isNaN(value)) throw new Error(`a number was expected, “${text}” was found`);
  return value;
};

/** A column of numbers in which a dash means that there is none. */
export const numberOrNone: Column<number | undefined> = (text) => (text === "-" ? undefined : number(text));

/** The column that names a row's source. */
export const source: Column<Source> = (text) => {
  if (!(text in sources)) throw new Error(`no source is called “${text}”`);
  return sourceNamed(text as SourceName);
};

/**
 * Reads a table that was set out for proof-reading: a row a line, places separated by spaces, the names of the
 * columns in the first line. Throws on a table that does not agree with its columns: that is a slip in this folder.
 */
export function sheet<C extends Record<string, Column<unknown>>>(columns: C, text: string): Row<C>[] {
  const lines = text
    .split("\n")
    .map((line) => line.trim())
    .filter(Boolean);
  const names = Object.keys(columns);
  const head = lines.shift()?.split(/\s+/);
  if (head?.join() !== names.join()) throw new Error(`columns ${names}, but the table says ${head}`);
  return lines.map((line) => {
    const places = line.split(/\s+/);
    if (places.length !== names.length) throw new Error(`${names.length} places expected in “${line}”`);
    return Object.fromEntries(
      names.map((name, index) => [name, columns[name]?.(places[index] ?? "")]),
    ) as Row<C>;
  });
}
