"use client";
import Link from "next/link";
import { useId, useState } from "react";
import { hintsFor } from "#lib/gotcha/index.ts";
import {
  characteristicValues,
  type Field,
  type KindName,
  kindOf,
  kinds,
  type Mark,
  typedOf,
  wordsOf,
} from "#lib/mark/index.ts";
import { timecode } from "#lib/time/index.ts";
import { PartHints } from "../gotchas/brief.tsx";
import { IntoBook } from "../gotchas/into-book.tsx";
import { useApplying } from "../gotchas/use-brief.ts";
import { FindingNote } from "../parts/finding-note.tsx";
import { useDerived, useSession, useSessionView } from "../session/provider.tsx";
import { changeMark, setCloses, sortInto, strikeOut } from "./deeds.ts";
import { type DraftDeeds, DraftNote } from "./draft-note.tsx";
import type { LogDraft } from "./drafts.ts";
import type { Picture } from "./picture.ts";
import { Stills } from "./stills.tsx";
import { FieldOf } from "./typed.tsx";
import { UsualCautions } from "./usual-cautions.tsx";

/**
 * The fields of the row in hand, reached and left by the keyboard alone. Leaving it half-way keeps it half-way. Writing in
 * those of a draft accepts it first: the field then writes into the mark, under the same id.
 */
export function Hand({
  mark,
  picture,
  draft,
  draftDeeds,
}: {
  mark: Mark;
  picture: Picture | null;
  draft: LogDraft | undefined;
  draftDeeds: DraftDeeds;
}) {
  const session = useSession();
  const kindId = useId();
  return (
    <div className="hand-body" data-hand onChangeCapture={draft && (() => draftDeeds.keep(draft))}>
      {draft && <DraftNote draft={draft} deeds={draftDeeds} />}
      {!draft && mark.fields.said && <p className="soft small said-words">Said: “{mark.fields.said}”</p>}
      <div className="fields">
        <div>
          <label htmlFor={kindId}>Kind</label>
          <select
            id={kindId}
            value={mark.kind}
            data-field="kind"
            onChange={(event) => sortInto(session, mark.id, event.target.value as KindName | "")}
          >
            {kinds.map((one) => (
              <option key={one.kind} value={one.kind}>
                {one.word}
              </option>
            ))}
          </select>
        </div>
        <FieldsOf key={`${mark.id} ${mark.kind}`} mark={mark} />
        {!draft && <Closes mark={mark} />}
      </div>
      {!draft && mark.kind === "part" && <Hints mark={mark} />}
      {!draft && mark.kind === "gotcha" && <IntoBook mark={mark} />}
      {!draft && <OfMark mark={mark} picture={picture} />}
    </div>
  );
}

/** What a mark has and a draft has not: findings, stills, and what can be done with it. */
function OfMark({ mark, picture }: { mark: Mark; picture: Picture | null }) {
  const session = useSession();
  const { findingsOf } = useDerived();
  return (
    <>
      {(findingsOf.get(mark.id) ?? []).map((finding) => (
        <FindingNote key={finding.key} finding={finding} />
      ))}
      <LookUp mark={mark} />
      <UsualCautions mark={mark} />
      <Stills mark={mark} picture={picture} />
      <div className="row-of-buttons" style={{ marginTop: 14 }}>
        {mark.at !== null && picture && (
          <button type="button" className="plain" onClick={() => picture.goTo(mark.at ?? 0)}>
            Show {timecode(mark.at)}
          </button>
        )}
        {mark.at !== null && picture && (
          <button
            type="button"
            className="plain"
            onClick={() =>
              changeMark(session, mark.id, "Moved to another frame", { at: picture.moment(), until: null })
            }
          >
            Move to the frame shown
          </button>
        )}
        <button type="button" className="plain" onClick={() => strikeOut(session, mark.id)}>
          Strike out
        </button>
      </div>
    </>
  );
}

/** The values of a measurement as questions to the reference; below the fields, so that Tab goes from field to field. */
function LookUp({ mark }: { mark: Mark }) {
  const typed = new Set(
    characteristicValues.map((name) => typedOf(mark, name)).filter((text) => text !== ""),
  );
  if (mark.kind !== "measurement" || typed.size === 0) return null;
  return (
    <p className="small">
      In the reference:{" "}
      {[...typed].map((text) => (
        <Link
          key={text}
          href={`/reference?q=${encodeURIComponent(text)}`}
          prefetch={false}
          style={{ marginRight: 14 }}
        >
          {text}
        </Link>
      ))}
    </p>
  );
}

/** What the gotcha book says of the part named here, while it is being written. */
function Hints({ mark }: { mark: Mark }) {
  const lines = useApplying();
  return <PartHints lines={hintsFor(lines ?? [], wordsOf(mark, "item"))} />;
}

function isFilled(mark: Mark, { name, form }: Field): boolean {
  return (form === "quantity" ? typedOf(mark, name) : wordsOf(mark, name)) !== "";
}

/** The fields of a kind; those asked for only now and then are one step away, unless they were filled in already. */
function FieldsOf({ mark }: { mark: Mark }) {
  const { fields, word } = kindOf(mark.kind);
  const [away] = useState(() => fields.filter((field) => field.seldom && !isFilled(mark, field)));
  return (
    <>
      {fields
        .filter((field) => !away.includes(field))
        .map((field) => (
          <FieldOf key={field.name} mark={mark} field={field} />
        ))}
      {away.length > 0 && (
        <details className="wide">
          <summary>More about this {word.toLowerCase()}</summary>
          <div className="fields" style={{ marginTop: 12 }}>
            {away.map((field) => (
              <FieldOf key={field.name} mark={mark} field={field} />
            ))}
          </div>
        </details>
      )}
    </>
  );
}

/** Deferred items of this machine that this mark closes, and those still open that it could. */
function Closes({ mark }: { mark: Mark }) {
  const session = useSession();
  const { document } = useSessionView();
  const { procedure } = useDerived();
  const closes = mark.fields.closes ?? [];
  // What other builds of the machine left open may be put right here.
  const foreign = document.foreign.filter((one) => one.kind === "deferred" || closes.includes(one.id));
  const lines = procedure.deferred.filter(
    (line) => line.mark !== mark.id && (line.closedBy === null || closes.includes(line.mark)),
  );
  if (lines.length + foreign.length === 0) return null;
  const options = [...lines.map((line) => ({ id: line.mark, words: line.what })), ...foreign];
  return (
    <fieldset className="wide closes">
      <legend className="small soft">This mark closes</legend>
      {options.map(({ id, words }) => (
        <label key={id} style={{ padding: "6px 0", color: "inherit", fontSize: "1rem" }}>
          <input
            type="checkbox"
            checked={closes.includes(id)}
            onChange={(event) =>
              setCloses(
                session,
                mark.id,
                event.target.checked ? [...closes, id] : closes.filter((one) => one !== id),
              )
            }
          />
          {words || "a deferred item without words"}
        </label>
      ))}
    </fieldset>
  );
}
