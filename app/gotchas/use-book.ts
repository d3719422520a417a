"use client";
import { useCallback, useEffect, useState } from "react";
import type { Gotcha, Sighting } from "#lib/build/index.ts";
import { type Book, bookHistory } from "#lib/gotcha/index.ts";
import type { Command, Put } from "#lib/store/command.ts";
import type { Row } from "#lib/store/tables.ts";
import { send, Trouble } from "../parts/send.ts";

type Change = { table: "gotcha"; row: Gotcha } | { table: "sighting"; row: Sighting };

/** The gotcha book open in this tab. What is written in it is on disk when `change` resolves. */
export interface OpenBook {
  book: Book;
  can: { undo: boolean; redo: boolean };
  /** What is on disk, or why something is not. */
  said: string;
  change: (label: string, changes: Change[]) => Promise<void>;
  retrace: (step: "undo" | "redo") => Promise<void>;
  load: () => Promise<void>;
}

/** Null until the book has been read. */
export function useBook(): OpenBook | null {
  const [read, setRead] = useState<(Book & { can: OpenBook["can"] }) | null>(null);
  const [said, setSaid] = useState("");
  const load = useCallback(async () => {
    const response = await fetch("/gotchas/data");
    if (response.ok) setRead((await response.json()) as Book & { can: OpenBook["can"] });
  }, []);
  useEffect(() => {
    void load();
  }, [load]);
  const attempt = async (words: string, work: () => Promise<unknown>) => {
    setSaid("Writing to disk…");
    try {
      await work();
      setSaid(words);
    } catch (error) {
      setSaid(`Not done: ${error instanceof Trouble ? error.message : "it did not work. Try again."}`);
    }
    await load();
  };
  if (!read) return null;
  return {
    book: read,
    can: read.can,
    said,
    load,
    change: (label, changes) =>
      attempt(`On disk: ${label}`, async () => {
        const puts = changes.map((change) => putOf(read, change)).filter((put) => put !== null);
        if (puts.length === 0) return;
        const command: Command = {
          id: crypto.randomUUID(),
          buildId: bookHistory,
          label: label.slice(0, 500),
          puts,
        };
        await send("/commands", command);
      }),
    retrace: (step) =>
      attempt(step === "undo" ? "Undone" : "Done again", () =>
        send("/commands", { id: crypto.randomUUID(), buildId: bookHistory, step }),
      ),
  };
}

/** The columns of a row that are new; null where there are none. */
function putOf(book: Book, { table, row }: Change): Put | null {
  const rows = (table === "gotcha" ? book.gotchas : book.sightings) as readonly (Gotcha | Sighting)[];
  const before = rows.find((one) => one.id === row.id) as unknown as Row | undefined;
  const { rev: _, ...all } = row as unknown as Row;
  const set = Object.fromEntries(
    Object.entries(all).filter(
      ([column, value]) => JSON.stringify(value) !== JSON.stringify(before?.[column]),
    ),
  );
  if (Object.keys(set).length === 0) return null;
  return { table, id: row.id, rev: before?.rev ?? 0, set: before ? set : all };
}
