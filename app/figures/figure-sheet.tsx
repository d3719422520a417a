"use client";
import Link from "next/link";
import { useRef, useState } from "react";
import { present, type Still } from "#lib/build/index.ts";
import type { FigureLines, Point } from "#lib/figure/index.ts";
import { Conflicts } from "../log/conflicts.tsx";
import { Saved } from "../log/keys-panel.tsx";
import { SheetPage } from "../parts/sheet-page.tsx";
import { BuildTitleBlock } from "../parts/title-block.tsx";
import { useDerived, useSession, useSessionView } from "../session/provider.tsx";
import { AltWords } from "./alt-words.tsx";
import { draw, stillNow } from "./deeds.ts";
import { DimensionsOfFigure } from "./dimensions-of-figure.tsx";
import { figurePlace, useFigureLines, useFigureNames, useWidth } from "./figure-lines.ts";
import { type FigureDeeds, PartsOfFigure } from "./parts-of-figure.tsx";
import { type InHand, pointAt } from "./pointing.ts";
import { sayHand, sayNear, sayPlace } from "./say-place.ts";
import { ShownFields } from "./shown-fields.tsx";
import { type Held, Stage } from "./stage.tsx";
import { UndoButtons } from "./undo-buttons.tsx";
import { nameOf, useSubject } from "./use-figure.ts";
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
  const { textOf } = useFigureNames();
  const pointing = usePointing(still);
  const { deeds } = pointing;
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
              <UndoButtons />
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
            <PartsOfFigure {...subject.parts} drawing={drawing} step={step?.number} deeds={deeds} />
            <DimensionsOfFigure {...subject.measurements} drawing={drawing} textOf={textOf} deeds={deeds} />
            <AltWords still={still} step={step} />
            <ShownFields drawing={drawing} deeds={deeds} />
            <Views still={still} />
          </div>
        </div>
      </main>
      <BuildTitleBlock />
    </>
  );
}

/** What is in hand, where the cross-hair is, and what is said of both. */
function usePointing(still: Still) {
  const session = useSession();
  const { procedure } = useDerived();
  const [width, measure] = useWidth();
  const [hand, setHand] = useState<InHand | null>(null);
  const [cross, setCross] = useState<Point>({ x: 0.5, y: 0.5 });
  const [said, setSaid] = useState("");
  const stage = useRef<HTMLDivElement>(null);
  const cameFrom = useRef<HTMLElement | null>(null);
  const lines = useFigureLines(still, still.drawing, roomOf(width), 17);
  const name = (item: string) => nameOf(procedure.parts, item);
  const near = (at: Point) => sayNear(at, thingsOn(lines, still, name));

  const take = (next: InHand) => {
    cameFrom.current = document.activeElement as HTMLElement | null;
    const at = startOf(next, lines, still) ?? cross;
    setHand(next);
    setCross(at);
    setSaid(`${sayHand(next)}. Cross-hair ${sayPlace(at)}.`);
    stage.current?.focus({ preventScroll: true });
    stage.current?.scrollIntoView({ block: "nearest" });
  };
  const leave = () => {
    setHand(null);
    setSaid("Put away. Nothing was changed.");
    cameFrom.current?.focus();
  };
  const point = (at: Point, by: "keys" | "pointer") => {
    const now = stillNow(session, still.id);
    if (!hand || !now) return;
    const pointed = pointAt(hand, at, now.drawing, now, crypto.randomUUID());
    if (pointed.kind === "refused") return setSaid(pointed.words);
    if (pointed.kind === "half") {
      setHand(pointed.hand);
      return setSaid(`${sayHand(pointed.hand)}. Cross-hair ${sayPlace(at)}.`);
    }
    draw(session, still.id, pointed.label, () => pointed.drawing);
    setHand(null);
    setSaid(`${pointed.label}: ${sayPlace(at)}.`);
    if (by === "keys") cameFrom.current?.focus();
  };
  const moveCross = (at: Point, by: "keys" | "pointer") => {
    setCross(at);
    if (by === "keys") setSaid(`${hand ? `${sayHand(hand)}. ` : ""}Cross-hair ${sayPlace(at)}${near(at)}.`);
  };
  const deeds: FigureDeeds = { take, draw: (label, change) => draw(session, still.id, label, change) };
  return {
    hand,
    said,
    deeds,
    measure,
    stage: {
      lines,
      hand,
      cross,
      place: stage,
      heldAt: (at: Point, reach: number) => heldAt(at, reach, lines, still, name),
      onCross: moveCross,
      onHold: (held: Held) => {
        cameFrom.current = null;
        setHand(held);
      },
      onPoint: point,
      onLeave: leave,
    },
  };
}

