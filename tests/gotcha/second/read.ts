import fs from "node:fs";
import path from "node:path";
import { newScope, type Scope, type Severity } from "#lib/build/index.ts";

/** One machine of a kind, in somebody's workshop. */
export interface Specimen {
  /** Machine and letter: "bracket a". */
  id: string;
  maker: string;
  model: string;
  serial: string;
  years: string;
  variant: string;
  /** What is known of parts: which, of what make, by whom. */
  made: { name: string; make: "original" | "reproduction"; maker: string }[];
  kits: string[];
}

export type Closeness = 1 | 2 | 3;

/** A gotcha as it is written down, with where it truly applies. */
export interface Lesson {
  id: string;
  severity: Severity;
  often: "H" | "F" | "O" | "R" | "M";
  /** "x" superseded by the next, "j" joined into it, "g" deleted. */
  fate: "" | "x" | "j" | "g";
  symptom: string;
  more: string;
  appliesTo: Scope[];
  notTo: Scope[];
  /** How near it names what is opened: the model's own assembly, the kind of assembly, no assembly. */
  closeness: Closeness;
  /** "specimen / assembly" for which it applies; "?" before it where that cannot be decided. */
  where: Set<string>;
  reworded: string | null;
  near: string | null;
}

export interface SecondBook {
  specimens: Map<string, Specimen[]>;
  /** Assemblies of a machine, by its key, with the parts listed in each. */
  assemblies: Map<string, { name: string; parts: string[] }[]>;
  lessons: Lesson[];
}

const here = import.meta.dirname;
export const textOf = (...name: string[]) => fs.readFileSync(path.join(here, ...name), "utf8");
const severities = { n: "nuisance", h: "hours", p: "part", m: "machine", i: "injury" } as const;

/** The second book and its truth, out of the files beside this one; the notation is told in README.md. */
export function readSecondBook(): SecondBook {
  const book: SecondBook = { specimens: new Map(), assemblies: new Map(), lessons: [] };
  const files = fs.readdirSync(path.join(here, "book")).sort();
  for (const file of files.filter((one) => !/^(wide|pairs)\.txt$/.test(one))) readMachines(book, file);
  for (const line of linesOf("wide.txt")) book.lessons.push(wideLesson(book, line));
  readPairs(book);
  return book;
}

function linesOf(file: string): string[] {
  return textOf("book", file)
    .split("\n")
    .filter((line) => line.trim() !== "");
}

const cut = (line: string, sign: string) => line.split(sign).map((one) => one.trim());

function readMachines(book: SecondBook, file: string): void {
  let key = "";
  let [maker, model, assembly] = ["", "", ""];
  for (const line of linesOf(file)) {
    const found = /^(machine|assembly) (.*)$/.exec(line);
    if (found?.[1] === "machine") {
      [key = "", maker = "", model = ""] = cut(found[2] ?? "", "|");
      book.specimens.set(key, []);
      book.assemblies.set(key, []);
    } else if (found) {
      const [name = "", parts = ""] = cut(found[2] ?? "", ":");
      assembly = name;
      book.assemblies.get(key)?.push({ name, parts: cut(parts, ",") });
    } else if (/^[abcd] \|/.test(line)) book.specimens.get(key)?.push(specimen(key, maker, model, line));
    else if (/^[=~] /.test(line)) add(book.lessons.at(-1), line);
    else book.lessons.push(ownLesson(book, line, { key, maker, model, assembly }));
  }
}

function add(lesson: Lesson | undefined, line: string): void {
  if (!lesson) throw new Error(`No gotcha above: ${line}`);
  lesson[line[0] === "=" ? "reworded" : "near"] = line.slice(2).trim();
}

function specimen(key: string, maker: string, model: string, line: string): Specimen {
  const [letter, serial = "", years = "", variant = "", has = ""] = cut(line, "|");
  const known = cut(has, ";").filter(Boolean);
  const made = known.flatMap((words) => {
    const [, name = "", make, by = ""] = /^(.*) (reproduction|original)\s*(.*)$/.exec(words) ?? [];
    return make ? [{ name, make: make as "original" | "reproduction", maker: by }] : [];
  });
  const kits = known.flatMap((words) => /^kit (.*)$/.exec(words)?.[1] ?? []);
  return { id: `${key} ${letter}`, maker, model, serial, years, variant, made, kits };
}

function ownLesson(
  book: SecondBook,
  line: string,
  at: { key: string; maker: string; model: string; assembly: string },
): Lesson {
  const { head, scope, where } = columns(line);
  const home = { maker: at.maker, model: at.model, assembly: at.assembly };
  const letters = lettersOf(where).map(([sign, letter]) => `${sign}${at.key} ${letter} / ${at.assembly}`);
  return lesson(book, head, { ...scopes(home, cut(scope, ";")), closeness: 3, where: new Set(letters) });
}

