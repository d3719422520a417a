"use client";
import { useEffect, useState } from "react";
import type { BuildDocument, Outcome, Sighting } from "#lib/build/index.ts";
import {
  answerOf,
  applying,
  assemblyOf,
  type Book,
  type BriefLine,
  briefOf,
  openingOf,
} from "#lib/gotcha/index.ts";
import type { BuildSession } from "../session/build-session.ts";
import { useDerived, useSession } from "../session/provider.tsx";

/** The book of a build's machine as the program last gave it, and when it was asked for. */
const books = new Map<string, { book: Book; asked: number }>();

/** The book may be written in elsewhere: older than this it is asked for again, in milliseconds. */
const FRESH = 5000;

async function fetchBook(buildId: string): Promise<Book | null> {
  const response = await fetch(`/builds/${encodeURIComponent(buildId)}/book`).catch(() => null);
  return response?.ok ? ((await response.json()) as Book) : null;
}

const nothing: Book = { gotchas: [], sightings: [] };

/** The book with what this build itself has written in it since. */
function withOwn(book: Book, document: BuildDocument): Book {
  const ids = new Set(document.gotchas.map((one) => one.id));
  const gotchas = [...book.gotchas.filter((one) => !ids.has(one.id)), ...document.gotchas];
  const others = book.sightings.filter((one) => one.buildId !== document.build.id);
  return { gotchas, sightings: [...others, ...document.sightings] };
}

interface Opened {
  /** All that applies, in the order of the brief. */
  all: BriefLine[];
  brief: BriefLine[];
}

/** What the book says of what is opened in this build; null until it is known. */
function useOpened(): Opened | null {
  const { document } = useDerived();
  const { id } = document.build;
  const [book, setBook] = useState<Book | null>(() => books.get(id)?.book ?? null);
  useEffect(() => {
    const known = books.get(id);
    if (known && performance.now() - known.asked < FRESH) {
      setBook(known.book);
      return;
    }
    let current = true;
    const asked = performance.now();
    void fetchBook(id).then((found) => {
      books.set(id, { book: found ?? known?.book ?? nothing, asked });
      if (current) setBook(books.get(id)?.book ?? nothing);
    });
    return () => {
      current = false;
    };
  }, [id]);
  return book && openedIn(book, document);
}

/** Several places of a sheet ask for the same: what was computed last is kept for them. */
let last: { book: Book; document: BuildDocument; opened: Opened } | null = null;

function openedIn(book: Book, document: BuildDocument): Opened {
  if (last?.book === book && last.document === document) return last.opened;
  const latest = document.marks.findLast((mark) => mark.kind === "part" && mark.gone === null);
  const assembly = document.build.assemblyId ?? assemblyOf(document, latest)?.id ?? null;
  const all = applying(withOwn(book, document), openingOf(document, assembly), new Date().toISOString());
  last = { book, document, opened: { all, brief: briefOf(all, document) } };
  return last.opened;
}

/** All of the book that applies to what is opened in this build, in the order of the brief; null until it is known. */
export function useApplying(): BriefLine[] | null {
  return useOpened()?.all ?? null;
}

/** The brief of this build; null until it is known. */
export function useBriefLines(): BriefLine[] | null {
  return useOpened()?.brief ?? null;
}

/** The brief, and a way to answer it. */
export function useBrief(): {
  lines: BriefLine[];
  answer: (line: BriefLine, outcome: Outcome) => void;
} | null {
  const session = useSession();
  const lines = useBriefLines();
  return lines && { lines, answer: (line, outcome) => answerBrief(session, line, outcome) };
}

/** Answers a gotcha in this build; the same answer again takes it back. */
export function answerBrief(session: BuildSession, line: BriefLine, outcome: Outcome): void {
  const { document } = session;
  const { gotcha } = line.entry;
  const ids = new Set([gotcha.id, ...line.entry.joined.map((one) => one.id)]);
  const known = document.sightings.findLast(
    (one) => one.gone === null && one.markId === null && ids.has(one.gotchaId),
  );
  const at = new Date().toISOString();
  const again = known?.outcome === outcome;
  const row: Sighting = known
    ? { ...known, outcome, at, gone: again ? at : null }
    : answerOf(document, {
        id: crypto.randomUUID(),
        gotchaId: gotcha.id,
        outcome,
        at,
        assembly: openingOf(document).assembly.name,
      });
  const label = again ? `Answer taken back: ${gotcha.symptom}` : `Gotcha ${outcome}: ${gotcha.symptom}`;
  session.change(label.slice(0, 500), [{ table: "sighting", row }]);
}
