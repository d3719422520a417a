"use client";
import Link from "next/link";
import { useId, useMemo } from "react";
import {
  type Gotcha,
  knowledgeSources,
  newScope,
  newSighting,
  outcomes,
  type Scope,
  severities,
} from "#lib/build/index.ts";
import { alikes, type Entry, entriesOf, standingOf } from "#lib/gotcha/index.ts";
import type { SightingPlace } from "#lib/store/book.ts";
import { timecode } from "#lib/time/index.ts";
import { useTyped } from "../log/typed.tsx";
import { BookBar } from "./book-bar.tsx";
import { sayTrust } from "./book-sheet.tsx";
import { ScopeFields } from "./scope-fields.tsx";
import { type OpenBook, useBook } from "./use-book.ts";

type Places = Record<string, SightingPlace>;

/** One gotcha: its words, where it applies, what was seen of it and where, and what it may be the same as. */
export function GotchaSheet({ id, places }: { id: string; places: Places }) {
  const open = useBook();
  if (!open) return <p className="soft">Reading the book…</p>;
  const gotcha = open.book.gotchas.find((one) => one.id === id);
  if (!gotcha) {
    return (
      <>
        <h1>This gotcha is not in the book</h1>
        <p>
          It may be of another workshop. <Link href="/gotchas">All gotchas</Link>
        </p>
      </>
    );
  }
  return <OpenGotcha key={id} open={open} gotcha={gotcha} places={places} />;
}

function OpenGotcha({ open, gotcha, places }: { open: OpenBook; gotcha: Gotcha; places: Places }) {
  const entries = useMemo(() => entriesOf(open.book), [open.book]);
  const entry = entries.get(gotcha.id);
  const toldAs = gotcha.joinedInto
    ? open.book.gotchas.find((one) => one.id === gotcha.joinedInto)
    : undefined;
  const change = (label: string, columns: Partial<Gotcha>) =>
    open.change(label, [{ table: "gotcha", row: { ...gotcha, ...columns } }]);
  return (
    <>
      <h1>{gotcha.symptom || "A gotcha without words"}</h1>
      {entry && <p className="standing">{sayTrust(standingOf(entry, new Date().toISOString()))}</p>}
      {entry?.superseded && <p>Another gotcha has taken its place; it is shown in no brief.</p>}
      {gotcha.gone !== null && <p>It is struck out, and shown in no brief.</p>}
      {gotcha.origin && (
        <p className="soft">Brought in from {gotcha.origin}; it counts as heard until it is met here.</p>
      )}
      {toldAs && (
        <p>
          It is told as <Link href={`/gotchas/${encodeURIComponent(toldAs.id)}`}>{toldAs.symptom}</Link>.{" "}
          <button
            type="button"
            className="plain"
            onClick={() => void change("Split off again", { joinedInto: null })}
          >
            Split it off again
          </button>
        </p>
      )}
      <BookBar open={open} />
      {entry && <Sightings open={open} entry={entry} places={places} />}
      <section className="block">
        <h2>What it is</h2>
        <Words gotcha={gotcha} change={change} />
      </section>
      <section className="block">
        <h2>Where it applies</h2>
        <Scopes gotcha={gotcha} column="appliesTo" change={change} />
        <h3 style={{ marginBottom: 8 }}>Where it does not</h3>
        <Scopes gotcha={gotcha} column="notTo" change={change} />
      </section>
      <Others open={open} gotcha={gotcha} entry={entry} />
      <div style={{ marginTop: 24 }}>
        {gotcha.gone === null ? (
          <button type="button" onClick={() => void change("Struck out", { gone: new Date().toISOString() })}>
            Strike it out
          </button>
        ) : (
          <button type="button" onClick={() => void change("Brought back", { gone: null })}>
            Bring it back
          </button>
        )}
      </div>
    </>
  );
}

type ChangeGotcha = (label: string, columns: Partial<Gotcha>) => Promise<void>;

const texts = [
  ["symptom", "What bit, as it first showed itself"],
  ["mechanism", "Why"],
  ["consequence", "What follows"],
  ["tell", "How to tell beforehand"],
  ["avoid", "How to avoid it"],
  ["mend", "How to mend it"],
  ["sourceNote", "Who says so, and where"],
  ["cost", "What it cost, in hours or parts"],
] as const;