function wideLesson(book: SecondBook, line: string): Lesson {
  const { head, scope, where } = columns(line);
  const [kind = "", ...rest] = cut(scope, ";");
  const places = where === "-" ? [] : cut(where, ";").flatMap((one) => placesOf(book, one));
  const [, key = ""] = /^\??(\w+) /.exec(places[0] ?? "") ?? [];
  const { maker = "", model = "" } = book.specimens.get(key)?.[0] ?? {};
  const [, assembly = ""] = / \/ (.*)$/.exec(places[0] ?? "") ?? [];
  const [how = "", ...words] = kind.split(" ");
  const name = words.join(" ");
  const [otherMaker = "", otherModel = "", otherAssembly = ""] = cut(name, ",");
  const homes: Record<string, [Partial<Scope>, Closeness]> = {
    maker: [{ maker, assembly }, 2],
    kind: [{ assembly: name }, 2],
    any: [{ maker, model }, 1],
    everywhere: [{}, 2],
    elsewhere: [{ maker: otherMaker, model: otherModel, assembly: otherAssembly }, 3],
  };
  const [home, closeness] = homes[how] ?? [{}, 1];
  const also = how === "everywhere" ? [name, ...rest] : rest;
  return lesson(book, head, { ...scopes(home, also), closeness, where: new Set(places) });
}

/** "going train: bracket abcd, longcase a?b"; "*" stands for each assembly of the machine. */
function placesOf(book: SecondBook, words: string): string[] {
  const [assembly = "", machines = ""] = cut(words, ":");
  return cut(machines, ",").flatMap((one) => {
    const [, doubt = "", key = "", letters = ""] = /^(\??)(\w+) (.*)$/.exec(one) ?? [];
    const names = assembly === "*" ? (book.assemblies.get(key) ?? []).map((of) => of.name) : [assembly];
    return lettersOf(doubt + letters).flatMap(([sign, letter]) =>
      names.map((name) => `${sign}${key} ${letter} / ${name}`),
    );
  });
}

/** Each letter, with "?" for those after a question mark. */
function lettersOf(where: string): [string, string][] {
  const [sure = "", doubtful = ""] = where.replace("-", "").split("?");
  return [...sure]
    .map((letter): [string, string] => ["", letter])
    .concat([...doubtful].map((letter): [string, string] => ["?", letter]));
}

function columns(line: string) {
  const [grade = "", words = "", scope = "", where = ""] = cut(line, "|");
  return { head: { grade, words }, scope, where };
}

function lesson(
  { lessons }: SecondBook,
  { grade, words }: { grade: string; words: string },
  about: Pick<Lesson, "appliesTo" | "notTo" | "closeness" | "where">,
): Lesson {
  const [severity = "n", often = "H", fate = ""] = grade.split(" ");
  const [symptom = "", more = ""] = cut(words, " / ");
  return {
    id: `lesson-${String(lessons.length).padStart(3, "0")}`,
    severity: severities[severity as keyof typeof severities],
    often: often as Lesson["often"],
    fate: fate as Lesson["fate"],
    symptom,
    more,
    reworded: null,
    near: null,
    ...about,
  };
}

function scopes(home: Partial<Scope>, conditions: readonly string[]): Pick<Lesson, "appliesTo" | "notTo"> {
  const [applies, not]: Partial<Scope>[] = [{ ...home }, {}];
  for (const condition of conditions.filter((one) => one !== "-")) {
    const [, no, words = ""] = /^(not )?(.*)$/.exec(condition) ?? [];
    Object.assign((no ? not : applies) as Partial<Scope>, narrowed(words));
  }
  const without = Object.keys(not ?? {}).length > 0;
  return { appliesTo: [newScope(applies)], notTo: without ? [newScope({ ...home, ...not })] : [] };
}

function narrowed(words: string): Partial<Scope> {
  const [, what = "", value = ""] = /^(\w+) ?(.*)$/.exec(words) ?? [];
  const [from = "", to = ""] = value.split("-");
  if (what === "variant") return { variant: value };
  if (what === "kit") return { kit: value };
  if (what === "serial") return { serial: { from, to, by: "number" } };
  if (what === "years") return { years: { from, to } };
  const [, item = "", make, partMaker = ""] = /^(.*) (reproduction|original)\s*(.*)$/.exec(value) ?? [];
  if (what === "part" && make) return { item, make: make as "original" | "reproduction", partMaker };
  return what === "maker" || what === "" ? {} : unread(words);
}

function unread(words: string): never {
  throw new Error(`This part of a scope cannot be read: ${words}`);
}

function readPairs({ lessons }: SecondBook): void {
  let at: Lesson | undefined;
  for (const line of linesOf("pairs.txt")) {
    if (line.startsWith("on ")) at = begun(lessons, line.slice(3).trim());
    else add(at, line);
  }
}

/** The one gotcha whose symptom begins so; of two that are worded alike, the first. */
export function begun(lessons: readonly Lesson[], beginning: string): Lesson {
  const found = lessons.find((one) => one.symptom.startsWith(beginning) && one.fate === "");
  return found ?? unread(beginning);
}
