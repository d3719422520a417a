"use client";
import Link from "next/link";
import { useRouter } from "next/navigation";
import { useId, useMemo, useState } from "react";
import { type Gotcha, newGotcha, severities } from "#lib/build/index.ts";
import { alikes, type Entry, entriesOf, type Standing, sayStanding, standingOf } from "#lib/gotcha/index.ts";
import { Finder } from "../find/finder.tsx";
import { sayWords } from "../parts/send.ts";
import { BookBar } from "./book-bar.tsx";
import { type OpenBook, useBook } from "./use-book.ts";

/** The gotcha book: what asks to be looked at again, all entries by their assembly, and the ways in and out. */
export function BookSheet() {
  const open = useBook();
  if (!open) return <p className="soft">Reading the book…</p>;
  return (
    <>
      <Finder only="gotcha" />
      <Entries open={open} />
      <section className="block">
        <h2>Write one down</h2>
        <WriteOne open={open} />
        <BookBar open={open} />
      </section>
      <section className="block">
        <h2>Somebody else’s book</h2>
        <BringBook open={open} />
      </section>
    </>
  );
}

function Entries({ open }: { open: OpenBook }) {
  const { book } = open;
  const today = new Date().toISOString();
  const entries = useMemo(() => [...entriesOf(book).values()], [book]);
  const same = useMemo(() => alikes(book.gotchas).length, [book]);
  const due = entries.filter((entry) => !entry.superseded && standingOf(entry, today).due !== null);
  const groups = grouped(entries);
  return (
    <>
      {same > 0 && (
        <p style={{ marginTop: 18 }}>
          <Link href="/gotchas/same">{same === 1 ? "One pair" : `${same} pairs`} may say the same</Link>
        </p>
      )}
      {due.length > 0 && (
        <section className="block">
          <h2>To be looked at again</h2>
          <ul className="lines">
            {due.map((entry) => (
              <EntryLine key={entry.gotcha.id} entry={entry} today={today} because />
            ))}
          </ul>
        </section>
      )}
      {entries.length === 0 && (
        <p style={{ marginTop: 18 }}>
          The book is empty. A gotcha marked in a log can be put into it, or one can be written down here.
        </p>
      )}
      {[...groups]
        .sort(([a], [b]) => (a < b ? -1 : 1))
        .map(([group, of]) => (
          <section key={group} className="block">
            <h2>{group}</h2>
            <ul className="lines">
              {of.map((entry) => (
                <EntryLine key={entry.gotcha.id} entry={entry} today={today} />
              ))}
            </ul>
          </section>
        ))}
    </>
  );
}

function grouped(entries: Entry[]): Map<string, Entry[]> {
  const groups = new Map<string, Entry[]>();
  for (const entry of entries) groups.set(groupOf(entry), [...(groups.get(groupOf(entry)) ?? []), entry]);
  return groups;
}

function groupOf({ gotcha }: Entry): string {
  return sayWhere(gotcha) || "Not said where it applies";
}

/** Where a gotcha applies first of all: "Plunger and barrel, Halvern Works H3". */
export function sayWhere({ appliesTo: [scope] }: Gotcha): string {
  const words = [scope?.assembly, [scope?.maker, scope?.model].filter(Boolean).join(" ")].filter(Boolean);
  return words.join(", ");
}

function EntryLine({ entry, today, because = false }: { entry: Entry; today: string; because?: boolean }) {
  const standing = standingOf(entry, today);
  const { gotcha } = entry;
  return (
    <li>
      <span className="grow">
        <Link href={`/gotchas/${encodeURIComponent(gotcha.id)}`}>
          {entry.superseded ? <s>{gotcha.symptom}</s> : gotcha.symptom || "no words yet"}
        </Link>
        {entry.superseded && <span className="soft small"> superseded</span>}
      </span>
      <span className="soft small">
        {because ? `${standing.due}; ` : ""}
        {sayTrust(standing)} {sayCost(gotcha.severity)}
        {gotcha.origin && ` · from ${gotcha.origin}`}
      </span>
    </li>
  );
}

