"use client";
import { useMemo, useRef, useState } from "react";
import type { Still } from "#lib/build/index.ts";
import type { Point } from "#lib/figure/index.ts";
import { useDerived, useSession } from "../session/provider.tsx";
import { draw, stillNow } from "./deeds.ts";
import { useFigureLines, useWidth } from "./figure-lines.ts";
import { type Held, heldAt, startOf, thingsOn } from "./holds.ts";
import type { FigureDeeds } from "./parts-of-figure.tsx";
import { type InHand, pointAt } from "./pointing.ts";
import { sayHand, sayNear, sayPlace } from "./say-place.ts";
import { nameOf } from "./use-figure.ts";

/** What is in hand, where the cross-hair is, and what is said of both. */
export function usePointing(still: Still) {
  const session = useSession();
  const { procedure } = useDerived();
  const [width, measure] = useWidth();
  const [hand, setHand] = useState<InHand | null>(null);
  const [cross, setCross] = useState<Point>({ x: 0.5, y: 0.5 });
  const [said, setSaid] = useState("");
  const stage = useRef<HTMLDivElement>(null);
  const cameFrom = useRef<HTMLElement | null>(null);
  const room = useMemo(() => roomOf(width), [width]);
  const lines = useFigureLines(still, room, 17);
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
    /** What was said last no longer holds. */
    hush: () => setSaid(""),
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
  return { width: wide, height: Math.max(240, Math.min(0.85 * wide, 0.66 * window.innerHeight)) };
}