function Words({ gotcha, change }: { gotcha: Gotcha; change: ChangeGotcha }) {
  const ids = { severity: useId(), cause: useId(), source: useId() };
  return (
    <div className="form" style={{ maxWidth: "none" }}>
      {texts.map(([name, label]) => (
        <TextOf
          key={name}
          label={label}
          value={gotcha[name]}
          keep={(text) => void change(label, { [name]: text })}
        />
      ))}
      <div>
        <label htmlFor={ids.severity}>How bad</label>
        <select
          id={ids.severity}
          value={gotcha.severity}
          onChange={(event) => void change("How bad", { severity: event.target.value as Gotcha["severity"] })}
        >
          <option value="">not said yet</option>
          {severities.map((one) => (
            <option key={one.value} value={one.value}>
              {one.label}
            </option>
          ))}
        </select>
      </div>
      <div>
        <label htmlFor={ids.cause}>The reason is</label>
        <select
          id={ids.cause}
          value={gotcha.cause}
          onChange={(event) => void change("The reason", { cause: event.target.value as Gotcha["cause"] })}
        >
          <option value="suspected">suspected</option>
          <option value="proven">proven by a change that made it go</option>
        </select>
      </div>
      <div>
        <label htmlFor={ids.source}>Known because</label>
        <select
          id={ids.source}
          value={gotcha.source}
          onChange={(event) =>
            void change("Known because", { source: event.target.value as Gotcha["source"] })
          }
        >
          <option value="">not said yet</option>
          {knowledgeSources.map((one) => (
            <option key={one.value} value={one.value}>
              {one.label}
            </option>
          ))}
        </select>
      </div>
    </div>
  );
}

/** A text that is kept when it is left. */
export function TextOf({
  label,
  value,
  keep,
  line = false,
}: {
  label: string;
  value: string;
  keep: (text: string) => void;
  line?: boolean;
}) {
  const id = useId();
  const { text, change, flush } = useTyped(value, (next) => next !== value && keep(next));
  const common = { id, value: text, onBlur: flush, autoComplete: "off" };
  return (
    <div className={line ? undefined : "wide"}>
      <label htmlFor={id}>{label}</label>
      {line ? (
        <input {...common} maxLength={500} onChange={(event) => change(event.target.value)} />
      ) : (
        <textarea {...common} rows={1} onChange={(event) => change(event.target.value)} />
      )}
    </div>
  );
}

function Scopes({
  gotcha,
  column,
  change,
}: {
  gotcha: Gotcha;
  column: "appliesTo" | "notTo";
  change: ChangeGotcha;
}) {
  const scopes = gotcha[column];
  const put = (label: string, next: Scope[]) => void change(label, { [column]: next });
  return (
    <>
      {scopes.map((scope, index) => (
        <ScopeFields
          // biome-ignore lint/suspicious/noArrayIndexKey: scopes have no identity but their place
          key={index}
          legend={`${column === "appliesTo" ? "Applies" : "Does not apply"}${scopes.length > 1 ? `, ${index + 1}` : ""}`}
          scope={scope}
          onChange={(next) => put("Where it applies", scopes.with(index, next))}
          onTake={() => put("A place taken out", scopes.toSpliced(index, 1))}
        />
      ))}
      <p>
        <button
          type="button"
          className="plain"
          onClick={() => put("A place added", [...scopes, newScope(scopes.at(-1))])}
        >
          {column === "appliesTo" ? "Another place where it applies" : "A place where it does not"}
        </button>
      </p>
    </>
  );
}

