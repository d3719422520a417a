"use client";
import Link from "next/link";
import { useId, useRef, useState } from "react";
import type { Edit } from "#lib/build/index.ts";
import { type Mark, type Stage, stages } from "#lib/mark/index.ts";
import {
  mergeWithPrevious,
  moveMark,
  moveStep,
  restage,
  type Step,
  setEdit,
  splitAt,
} from "#lib/procedure/index.ts";
import { timecode } from "#lib/time/index.ts";
import { lineOf } from "../log/log-row.tsx";
import { useTyped } from "../log/typed.tsx";
import { KindSign } from "../parts/kind-sign.tsx";
import type { BuildSession } from "../session/build-session.ts";
import { useDerived, useSession, useSessionView } from "../session/provider.tsx";

const now = () => new Date().toISOString();

/** Writes edit rows as one command. Each says in the history what it did. */
function lay(session: BuildSession, label: string, rows: Edit[]): void {
  session.change(
    label,
    rows.map((row) => ({ table: "edit" as const, row })),
  );
}

/** What can be done to a step by hand; opened and used by the keyboard like any other part of the page. */
export function StepControls({ stepMark }: { stepMark: string }) {
  const session = useSession();
  const { document } = useSessionView();
  const { stepOf, procedure } = useDerived();
  const [open, setOpen] = useState(false);
  const box = useRef<HTMLDivElement>(null);
  const stageId = useId();
  const step = stepOf.get(stepMark);
  if (!step) return null;
  const mark = document.marks.find((one) => one.id === stepMark);
  const first = procedure.stages.find((stage) => stage.stage === step.stage)?.steps[0]?.mark === stepMark;
  const move = (by: -1 | 1) =>
    lay(session, `Step ${step.number} moved`, moveStep(session.document, stepMark, by, now()));
  return (
    <div className="step-controls no-print" ref={box}>
      <div className="row-of-buttons">
        <button
          type="button"
          className="plain"
          aria-label={`Move step ${step.number} up`}
          onClick={() => move(-1)}
        >
          Up
        </button>
        <button
          type="button"
          className="plain"
          aria-label={`Move step ${step.number} down`}
          onClick={() => move(1)}
        >
          Down
        </button>
        {!first && (
          <button
            type="button"
            className="plain"
            aria-label={`Make step ${step.number} one with the step before`}
            onClick={() =>
              lay(
                session,
                `Step ${step.number} made one with the one before`,
                mergeWithPrevious(session.document, stepMark, now()),
              )
            }
          >
            One with the step before
          </button>
        )}
        <button type="button" className="plain" aria-expanded={open} onClick={() => setOpen(!open)}>
          {open ? "Close" : `Edit step ${step.number}`}
        </button>
        {mark && (
          <Link
            className="small"
            href={`/builds/${document.build.id}/sittings/${mark.sittingId}?mark=${mark.id}`}
          >
            {mark.at === null ? "In the log" : `In the log at ${timecode(mark.at, { tenths: false })}`}
          </Link>
        )}
      </div>
      {step.stills.length > 0 && (
        <p className="small figures-of-step">
          {step.stills.map((figure, place) => (
            <Link
              key={figure.still}
              href={`/builds/${document.build.id}/figures/${figure.still}`}
              prefetch={false}
            >
              {step.stills.length === 1 ? "Balloons and views" : `Balloons and views, picture ${place + 1}`}
              <span className="hidden-words"> of step {step.number}</span>
            </Link>
          ))}
        </p>
      )}
      {open && (
        <div className="step-edit">
          <StepTitle step={step} />
          <div>
            <label htmlFor={stageId}>Stage</label>
            <select
              id={stageId}
              value={step.stage}
              onChange={(event) =>
                lay(
                  session,
                  `Step ${step.number} put under ${event.target.value}`,
                  restage(session.document, stepMark, event.target.value as Stage, now()),
                )
              }
            >
              {stages.map((stage) => (
                <option key={stage}>{stage}</option>
              ))}
            </select>
          </div>
          <MarksOfStep step={step} />
        </div>
      )}
    </div>
  );
}

function StepTitle({ step }: { step: Step }) {
  const session = useSession();
  const id = useId();
  const { text, change, flush } = useTyped(step.title, (title) => {
    if (title.trim() !== "")
      lay(
        session,
        `Step ${step.number} renamed`,
        setEdit(session.document, step.mark, "title", title, now()),
      );
  });
  const given = session.document.edits.some(
    (edit) => edit.markId === step.mark && edit.edit === "title" && edit.gone === null,
  );
  return (
    <div className="wide">
      <label htmlFor={id}>Instruction of step {step.number}, as printed</label>
      <textarea
        id={id}
        rows={1}
        value={text}
        onChange={(event) => change(event.target.value)}
        onBlur={flush}
      />
      {given && (
        <button
          type="button"
          className="plain"
          style={{ marginTop: 6 }}
          onClick={() =>
            lay(session, "Title taken back", setEdit(session.document, step.mark, "title", null, now()))
          }
        >
          Back to the words of the mark
        </button>
      )}
    </div>
  );
}

/** The marks of a step, each movable to the step before or after, and places where a new step can begin. */
function MarksOfStep({ step }: { step: Step }) {
  const session = useSession();
  const { document } = useSessionView();
  const marks = step.marks
    .map((id) => document.marks.find((one) => one.id === id))
    .filter((one): one is Mark => Boolean(one));
  const shift = (mark: Mark, by: -1 | 1) =>
    lay(session, "Mark moved to another step", moveMark(session.document, mark.id, by, now()));
  return (
    <ul className="lines wide marks-of-step" aria-label={`Marks of step ${step.number}`}>
      {marks.map((mark) => (
        <li key={mark.id}>
          <KindSign mark={mark} />
          <span className="grow">{lineOf(mark)}</span>
          {mark.id !== step.mark && (
            <span className="row-of-buttons" style={{ gap: 6 }}>
              <button
                type="button"
                className="plain"
                onClick={() => lay(session, "New step begun", splitAt(session.document, mark.id, now()))}
              >
                New step here
              </button>
              {mark.kind !== "action" && (
                <>
                  <button type="button" className="plain" onClick={() => shift(mark, -1)}>
                    To the step before
                  </button>
                  <button type="button" className="plain" onClick={() => shift(mark, 1)}>
                    To the step after
                  </button>
                </>
              )}
            </span>
          )}
        </li>
      ))}
      <Undone step={step} />
    </ul>
  );
}

/** Edits of a step that can be taken back one by one: its place, its beginning. */
function Undone({ step }: { step: Step }) {
  const session = useSession();
  const { document } = useSessionView();
  const edits = document.edits.filter(
    (edit) =>
      edit.gone === null && edit.markId === step.mark && (edit.edit === "after" || edit.edit === "split"),
  );
  return edits.map((edit) => (
    <li key={edit.id}>
      <span className="grow soft">
        {edit.edit === "after" ? "Its place was given by hand." : "It was made a step of its own by hand."}
      </span>
      <button
        type="button"
        className="plain"
        onClick={() =>
          lay(session, "Edit taken back", setEdit(session.document, edit.markId, edit.edit, null, now()))
        }
      >
        Take that back
      </button>
    </li>
  ));
}
