"use client";
import Link from "next/link";
import { present, type Still } from "#lib/build/index.ts";
import { type Step, stepsOf } from "#lib/procedure/index.ts";
import { SheetPage } from "../parts/sheet-page.tsx";
import { useDerived, useSessionView } from "../session/provider.tsx";
import { lackOfStill, partsWithoutBalloon } from "./lacks.ts";
import { Thumbnail } from "./thumbnail.tsx";
import "./figures.css";

/** All figures of a build by the steps they print with, and what each lacks. */
export function FiguresList() {
  const { document } = useSessionView();
  const { procedure } = useDerived();
  const steps = stepsOf(procedure);
  const stills = present(document.stills).filter((still) => still.sha256 !== "");
  const inSteps = new Set(steps.flatMap((step) => step.stills.map((figure) => figure.still)));
  const loose = stills.filter((still) => !inSteps.has(still.id));
  return (
    <SheetPage
      title="Figures"
      about={`${stills.length} pictures in ${steps.length} steps · ${steps.filter((step) => step.stills.length === 0).length} steps without one`}
    >
      <ol className="figure-steps">
        {steps.map((step) => (
          <StepRow key={step.mark} step={step} stills={stills} />
        ))}
      </ol>
      {loose.length > 0 && (
        <section className="block" aria-labelledby="loose-figures">
          <h2 id="loose-figures">In no step</h2>
          <ul className="figure-cards">
            {loose.map((still) => (
              <Card key={still.id} still={still} fallback="picture" />
            ))}
          </ul>
        </section>
      )}
    </SheetPage>
  );
}

function StepRow({ step, stills }: { step: Step; stills: Still[] }) {
  const { document } = useSessionView();
  const own = step.stills
    .map((figure) => stills.find((still) => still.id === figure.still))
    .filter((still) => still !== undefined);
  const without = partsWithoutBalloon(step, own);
  const mark = document.marks.find((one) => one.id === step.mark);
  return (
    <li className="block">
      <h2>
        {step.number} <span className="figure-step-title">{step.title}</span>
      </h2>
      {own.length === 0 && mark && (
        <p>
          No picture.{" "}
          <Link
            href={`/builds/${document.build.id}/sittings/${mark.sittingId}?mark=${mark.id}`}
            prefetch={false}
          >
            Take one in the log<span className="hidden-words"> for step {step.number}</span>
          </Link>
        </p>
      )}
      {own.length > 0 && (
        <ul className="figure-cards">
          {own.map((still, place) => (
            <Card key={still.id} still={still} fallback={`picture ${place + 1}`} step={step.number} />
          ))}
        </ul>
      )}
      {own.length > 0 && without.length > 0 && (
        <p className="soft small">Without a balloon: {without.join(", ")}.</p>
      )}
    </li>
  );
}

function Card({ still, fallback, step }: { still: Still; fallback: string; step?: number }) {
  const { document } = useSessionView();
  const lacks = lackOfStill(still);
  return (
    <li>
      <Link href={`/builds/${document.build.id}/figures/${still.id}`} prefetch={false}>
        <Thumbnail still={still} />
        <span>
          {still.drawing.view || fallback}
          {step !== undefined && <span className="hidden-words"> of step {step}</span>}
        </span>
      </Link>
      {lacks.length > 0 && <p className="soft small">{lacks.join("; ")}</p>}
    </li>
  );
}
