"use client";
import Link from "next/link";
import { useMemo } from "react";
import type { Gotcha } from "#lib/build/index.ts";
import { alikes, entriesOf, sayCost, standingOf } from "#lib/gotcha/index.ts";
import { BookBar } from "./book-bar.tsx";
import { sayTrust, sayWhere } from "./book-sheet.tsx";
import { type OpenBook, useBook } from "./use-book.ts";

/** Pairs that may say the same, side by side: join them one way or the other, or tell them apart for good. */
export function SameSheet() {
  const open = useBook();
  if (!open) return <p className="soft">Reading the book…</p>;
  return <Pairs open={open} />;
}

/** So many pairs are shown at a time. */
const SHOWN = 30;

function Pairs({ open }: { open: OpenBook }) {
  const pairs = useMemo(() => alikes(open.book.gotchas), [open.book]);
  const of = useMemo(() => new Map(open.book.gotchas.map((one) => [one.id, one])), [open.book]);
  return (
    <>
      <BookBar open={open} />
      {pairs.length === 0 && (
        <p style={{ marginTop: 16 }}>
          No two seem to say the same. <Link href="/gotchas">All gotchas</Link>
        </p>
      )}
      {pairs.slice(0, SHOWN).map(({ ids: [a, b] }) => {
        const [one, other] = [of.get(a), of.get(b)];
        return one && other ? <Pair key={`${a} ${b}`} open={open} pair={[one, other]} /> : null;
      })}
      {pairs.length > SHOWN && <p className="soft">And {pairs.length - SHOWN} more.</p>}
    </>
  );
}

function Pair({ open, pair: [one, other] }: { open: OpenBook; pair: [Gotcha, Gotcha] }) {
  const set = (label: string, row: Gotcha) => void open.change(label, [{ table: "gotcha", row }]);
  return (
    <section className="block" aria-label={`${one.symptom}, and ${other.symptom}`}>
      <div className="pair">
        <Side open={open} gotcha={one} onJoin={() => set("Joined", { ...other, joinedInto: one.id })} />
        <Side open={open} gotcha={other} onJoin={() => set("Joined", { ...one, joinedInto: other.id })} />
      </div>
      <p style={{ marginTop: 10 }}>
        <button
          type="button"
          className="plain"
          onClick={() => set("Not the same", { ...one, notSame: [...one.notSame, other.id] })}
        >
          They are not the same
        </button>
      </p>
    </section>
  );
}

function Side({ open, gotcha, onJoin }: { open: OpenBook; gotcha: Gotcha; onJoin: () => void }) {
  const entry = entriesOf(open.book).get(gotcha.id);
  const part = gotcha.appliesTo[0]?.item;
  const says = [
    ["Why:", gotcha.mechanism],
    ["It costs:", sayCost(gotcha)],
    ["Instead:", gotcha.avoid],
  ].filter(([, text]) => text !== "");
  return (
    <div>
      <h3>
        <Link href={`/gotchas/${encodeURIComponent(gotcha.id)}`}>{gotcha.symptom}</Link>
      </h3>
      <p className="soft small">{[sayWhere(gotcha), part].filter(Boolean).join(": ")}</p>
      {says.map(([label, text]) => (
        <p key={label}>
          <b>{label}</b> {text}
        </p>
      ))}
      {entry && <p className="soft small">{sayTrust(standingOf(entry, new Date().toISOString()))}</p>}
      <button type="button" onClick={onJoin}>
        Keep these words for both
      </button>
    </div>
  );
}
