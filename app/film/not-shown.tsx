"use client";
import Link from "next/link";
import { stepsOf } from "#lib/procedure/index.ts";
import { useDerived, useSessionView } from "../session/provider.tsx";

/** What was filmed and fell out of the film: steps, and how many marks. */
export function NotShown() {
  const { document } = useSessionView();
  const { procedure } = useDerived();
  if (!procedure.film) return null;
  const steps = stepsOf(procedure).filter(({ moment }) => moment?.film?.length === 0);
  const marks = procedure.moments.filter(({ moment }) => moment.film?.length === 0).length;
  const all = procedure.moments.length;
  return (
    <section className="block" aria-label="What is not in the film">
      <h2>What is not in the film</h2>
      <p>
        {marks === 0
          ? `Each of the ${all} marked moments is in the film.`
          : `Of ${all} marked moments ${marks} ${marks === 1 ? "is" : "are"} not in the film.`}
      </p>
      {steps.length > 0 && (
        <ul className="lines">
          {steps.map(({ mark, number, title, moment }) => {
            const sitting = document.marks.find((one) => one.id === mark)?.sittingId;
            return (
              <li key={mark}>
                <span className="grow">
                  <Link href={`/builds/${document.build.id}/sittings/${sitting}?mark=${mark}`}>
                    Step {number}, {title || "no words yet"}
                  </Link>
                </span>
                <span className="soft small">
                  {moment?.recordingName} at <span className="num">{moment?.written}</span>
                </span>
              </li>
            );
          })}
        </ul>
      )}
    </section>
  );
}
