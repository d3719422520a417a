"use client";
import type { Still } from "#lib/build/index.ts";
import { FigureDrawing } from "./figure-drawing.tsx";
import { useFigureLines } from "./figure-lines.ts";

/** Small pictures have the same geometry as large ones; their numbers are smaller. */
const room = { width: 240, height: 180 };

/** A figure in little. The words beside it say what it is. */
export function Thumbnail({ still }: { still: Still }) {
  const lines = useFigureLines(still, room, 12);
  if (still.sha256 === "") return <span className="thumbnail soft small">Picture missing</span>;
  return (
    <svg
      className="thumbnail"
      viewBox={`0 0 ${lines.width} ${lines.height}`}
      width={lines.width}
      height={lines.height}
      aria-hidden="true"
      focusable="false"
    >
      <FigureDrawing still={still} lines={lines} />
    </svg>
  );
}
