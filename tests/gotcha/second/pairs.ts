import { type Gotcha, newGotcha } from "#lib/build/index.ts";
import type { Lesson, SecondBook } from "./read.ts";

const retold = (of: Lesson, id: string, symptom: string) =>
  newGotcha({ id, symptom, appliesTo: of.appliesTo, noted: "2026-06-01T00:00:00.000Z" });

/** A hundred gotchas written again in other words, each with the id of the one it says again. */
export function rewordedOf({ lessons }: SecondBook): { written: Gotcha; same: string }[] {
  return lessons
    .filter((one) => one.reworded !== null && one.fate === "")
    .slice(0, 100)
    .map((one) => ({ written: retold(one, `${one.id}-again`, one.reworded ?? ""), same: one.id }));
}

/**
 * Three hundred pairs that are near and different, and the entries that stand in them beside the book's own: a gotcha
 * with another trap in nearly its words, that one with the first reworded, and neighbours of the same assembly.
 */
export function nearOf({ lessons }: SecondBook): { others: Gotcha[]; pairs: [string, string][] } {
  const told = lessons.filter((one) => one.fate === "" && one.closeness === 3);
  const near = told.filter((one) => one.near !== null);
  const others = near.flatMap((one) => [
    retold(one, `${one.id}-near`, one.near ?? ""),
    ...(one.reworded === null ? [] : [retold(one, `${one.id}-again`, one.reworded)]),
  ]);
  const pairs = near.flatMap((one): [string, string][] => [
    [one.id, `${one.id}-near`],
    ...(one.reworded === null ? [] : [[`${one.id}-again`, `${one.id}-near`] as [string, string]]),
  ]);
  const neighbours = told.flatMap((one, at): [string, string][] => {
    const next = told[at + 1];
    return next && assembly(one) === assembly(next) ? [[one.id, next.id]] : [];
  });
  return { others, pairs: [...pairs, ...neighbours].slice(0, 300) };
}

function assembly({ appliesTo: [scope] }: Lesson): string {
  return [scope?.maker, scope?.model, scope?.assembly].join(" ");
}
