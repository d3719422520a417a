"use client";
import Link from "next/link";
import { useRouter } from "next/navigation";
import { useId, useState } from "react";
import { present, type Still } from "#lib/build/index.ts";
import type { Mark } from "#lib/mark/index.ts";
import { useDerived, useSession, useSessionView } from "../session/provider.tsx";
import { DeedButton } from "./deed-button.tsx";
import { addView, moveView } from "./deeds.ts";
import { Thumbnail } from "./thumbnail.tsx";
import { useViews } from "./use-figure.ts";

/** All views of the step, in the order in which they print; each movable among those of its mark. */
export function Views({ still }: { still: Still }) {
  const session = useSession();
  const { document } = useSessionView();
  const { stepOf } = useDerived();
  const views = useViews(still);
  const step = stepOf.get(still.markId);
  const home = `/builds/${document.build.id}`;
  const mark = document.marks.find((one) => one.id === still.markId);
  return (
    <section className="figure-block" aria-labelledby="figure-views">
      <h2 id="figure-views">{step ? `Views of step ${step.number}` : "Views of this mark"}</h2>
      <ol className="figure-views">
        {views.map((view, place) => {
          const name = view.drawing.view || `picture ${place + 1}`;
          const beside = (by: -1 | 1) => views[place + by]?.markId === view.markId;
          return (
            <li key={view.id}>
              <Link
                href={`${home}/figures/${view.id}`}
                prefetch={false}
                aria-current={view.id === still.id ? "page" : undefined}
              >
                <Thumbnail still={view} />
                {name}
              </Link>
              <span className="row-of-buttons">
                {beside(-1) && (
                  <DeedButton words="Earlier" of={name} onClick={() => moveView(session, view, -1)} />
                )}
                {beside(1) && (
                  <DeedButton words="Later" of={name} onClick={() => moveView(session, view, 1)} />
                )}
              </span>
            </li>
          );
        })}
      </ol>
      {mark && <Another mark={mark} />}
      {mark && (
        <p className="small">
          <Link href={`${home}/sittings/${mark.sittingId}?mark=${mark.id}`}>
            Take another from the film, in the log
          </Link>
        </p>
      )}
    </section>
  );
}

/** Another still of the build, shown here too as a view of its own. */
function Another({ mark }: { mark: Mark }) {
  const session = useSession();
  const router = useRouter();
  const { document } = useSessionView();
  const { stepOf } = useDerived();
  const [chosen, setChosen] = useState("");
  const id = useId();
  const stills = present(document.stills)
    .filter((one) => one.markId !== mark.id && one.sha256 !== "")
    .map((one) => ({ still: one, step: stepOf.get(one.markId)?.number }))
    .sort((a, b) => (a.step ?? 0) - (b.step ?? 0));
  if (stills.length === 0) return null;
  const add = () => {
    const from = stills.find((one) => one.still.id === chosen)?.still;
    if (!from) return;
    const added = addView(session, mark, from);
    router.push(`/builds/${document.build.id}/figures/${added.id}`);
  };
  return (
    <div className="another-view">
      <div>
        <label htmlFor={id}>Another still of this build, shown here too</label>
        <select id={id} value={chosen} onChange={(event) => setChosen(event.target.value)}>
          <option value="">choose one</option>
          {stills.map(({ still, step }) => (
            <option key={still.id} value={still.id}>
              {step === undefined ? "in no step" : `step ${step}`}: {brief(still.alt)}
            </option>
          ))}
        </select>
      </div>
      <button type="button" className="plain" disabled={chosen === ""} onClick={add}>
        Add it as a view
      </button>
    </div>
  );
}

function brief(words: string): string {
  const text = words.trim() || "without words yet";
  return text.length > 60 ? `${text.slice(0, 58)}…` : text;
}
