"use client";
import Link from "next/link";
import { useId, useState } from "react";
import { present } from "#lib/build/index.ts";
import { open } from "#lib/finding/index.ts";
import { releasesInOrder } from "#lib/publish/release/history.ts";
import { nextRevision } from "#lib/publish/release/revision.ts";
import type { Row, TableName } from "#lib/store/tables.ts";
import { send, Trouble } from "../parts/send.ts";
import { SheetPage } from "../parts/sheet-page.tsx";
import { useDerived, useSession, useSessionView } from "../session/provider.tsx";
import { Differences } from "./differences.tsx";
import { ReleaseLine } from "./release-line.tsx";

/** The releases of a build: the next one, and what became of those that there are. */
export function ReleaseSheet() {
  const { document } = useSessionView();
  const releases = releasesInOrder(document).reverse();
  return (
    <SheetPage title="Releases">
      <NextRelease />
      <section className="block" aria-labelledby="released-title">
        <h2 id="released-title">Released</h2>
        {releases.length === 0 && (
          <p>Nothing has been released yet. What is printed says so on every page.</p>
        )}
        {releases.map((release) => (
          <ReleaseLine key={release.id} release={release} />
        ))}
      </section>
    </SheetPage>
  );
}

/** The next release, and what still stands in its way. */
function NextRelease() {
  const session = useSession();
  const { document } = useSessionView();
  const { findings } = useDerived();
  const releases = releasesInOrder(document);
  const latest = releases.at(-1);
  const found = open(findings).filter((one) => one.severity === "wrong");
  const wrong = found.length;
  const mistakes = present(document.errata).filter(
    (one) => one.disposition === "mistake" && one.mendedIn === null,
  );
  const [changed, setChanged] = useState("");
  const [again, setAgain] = useState("");
  const [notMended, setNotMended] = useState<ReadonlySet<string>>(new Set());
  const [id, setId] = useState(() => crypto.randomUUID());
  const [state, setState] = useState<"resting" | "releasing" | string>("resting");
  const fields = { changed: useId(), again: useId() };
  const revision = nextRevision(document.releases.map((one) => one.revision));
  const release = async () => {
    setState("releasing");
    try {
      await session.settled();
      const mended = mistakes.filter((one) => !notMended.has(one.id)).map((one) => one.id);
      const asked = { id, build: document.build.id, changed: changed.trim(), again: again.trim(), mended };
      const { rows } = await send<{ rows: { table: TableName; row: Row }[] }>("/release", asked);
      session.take(rows);
      setChanged("");
      setAgain("");
      setId(crypto.randomUUID());
      setState("resting");
    } catch (error) {
      setState(error instanceof Trouble ? error.message : "It did not work. Try again.");
    }
  };
  return (
    <section className="block" aria-labelledby="next-title">
      <h2 id="next-title">Revision {revision}</h2>
      {wrong > 0 && (
        <div className="finding wrong" role="note">
          {wrong === 1 ? "One finding says" : `${wrong} findings say`} that something is wrong. It is mended,
          or answered with a reason, before the procedure is released.{" "}
          <Link href={`/builds/${document.build.id}/findings`}>Show them</Link>
          <ul>
            {found.slice(0, 8).map((one) => (
              <li key={one.key}>{one.found}</li>
            ))}
            {wrong > 8 && <li>and {wrong - 8} more</li>}
          </ul>
        </div>
      )}
      {latest && (
        <Differences
          key={latest.id}
          from={latest.id}
          to={null}
          says={`What differs from revision ${latest.revision}`}
        />
      )}
      <form
        style={{ maxWidth: 720 }}
        onSubmit={(event) => {
          event.preventDefault();
          void release();
        }}
      >
        {latest && (
          <>
            <label htmlFor={fields.changed}>What has changed since revision {latest.revision}</label>
            <textarea
              id={fields.changed}
              rows={2}
              value={changed}
              onChange={(event) => setChanged(event.target.value)}
            />
            <label htmlFor={fields.again}>
              What somebody who followed revision {latest.revision} has to do again; empty for nothing
            </label>
            <textarea
              id={fields.again}
              rows={2}
              value={again}
              onChange={(event) => setAgain(event.target.value)}
            />
          </>
        )}
        {mistakes.length > 0 && (
          <fieldset className="ticks">
            <legend>Reported mistakes that are mended in it</legend>
            {mistakes.map((one) => (
              <label key={one.id} className="tick-line">
                <input
                  type="checkbox"
                  checked={!notMended.has(one.id)}
                  onChange={(event) => {
                    const next = new Set(notMended);
                    if (event.target.checked) next.delete(one.id);
                    else next.add(one.id);
                    setNotMended(next);
                  }}
                />
                {one.value || one.words}
              </label>
            ))}
          </fieldset>
        )}
        <button
          type="submit"
          className="main"
          disabled={wrong > 0 || state === "releasing"}
          style={{ marginTop: 14 }}
        >
          {state === "releasing" ? "Releasing…" : `Release revision ${revision}`}
        </button>
        <p className="soft small" style={{ marginTop: 8 }}>
          All its files are made and kept as they are today. What is changed afterwards does not change them.
        </p>
        {state !== "resting" && state !== "releasing" && (
          <p className="finding" role="alert">
            {state}
          </p>
        )}
      </form>
    </section>
  );
}
