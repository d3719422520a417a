"use client";
import { changeBalloon, withoutBalloon } from "#lib/figure/change.ts";
import type { Balloon, Drawing } from "#lib/figure/index.ts";
import type { PartLine } from "#lib/procedure/index.ts";
import { KindSign } from "../parts/kind-sign.tsx";
import { DeedButton } from "./deed-button.tsx";
import type { InHand } from "./pointing.ts";
import { sayPlace } from "./say-place.ts";

/** What a list of the figure can do: take something in hand to be pointed at, or change the drawing at once. */
export interface FigureDeeds {
  take: (hand: InHand) => void;
  draw: (label: string, change: (drawing: Drawing) => Drawing) => void;
}

/** The parts that balloons can point at, those of the step first, each with its balloons. */
export function PartsOfFigure({
  own,
  others,
  drawing,
  undrawn,
  numberOf,
  step,
  deeds,
}: {
  own: PartLine[];
  others: PartLine[];
  drawing: Drawing;
  /** Ids of what points outside the shown picture. */
  undrawn: ReadonlySet<string>;
  /** The number of what a balloon points at; null for a part that is gone. */
  numberOf: (item: string) => number | null;
  step: number | undefined;
  deeds: FigureDeeds;
}) {
  const balloonsOf = (part: PartLine) =>
    drawing.balloons.filter((one) => numberOf(one.item) === part.balloon);
  const rows = (parts: PartLine[]) =>
    parts.map((part) => (
      <PartRow key={part.item} part={part} balloons={balloonsOf(part)} undrawn={undrawn} deeds={deeds} />
    ));
  const strays = drawing.balloons.filter((one) => numberOf(one.item) === null);
  const drawnOthers = others.filter((part) => balloonsOf(part).length > 0);
  const away = others.filter((part) => balloonsOf(part).length === 0);
  return (
    <section className="figure-block" aria-labelledby="figure-parts">
      <h2 id="figure-parts">Parts</h2>
      {own.length === 0 && (
        <p className="soft small">
          {step === undefined ? "This picture is in no step yet." : `Step ${step} names no part.`}
        </p>
      )}
      <ul className="lines">
        {rows([...own, ...drawnOthers])}
        {strays.map((balloon) => (
          <Stray key={balloon.id} balloon={balloon} deeds={deeds} />
        ))}
      </ul>
      {away.length > 0 && (
        <details>
          <summary>Other parts of this build, {away.length}</summary>
          <ul className="lines">{rows(away)}</ul>
        </details>
      )}
    </section>
  );
}

function PartRow({
  part,
  balloons,
  undrawn,
  deeds,
}: {
  part: PartLine;
  balloons: Balloon[];
  undrawn: ReadonlySet<string>;
  deeds: FigureDeeds;
}) {
  const { item, name } = part;
  return (
    <li className="figure-row">
      <span className="sign light">
        <span className="item">{part.balloon}</span>
        {name}
      </span>
      <DeedButton
        words={balloons.length === 0 ? "Point at it" : "Point at another"}
        of={name}
        onClick={() => deeds.take({ deed: "balloon", item, name })}
      />
      {balloons.map((balloon) => (
        <BalloonOf
          key={balloon.id}
          balloon={balloon}
          name={name}
          outside={undrawn.has(balloon.id)}
          deeds={deeds}
        />
      ))}
    </li>
  );
}

function BalloonOf({
  balloon,
  name,
  outside,
  deeds,
}: {
  balloon: Balloon;
  name: string;
  outside: boolean;
  deeds: FigureDeeds;
}) {
  const { id, seat, at } = balloon;
  return (
    <div className="drawn-line">
      <span className="small soft">
        {outside
          ? "Points outside what is shown of the picture; it does not print"
          : `Points ${sayPlace(at)} of the whole picture; balloon ${seat ? "moved by hand" : "placed by rule"}`}
      </span>
      <span className="row-of-buttons">
        <DeedButton
          words="Point elsewhere"
          of={name}
          onClick={() => deeds.take({ deed: "target", balloon: id, name })}
        />
        <DeedButton
          words="Move the balloon"
          of={name}
          onClick={() => deeds.take({ deed: "seat", balloon: id, name })}
        />
        {seat && (
          <DeedButton
            words="Back to the rule"
            of={name}
            onClick={() =>
              deeds.draw(`Balloon back to its rule: ${name}`, (drawing) =>
                changeBalloon(drawing, id, { seat: null }),
              )
            }
          />
        )}
        <TakeOff balloon={balloon} name={name} deeds={deeds} />
      </span>
    </div>
  );
}

function TakeOff({ balloon, name, deeds }: { balloon: Balloon; name: string; deeds: FigureDeeds }) {
  return (
    <DeedButton
      words="Take off"
      of={name}
      onClick={() =>
        deeds.draw(`Balloon taken off: ${name}`, (drawing) => withoutBalloon(drawing, balloon.id))
      }
    />
  );
}

/** A balloon whose part no mark speaks of any more: it has no number, and prints none. */
function Stray({ balloon, deeds }: { balloon: Balloon; deeds: FigureDeeds }) {
  const name = balloon.item.replace(/^name:/, "");
  return (
    <li className="figure-row">
      <KindSign mark={{ kind: "part", fields: { v: 1 } }} />
      <span>A balloon whose part is no longer in the parts list. It does not print.</span>
      <TakeOff balloon={balloon} name={name} deeds={deeds} />
    </li>
  );
}