/** As wide as the column, and no higher than leaves room for what is said below it. */
function roomOf(width: number) {
  const wide = Math.max(width, 240);
  return { width: wide, height: Math.max(240, wide * 0.85) };
}

/** Where the cross-hair begins: at what is to be moved. In fractions of the shown picture. */
function startOf(hand: InHand, lines: FigureLines, still: Still): Point | null {
  const { picture } = lines;
  const onPicture = ({ x, y }: Point) => ({
    x: (x - picture.x) / picture.width,
    y: (y - picture.y) / picture.height,
  });
  if (hand.deed === "seat" || hand.deed === "target") {
    const balloon = lines.balloons.find((one) => one.id === hand.balloon);
    return balloon ? onPicture(hand.deed === "seat" ? balloon.centre : balloon.dot.centre) : null;
  }
  if (hand.deed === "end") {
    const dimension = still.drawing.dimensions.find((one) => one.id === hand.dimension);
    return dimension ? onPicture(figurePlace(lines, still, dimension[hand.end])) : null;
  }
  return null;
}

/** What lies near a place, to be named: numbers and what they point at. In fractions of the shown picture. */
function thingsOn({ balloons, picture }: FigureLines, still: Still, name: (item: string) => string) {
  const onPicture = ({ x, y }: Point) => ({
    x: (x - picture.x) / picture.width,
    y: (y - picture.y) / picture.height,
  });
  return balloons.flatMap(({ id, number, centre, dot }) => {
    const item = still.drawing.balloons.find((one) => one.id === id)?.item;
    if (item === undefined) return [];
    return [
      { at: onPicture(dot.centre), words: `what balloon ${number} points at, ${name(item)}` },
      { at: onPicture(centre), words: `balloon ${number}, ${name(item)}` },
    ];
  });
}

/** What a pressed place takes hold of: a balloon, what it points at, an end of a dimension line. */
function heldAt(
  at: Point,
  reach: number,
  lines: FigureLines,
  still: Still,
  name: (item: string) => string,
): Held | null {
  const { picture } = lines;
  const place = { x: picture.x + at.x * picture.width, y: picture.y + at.y * picture.height };
  const far = (other: Point) => Math.hypot(other.x - place.x, other.y - place.y);
  const itemOf = (id: string) => name(still.drawing.balloons.find((one) => one.id === id)?.item ?? "");
  const holds: { far: number; held: Held }[] = [
    ...lines.balloons.flatMap(({ id, centre, radius, dot }): { far: number; held: Held }[] => [
      { far: far(dot.centre), held: { deed: "target", balloon: id, name: itemOf(id) } },
      { far: far(centre) - radius, held: { deed: "seat", balloon: id, name: itemOf(id) } },
    ]),
    ...still.drawing.dimensions.flatMap(({ id, from, to }): { far: number; held: Held }[] => [
      {
        far: far(figurePlace(lines, still, from)),
        held: { deed: "end", dimension: id, name: "dimension line", end: "from" },
      },
      {
        far: far(figurePlace(lines, still, to)),
        held: { deed: "end", dimension: id, name: "dimension line", end: "to" },
      },
    ]),
  ];
  const nearest = holds.sort((a, b) => a.far - b.far)[0];
  return nearest && nearest.far <= reach ? nearest.held : null;
}
