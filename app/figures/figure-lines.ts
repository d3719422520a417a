import { useEffect, useMemo, useState } from "react";
import type { Still } from "#lib/build/index.ts";
import { type FigureLines, figureLines, type Point, type Size, shown } from "#lib/figure/index.ts";
import { drawnFigure } from "#lib/procedure/index.ts";
import { useDerived } from "../session/provider.tsx";

/** The figure as it prints, in CSS pixels: as wide and as high as there is room. */
export function useFigureLines(still: Still, room: Size, text: number): FigureLines {
  const { numberOf, textOf } = useFigureNames(still);
  const { drawing, width, height } = still;
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

/** The numbers of what balloons point at, and what dimension lines say, as they print; null for what is gone. */
export function useFigureNames({ drawing }: Still) {
  const { procedure } = useDerived();
  return useMemo(() => {
    const drawn = drawnFigure(drawing, procedure.parts, procedure.measurements);
    const numbers = new Map(drawn.numbers.map(({ item, number }) => [item, number]));
    const values = new Map(drawn.values.map(({ mark, text }) => [mark, text]));
    return {
      numberOf: (item: string) => numbers.get(item) ?? null,
      textOf: (mark: string) => values.get(mark) ?? null,
    };
  }, [drawing, procedure]);
}
