"use client";
import Link from "next/link";
import { useMemo } from "react";
import type { Gotcha } from "#lib/build/index.ts";
import { alikes, answerOf, assemblyOf, type BriefLine, gotchaOfMark } from "#lib/gotcha/index.ts";
import { type Mark, wordsOf } from "#lib/mark/index.ts";
import { useSession, useSessionView } from "../session/provider.tsx";
import { useApplying } from "./use-brief.ts";

/** A gotcha mark becomes a gotcha that outlives the build, or one more sighting of one that is known. */
export function IntoBook({ mark }: { mark: Mark }) {
  const session = useSession();
  const { document } = useSessionView();
  const lines = useApplying();
  const told = document.sightings.find((one) => one.gone === null && one.markId === mark.id);
  const words = wordsOf(mark);
  const same = useMemo(
    () => alike(lines ?? [], gotchaOfMark(document, mark, { id: "", at: "" })),
    [lines, document, mark],
  );
  if (told) {
    return (
      <p className="into-book">
        In the gotcha book: <Link href={`/gotchas/${encodeURIComponent(told.gotchaId)}`}>its page</Link>{" "}
        <button
          type="button"
          className="plain"
          onClick={() =>
            session.change("A sighting taken back", [
              { table: "sighting", row: { ...told, gone: new Date().toISOString() } },
            ])
          }
        >
          Take it out again
        </button>
      </p>
    );
  }
  if (words === "") return null;
  const at = new Date().toISOString();
  const sighting = (gotchaId: string) =>
    answerOf(document, {
      id: crypto.randomUUID(),
      gotchaId,
      outcome: "happened",
      at,
      assembly: assemblyOf(document, mark)?.name ?? document.build.title,
      markId: mark.id,
    });
  const put = () => {
    const made = gotchaOfMark(document, mark, { id: crypto.randomUUID(), at });
    const assembly = assemblyOf(document, mark)?.name ?? document.build.title;
    const appliesTo = made.appliesTo.map((scope) => ({ ...scope, assembly: scope.assembly || assembly }));
    session.change(`Into the gotcha book: ${words}`.slice(0, 500), [
      { table: "gotcha", row: { ...made, appliesTo } },
      { table: "sighting", row: sighting(made.id) },
    ]);
  };
  return (
    <div className="into-book">
      {same.map(({ entry: { gotcha } }) => (
        <p key={gotcha.id}>
          Perhaps the book has it: “{gotcha.symptom}”{" "}
          <button
            type="button"
            className="plain"
            onClick={() =>
              session.change(`Seen again: ${gotcha.symptom}`.slice(0, 500), [
                { table: "sighting", row: sighting(gotcha.id) },
              ])
            }
          >
            It is this one
          </button>
        </p>
      ))}
      <button type="button" className="plain" onClick={put}>
        Put it in the gotcha book
      </button>
    </div>
  );
}

/** What in the book may say what this mark says. */
function alike(lines: readonly BriefLine[], written: Gotcha): BriefLine[] {
  return alikes(
    lines.map((line) => line.entry.gotcha),
    written,
  )
    .slice(0, 3)
    .flatMap((one) => lines.find((line) => line.entry.gotcha.id === one.ids[1]) ?? []);
}
