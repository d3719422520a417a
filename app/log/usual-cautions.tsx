"use client";
import { type Mark, signalWord, wordsOf } from "#lib/mark/index.ts";
import { type Procedure, type Step, stepsOf } from "#lib/procedure/index.ts";
import { cautionsFor, type UsualCaution } from "#lib/reference/hazards/index.ts";
import { useDerived, useSession } from "../session/provider.tsx";
import { addUsualCaution } from "./deeds.ts";

/** What usually is said of hazards that this mark names and no caution up to its step speaks of. Put in when asked. */
export function UsualCautions({ mark }: { mark: Mark }) {
  const session = useSession();
  const { procedure, stepOf } = useDerived();
  const step = stepOf.get(mark.id);
  if (!step || mark.kind === "caution") return null;
  const offered = cautionsFor(wordsOfMark(mark), warnedUpTo(procedure, step));
  return offered.map((usual) => (
    <details className="usual-caution" key={usual.name}>
      <summary>Usually said of: {usual.name}</summary>
      <Said usual={usual} />
      <button type="button" onClick={() => addUsualCaution(session, mark, step.mark, usual)}>
        Put this caution before the step
      </button>
    </details>
  ));
}

function Said({ usual }: { usual: UsualCaution }) {
  const { hazard, consequence, avoid, defer, source, harms, severity, likelihood } = usual;
  const word = signalWord({ v: 1, harms, severity, likelihood });
  return (
    <>
      <p>
        {word && <b className={`signal-word ${word}`}>{word}</b>} {hazard}. {consequence} {avoid}
      </p>
      {defer && <p>{defer}</p>}
      <p className="soft small">Source: {source}</p>
    </>
  );
}

function wordsOfMark(mark: Mark): string {
  return ["words", "detail", "item", "note"].map((field) => wordsOf(mark, field)).join(". ");
}

/** What cautions say up to a step: once given, a caution holds for what follows. */
function warnedUpTo(procedure: Procedure, { number }: Step): string[] {
  return stepsOf(procedure)
    .filter((step) => step.number <= number)
    .flatMap((step) => step.cautions.map(({ hazard, avoid }) => `${hazard} ${avoid}`));
}
