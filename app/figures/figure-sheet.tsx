"use client";
import Link from "next/link";
import { present, type Still } from "#lib/build/index.ts";
import { Conflicts } from "../log/conflicts.tsx";
import { Saved } from "../log/keys-panel.tsx";
import { SheetPage } from "../parts/sheet-page.tsx";
import { BuildTitleBlock } from "../parts/title-block.tsx";
import { useSessionView } from "../session/provider.tsx";
import { AltWords } from "./alt-words.tsx";
import { DimensionsOfFigure } from "./dimensions-of-figure.tsx";
import { useFigureNames } from "./figure-lines.ts";
import { PartsOfFigure } from "./parts-of-figure.tsx";
import { ShownFields } from "./shown-fields.tsx";
import { Stage } from "./stage.tsx";
import { UndoButtons } from "./undo-buttons.tsx";
import { useSubject } from "./use-figure.ts";
import { usePointing } from "./use-pointing.ts";
import { Views } from "./views.tsx";
import "./figures.css";

/** A figure: the still with what is drawn on it, and everything that can be changed about it. */
export function FigureSheet({ stillId }: { stillId: string }) {
  const { document } = useSessionView();
  const still = present(document.stills).find((one) => one.id === stillId);
  if (still && still.sha256 !== "") return <Figure key={still.id} still={still} />;
  return (
    <SheetPage title="No such figure">
      <p>
        {still
          ? "Its picture is missing. "
          : "There is no still at this address; it may have been struck out. "}
        <Link href={`/builds/${document.build.id}/figures`}>All figures of this build</Link>
      </p>
    </SheetPage>
  );
}

function Figure({ still }: { still: Still }) {
  const { document } = useSessionView();
  const { drawing } = still;
  const subject = useSubject(still);
  const { step } = subject;
  const { numberOf } = useFigureNames(still);
  const pointing = usePointing(still);
  const { deeds } = pointing;
  const undrawn = new Set(pointing.stage.lines.undrawn);
  const home = `/builds/${document.build.id}`;
  return (
    <>
      <main className="page figure-page">
        <p className="soft small" style={{ margin: 0 }}>
          {document.build.title} · <Link href={`${home}/figures`}>All figures</Link> ·{" "}
          <Link href={step ? `${home}/procedure#step-${step.number}` : `${home}/procedure`}>Procedure</Link>
        </p>
        <h1>
          {step ? `Figure of step ${step.number}` : "Figure"}
          {drawing.view !== "" && `: ${drawing.view}`}
        </h1>
        {step && <p className="soft">{step.title}</p>}
        <Conflicts />
        <div className="figure-columns">
          <div className="figure-picture" ref={pointing.measure}>
            <Stage {...pointing.stage} still={still} />
            <p className="figure-said" role="status">
              {pointing.said}
            </p>
            <div className="row-of-buttons">
              <UndoButtons onStep={pointing.hush} />
              {pointing.hand && (
                <button type="button" className="plain" onClick={pointing.stage.onLeave}>
                  Put it away
                </button>
              )}
              <Saved />
            </div>
            <p className="soft small" id="figure-keys">
              Choose a part or a measurement, then click, touch or use the keys on the picture: arrow keys
              move the cross-hair, with Shift further; Enter sets, Esc puts away. Balloons, points and ends
              can be dragged.
            </p>
          </div>
          <div className="figure-lists">
            <PartsOfFigure
              {...subject.parts}
              drawing={drawing}
              undrawn={undrawn}
              numberOf={numberOf}
              step={step?.number}
              deeds={deeds}
            />
            <DimensionsOfFigure {...subject.measurements} drawing={drawing} undrawn={undrawn} deeds={deeds} />
            <AltWords still={still} step={step} />
            <ShownFields drawing={drawing} size={still} deeds={deeds} />
            <Views still={still} />
          </div>
        </div>
      </main>
      <BuildTitleBlock />
    </>
  );
}
