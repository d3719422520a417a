import { useEffect, useMemo, useState } from "react";
import type { Still } from "#lib/build/index.ts";
import {
  type Drawing,
  type FigureLines,
  figureLines,
  type Point,
  type Size,
  shown,
} from "#lib/figure/index.ts";
import { useDerived } from "../session/provider.tsx";

/** The figure as it prints, in CSS pixels: as wide and as high as there is room. */
export function useFigureLines(still: Still, drawing: Drawing, room: Size, text: number): FigureLines {
  const { numberOf, textOf } = useFigureNames();
  const { width, height } = still;
  return useMemo(
    () => figureLines(drawing, { picture: { width, height }, room, text }, numberOf, textOf),
    [drawing, width, height, room, text, numberOf, textOf],
  );
}

/** How wide an element is, in CSS pixels. */
export function useWidth(): [width: number, ref: (element: HTMLElement | null) => void] {
  const [element, setElement] = useState<HTMLElement | null>(null);
  const [width, setWidth] = useState(0);
  useEffect(() => {
    if (!element) return;
    const observer = new ResizeObserver(() => setWidth(element.clientWidth));
    observer.observe(element);
    return () => observer.disconnect();
  }, [element]);
  return [width, setElement];
}

/** Where a place on the original lies on the figure. */
export function figurePlace({ picture }: FigureLines, still: Still, at: Point): Point {
  const view = shown(still.drawing, still);
  const { x, y } = view.toShown(at);
  return {
    x: picture.x + (x / view.width) * picture.width,
    y: picture.y + (y / view.height) * picture.height,
  };
}

/** The numbers of the parts list, and what dimension lines say, as of the procedure that prints. */
export function useFigureNames() {
  const { procedure } = useDerived();
  return useMemo(() => {
    const numbers = new Map(procedure.parts.map((part) => [part.item, part.balloon]));
    const values = new Map(
      procedure.measurements.map((line) => [line.mark, line.values.asFound?.typed ?? null]),
    );
    return {
      numberOf: (item: string) => numbers.get(item) ?? null,
      textOf: (mark: string) => values.get(mark) ?? null,
    };
  }, [procedure]);
}