function sayCost(severity: string): string {
  const label = severities.find((one) => one.value === severity)?.label;
  return label ? `Costs ${label}.` : "";
}

/** A standing as a sentence: "Met twice, once of them avoided." */
export function sayTrust(standing: Standing): string {
  const said = sayStanding(standing);
  return `${said.slice(0, 1).toUpperCase()}${said.slice(1)}.`;
}

function WriteOne({ open }: { open: OpenBook }) {
  const router = useRouter();
  const [symptom, setSymptom] = useState("");
  const id = useId();
  const same = useMemo(() => {
    const written = newGotcha({ id: "new", symptom, noted: "" });
    const pairs = symptom.trim().length > 8 ? alikes(open.book.gotchas, written) : [];
    return pairs.slice(0, 3).flatMap((pair) => open.book.gotchas.find((one) => one.id === pair.ids[1]) ?? []);
  }, [symptom, open.book]);
  return (
    <form
      style={{ maxWidth: 720 }}
      onSubmit={async (event) => {
        event.preventDefault();
        const row = newGotcha({
          id: crypto.randomUUID(),
          symptom: symptom.trim(),
          noted: new Date().toISOString(),
        });
        await open.change(`Written down: ${row.symptom}`, [{ table: "gotcha", row }]);
        router.push(`/gotchas/${row.id}`);
      }}
    >
      <label htmlFor={id}>What bit, as it first showed itself</label>
      <input
        id={id}
        value={symptom}
        required
        maxLength={500}
        onChange={(event) => setSymptom(event.target.value)}
      />
      {same.map((one) => (
        <p key={one.id} className="small" style={{ margin: "6px 0 0" }}>
          Perhaps the book has it: <Link href={`/gotchas/${encodeURIComponent(one.id)}`}>{one.symptom}</Link>
        </p>
      ))}
      <button type="submit" style={{ marginTop: 12 }}>
        Write it down
      </button>
    </form>
  );
}

/** Brings in a book of another workshop, and gives one's own away. */
function BringBook({ open }: { open: OpenBook }) {
  const [said, setSaid] = useState("");
  const [origin, setOrigin] = useState("");
  const ids = { origin: useId(), file: useId() };
  const bring = async (file: File) => {
    const query = new URLSearchParams({ name: file.name, origin });
    const response = await fetch(`/gotchas/file?${query}`, { method: "POST", body: await file.text() }).catch(
      () => null,
    );
    const answer = (await response?.json().catch(() => ({}))) as Record<string, never>;
    const known = Number(answer.known);
    if (!response?.ok) setSaid(sayWords(answer));
    else
      setSaid(
        `${answer.gotchas} brought in as heard.${known > 0 ? ` Here already, and as they were: ${known}.` : ""}`,
      );
    await open.load();
  };
  return (
    <>
      <div className="form">
        <div>
          <label htmlFor={ids.origin}>Whose it is</label>
          <input
            id={ids.origin}
            value={origin}
            maxLength={200}
            onChange={(event) => setOrigin(event.target.value)}
          />
        </div>
        <div>
          <label htmlFor={ids.file}>A book as JSON or CSV</label>
          <input
            id={ids.file}
            type="file"
            accept=".json,.csv"
            onChange={(event) => {
              const chosen = event.target.files?.[0];
              event.target.value = "";
              if (chosen) void bring(chosen);
            }}
          />
        </div>
      </div>
      <p role="status">{said}</p>
      <p>
        Give this one away:{" "}
        <a href="/gotchas/file?form=json" download>
          JSON, with sightings
        </a>{" "}
        ·{" "}
        <a href="/gotchas/file?form=csv" download>
          CSV, for a spreadsheet
        </a>
      </p>
    </>
  );
}