function Sightings({ open, entry, places }: { open: OpenBook; entry: Entry; places: Places }) {
  const add = (outcome: (typeof outcomes)[number]) =>
    void open.change(`A sighting, ${outcome.label}: ${entry.gotcha.symptom}`.slice(0, 500), [
      {
        table: "sighting",
        row: newSighting({
          id: crypto.randomUUID(),
          gotchaId: entry.gotcha.id,
          outcome: outcome.value,
          at: new Date().toISOString(),
        }),
      },
    ]);
  return (
    <section className="block">
      <h2>Seen</h2>
      <ul className="lines">
        {entry.sightings.map((sighting) => {
          const place = places[sighting.markId ?? ""];
          return (
            <li key={sighting.id}>
              <time className="num soft small" dateTime={sighting.at}>
                {sighting.at.slice(0, 10)}
              </time>
              <span className="grow">
                <b>{sighting.outcome}</b> {[sighting.machine, sighting.assembly].filter(Boolean).join(", ")}
                {sighting.note && `. ${sighting.note}`}
                {sighting.origin && <span className="soft"> · from {sighting.origin}, not counted</span>}
              </span>
              {place && (
                <Link href={`/builds/${place.build}/sittings/${place.sitting}?mark=${place.mark}`}>
                  {place.buildTitle}
                  {place.at !== null && <span className="num"> {timecode(place.at)}</span>}
                </Link>
              )}
              <button
                type="button"
                className="plain"
                onClick={() =>
                  void open.change("A sighting taken back", [
                    { table: "sighting", row: { ...sighting, gone: new Date().toISOString() } },
                  ])
                }
              >
                Take it back
              </button>
            </li>
          );
        })}
        {entry.sightings.length === 0 && <li>Nobody has met it here yet.</li>}
      </ul>
      <div
        className="answers row-of-buttons"
        role="group"
        aria-label="Add a sighting of today"
        style={{ marginTop: 12 }}
      >
        <span className="soft small">Today, on no build:</span>
        {outcomes.map((outcome) => (
          <button key={outcome.value} type="button" className="plain" onClick={() => add(outcome)}>
            {outcome.label}
          </button>
        ))}
      </div>
    </section>
  );
}

/** What it is told together with, may be the same as, or takes the place of. */
function Others({ open, gotcha, entry }: { open: OpenBook; gotcha: Gotcha; entry: Entry | undefined }) {
  const id = useId();
  const same = useMemo(() => {
    const ids = alikes(open.book.gotchas, gotcha).map((one) => one.ids[1]);
    return ids.flatMap((one) => open.book.gotchas.find((other) => other.id === one) ?? []).slice(0, 5);
  }, [open.book, gotcha]);
  const standing = [...entriesOf(open.book).values()].filter((one) => one.gotcha.id !== gotcha.id);
  const set = (label: string, row: Gotcha) => void open.change(label, [{ table: "gotcha", row }]);
  return (
    <section className="block">
      <h2>Others</h2>
      <ul className="lines">
        {entry?.joined.map((one) => (
          <li key={one.id}>
            <span className="grow">
              Told with it: <Link href={`/gotchas/${encodeURIComponent(one.id)}`}>{one.symptom}</Link>
            </span>
            <button
              type="button"
              className="plain"
              onClick={() => set("Split off again", { ...one, joinedInto: null })}
            >
              Split it off again
            </button>
          </li>
        ))}
        {same.map((one) => (
          <li key={one.id}>
            <span className="grow">
              Perhaps the same: <Link href={`/gotchas/${encodeURIComponent(one.id)}`}>{one.symptom}</Link>
            </span>
            <button
              type="button"
              className="plain"
              onClick={() => set("Joined", { ...one, joinedInto: gotcha.id })}
            >
              Join it into this one
            </button>
            <button
              type="button"
              className="plain"
              onClick={() => set("Not the same", { ...gotcha, notSame: [...gotcha.notSame, one.id] })}
            >
              Not the same
            </button>
          </li>
        ))}
        {gotcha.supersedes.map((old) => (
          <li key={old}>
            <span className="grow">
              Takes the place of{" "}
              <Link href={`/gotchas/${encodeURIComponent(old)}`}>
                {open.book.gotchas.find((one) => one.id === old)?.symptom ?? "one that is not here"}
              </Link>
            </span>
            <button
              type="button"
              className="plain"
              onClick={() =>
                set("Takes no place", {
                  ...gotcha,
                  supersedes: gotcha.supersedes.filter((one) => one !== old),
                })
              }
            >
              No longer
            </button>
          </li>
        ))}
      </ul>
      {standing.length > 0 && (
        <div style={{ maxWidth: 520, marginTop: 12 }}>
          <label htmlFor={id}>It takes the place of</label>
          <select
            id={id}
            value=""
            onChange={(event) =>
              set("Takes the place of another", {
                ...gotcha,
                supersedes: [...gotcha.supersedes, event.target.value],
              })
            }
          >
            <option value="">none of the others</option>
            {standing
              .filter((one) => !gotcha.supersedes.includes(one.gotcha.id))
              .map((one) => (
                <option key={one.gotcha.id} value={one.gotcha.id}>
                  {one.gotcha.symptom}
                </option>
              ))}
          </select>
        </div>
      )}
    </section>
  );
}
