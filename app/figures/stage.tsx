"use client";
import { type KeyboardEvent, type PointerEvent, type RefObject, useRef } from "react";
import type { Still } from "#lib/build/index.ts";
import type { FigureLines, Point } from "#lib/figure/index.ts";
import { FigureDrawing } from "./figure-drawing.tsx";
import { figurePlace } from "./figure-lines.ts";
import type { Held } from "./holds.ts";
import type { InHand } from "./pointing.ts";

/** How far an arrow key moves the cross-hair, in fractions of the shown picture; and with Shift. */
const STEP = 0.005;
const STRIDE = 0.05;
const arrows: Record<string, readonly [number, number]> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, -1],
  ArrowDown: [0, 1],
};

/** The figure as it prints, pointed at with mouse, finger or keys. */
export function Stage({
  still,
  lines,
  hand,
  cross,
  place,
  heldAt,
  onCross,
  onHold,
  onPoint,
  onLeave,
}: {
  still: Still;
  lines: FigureLines;
  hand: InHand | null;
  /** In fractions of the shown picture; beside it they are less than 0 or more than 1. */
  cross: Point;
  place: RefObject<HTMLDivElement | null>;
  /** What lies under a pressed place, where something can be taken hold of there. */
  heldAt: (at: Point, reach: number) => Held | null;
  onCross: (at: Point, by: "keys" | "pointer") => void;
  onHold: (held: Held) => void;
  onPoint: (at: Point, by: "keys" | "pointer") => void;
  onLeave: () => void;
}) {
  const svg = useRef<SVGSVGElement>(null);
  const pressed = useRef<{ at: Point; held: boolean } | null>(null);
  const { picture } = lines;
  const onFigure = ({ x, y }: Point): Point => ({
    x: picture.x + x * picture.width,
    y: picture.y + y * picture.height,
  });
  const within = (at: Point): Point => ({
    x: clamp(at.x, -picture.x / picture.width, (lines.width - picture.x) / picture.width),
    y: clamp(at.y, -picture.y / picture.height, (lines.height - picture.y) / picture.height),
  });
  const placeOf = (event: PointerEvent): Point => {
    const box = (svg.current as SVGSVGElement).getBoundingClientRect();
    const x = ((event.clientX - box.left) / box.width) * lines.width;
    const y = ((event.clientY - box.top) / box.height) * lines.height;
    return within({ x: (x - picture.x) / picture.width, y: (y - picture.y) / picture.height });
  };
  const press = (event: PointerEvent<HTMLDivElement>) => {
    if (event.button !== 0) return;
    const at = placeOf(event);
    const held = hand ? null : heldAt(at, event.pointerType === "mouse" ? 10 : 22);
    pressed.current = { at, held: held !== null };
    if (held) onHold(held);
    if (held || hand) event.currentTarget.setPointerCapture(event.pointerId);
    onCross(at, "pointer");
  };
  const move = (event: PointerEvent<HTMLDivElement>) => {
    if (hand && (pressed.current || event.pointerType === "mouse")) onCross(placeOf(event), "pointer");
  };
  const release = (event: PointerEvent<HTMLDivElement>) => {
    const begun = pressed.current;
    pressed.current = null;
    if (!begun || !hand) return;
    const at = placeOf(event);
    // What was only touched is not moved by a hair.
    if (begun.held && Math.hypot(at.x - begun.at.x, at.y - begun.at.y) < STEP) onLeave();
    else onPoint(at, "pointer");
  };
  const key = (event: KeyboardEvent) => {
    const by = arrows[event.key];
    const step = event.shiftKey ? STRIDE : STEP;
    if (event.ctrlKey || event.altKey || event.metaKey) return;
    if (by) onCross(within({ x: cross.x + by[0] * step, y: cross.y + by[1] * step }), "keys");
    else if (event.key === "Enter" && hand) onPoint(cross, "keys");
    else if (event.key === "Escape" && hand) onLeave();
    else return;
    event.preventDefault();
  };
  return (
    <div
      ref={place}
      className="figure-stage"
      role="application"
      aria-label={`Figure: ${still.alt || "a picture without words yet"}`}
      aria-describedby="figure-keys"
      tabIndex={0}
      data-in-hand={hand?.deed}
      onKeyDown={key}
      onPointerDown={press}
      onPointerMove={move}
      onPointerUp={release}
      onPointerCancel={() => {
        pressed.current = null;
        onLeave();
      }}
    >
      <svg
        ref={svg}
        viewBox={`0 0 ${lines.width} ${lines.height}`}
        width={lines.width}
        height={lines.height}
        aria-hidden="true"
        focusable="false"
      >
        <FigureDrawing still={still} lines={lines} />
        <Begun hand={hand} lines={lines} still={still} to={onFigure(cross)} />
        <CrossHair at={onFigure(cross)} size={14} />
      </svg>
    </div>
  );
}

function CrossHair({ at, size }: { at: Point; size: number }) {
  const path = `M${at.x - size} ${at.y}h${2 * size}M${at.x} ${at.y - size}v${2 * size}`;
  return (
    <g className="cross-hair">
      <path d={path} className="casing" />
      <path d={path} />
    </g>
  );
}

/** What is half done: a dimension line from its first end, the corner of what stays, a balloon on its way. */
function Begun({
  hand,
  lines,
  still,
  to,
}: {
  hand: InHand | null;
  lines: FigureLines;
  still: Still;
  to: Point;
}) {
  const path = pathOf(hand, lines, still, to);
  if (path === null) return null;
  return (
    <g className="begun">
      <path d={path} className="casing" />
      <path d={path} />
    </g>
  );
}

function pathOf(hand: InHand | null, lines: FigureLines, still: Still, to: Point): string | null {
  if (hand?.deed === "dimension" && hand.from) {
    const from = figurePlace(lines, still, hand.from);
    return `M${from.x} ${from.y}L${to.x} ${to.y}`;
  }
  if (hand?.deed === "crop" && hand.corner) {
    const from = { x: lines.picture.x + hand.corner.x * lines.picture.width, y: 0 };
    from.y = lines.picture.y + hand.corner.y * lines.picture.height;
    return `M${from.x} ${from.y}H${to.x}V${to.y}H${from.x}Z`;
  }
  if (hand?.deed === "seat") {
    const balloon = lines.balloons.find((one) => one.id === hand.balloon);
    if (!balloon) return null;
    const { radius, dot } = balloon;
    const circle = `M${to.x - radius} ${to.y}a${radius} ${radius} 0 1 0 ${2 * radius} 0a${radius} ${radius} 0 1 0 ${-2 * radius} 0`;
    return `${circle}M${dot.centre.x} ${dot.centre.y}L${to.x} ${to.y}`;
  }
  return null;
}

const clamp = (value: number, least: number, most: number) => Math.min(Math.max(value, least), most);
