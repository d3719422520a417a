import {
  type Gotcha,
  newGotcha,
  newSighting,
  type Outcome,
  type Sighting,
  severities,
} from "#lib/build/index.ts";
import type { OpenedPart, Opening } from "#lib/gotcha/index.ts";
import type { Asked } from "../measure.ts";
import type { Lesson, SecondBook, Specimen } from "./read.ts";

/** The rows of the second book, as a workshop would keep them. */
export function rowsOf({ lessons }: SecondBook): { gotchas: Gotcha[]; sightings: Sighting[] } {
  const gotchas = lessons.map((lesson, at) => {
    const before = lessons[at - 1];
    const next = lessons[at + 1];
    const joined = lesson.fate === "j" && next ? next : null;
    return newGotcha({
      id: lesson.id,
      symptom: lesson.symptom,
      avoid: lesson.more,
      noted: "2024-01-01T00:00:00.000Z",
      severity: lesson.severity,
      source: lesson.often === "H" ? "told" : "met",
      // What is joined is the same trap, so it says the same of where it applies.
      appliesTo: (joined ?? lesson).appliesTo,
      notTo: (joined ?? lesson).notTo,
      supersedes: before?.fate === "x" ? [before.id] : [],
      joinedInto: joined?.id ?? null,
      gone: lesson.fate === "g" ? "2025-01-01T00:00:00.000Z" : null,
    });
  });
  return { gotchas, sightings: lessons.flatMap(sightingsOf) };
}

const looks: Record<Lesson["often"], Outcome[]> = {
  H: [],
  F: ["happened", "absent", "absent", "absent"],
  O: ["happened"],
  R: ["happened", "happened", "happened"],
  M: ["happened", "happened", "avoided", "happened", "avoided", "happened"],
};

function sightingsOf({ id, often }: Lesson): Sighting[] {
  return looks[often].map((outcome, at) =>
    newSighting({
      id: `${id}-${at}`,
      gotchaId: id,
      outcome,
      at: `2026-0${at + 1}-04T10:00:00.000Z`,
      machineId: `elsewhere-${at}`,
    }),
  );
}

/** Two hundred openings: of the 240 that there are, every sixth is left out. */
export function openingsOf(book: SecondBook): Asked[] {
  const all = [...book.specimens].flatMap(([key, specimens]) =>
    specimens.flatMap((one) =>
      (book.assemblies.get(key) ?? []).map((assembly) => ({
        opening: openingOf(one, assembly.name, book.assemblies.get(key) ?? []),
        ...truthOf(book.lessons, `${one.id} / ${assembly.name}`),
      })),
    ),
  );
  return all.filter((_, at) => at % 6 !== 5);
}

function openingOf(
  one: Specimen,
  assembly: string,
  all: readonly { name: string; parts: string[] }[],
): Opening {
  const { id, maker, model, serial, years, variant, made } = one;
  const listed = all.flatMap((of) => of.parts.map((name) => ({ name, here: of.name === assembly })));
  const makeOf = (name: string) => made.find((known) => known.name === name);
  const elsewhere = made.filter((known) => !listed.some((part) => part.name === known.name));
  return {
    machine: { id, maker, model, serial, years, variant },
    assembly: { name: assembly, inside: [] },
    parts: [
      ...listed.map((part): OpenedPart => ({ ...part, make: "", maker: "", ...makeOf(part.name) })),
      ...elsewhere.map((part) => ({ ...part, here: false })),
    ],
    kits: one.kits,
    buildId: null,
  };
}

const bad = severities.map((one) => one.value);
const often: Record<Lesson["often"], number> = { H: 1, F: 1, O: 2, R: 3, M: 4 };

/** The two plain readings of "by severity, recurrence and closeness of match": less than 0 where one comes before. */
const readings: ((a: Lesson, b: Lesson) => number)[] = [
  (a, b) =>
    bad.indexOf(b.severity) - bad.indexOf(a.severity) ||
    often[b.often] - often[a.often] ||
    b.closeness - a.closeness,
  (a, b) => product(b) - product(a),
];

function product({ severity, often: times, closeness }: Lesson): number {
  return (bad.indexOf(severity) + 1) * often[times] * closeness;
}

/** What must be among the five, what may be, and what of all that cannot be decided. Ties may fall either way. */
export function truthOf(lessons: readonly Lesson[], place: string): Pick<Asked, "asked" | "right" | "open"> {
  const told = lessons.filter((one) => one.fate === "");
  const here = told.filter((one) => one.where.has(place));
  const others = (one: Lesson, before: (order: number) => boolean, reading: (typeof readings)[number]) =>
    here.filter((other) => other !== one && before(reading(other, one))).length;
  const surely = (one: Lesson) => readings.every((way) => others(one, (order) => order <= 0, way) < 5);
  const maybe = (one: Lesson) => readings.some((way) => others(one, (order) => order < 0, way) < 5);
  return {
    asked: here.filter(surely).map((one) => one.id),
    right: here.filter(maybe).map((one) => one.id),
    open: told.filter((one) => one.where.has(`?${place}`)).map((one) => one.id),
  };
}
