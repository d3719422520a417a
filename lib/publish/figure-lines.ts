import {
  type Drawable,
  drawableOf,
  type FigureLines,
  figureLines,
  type Sheet,
  type Size,
} from "#lib/figure/index.ts";
import type { DrawnFigure, Figure } from "#lib/procedure/tree.ts";
import { paragraphs } from "./clean.ts";
import { sentence } from "./words.ts";

/**
 * What a figure for a screen is laid out at. It is shown as wide as its place: on a phone, at 340 pixels, its numbers
 * are 12 pixels high; at a desk twice that.
 */
const screen = { room: { width: 440, height: 440 }, text: 15.5 };

/** A figure laid out for a screen; null where nothing is drawn on it. */
export function screenLines(drawn: DrawnFigure, original: Size): FigureLines | null {
  return linesAt(drawn, original, screen);
}

/** A picture turned and cropped as its drawing says, laid out for a screen, whether anything is drawn on it or not. */
export function shownLines({ drawing }: DrawnFigure, original: Size): FigureLines {
  const none = () => null;
  return figureLines(drawing, { ...screen, picture: original }, none, none);
}

/** Layouts already made, by what they were made of: a screen asks for all of them again at each change of a build. */
const known = new Map<string, FigureLines | null>();
const mostKnown = 600;

/** A figure laid out in that room; null where nothing is drawn on it. */
export function linesAt(drawn: DrawnFigure, picture: Size, sheet: Sheet): FigureLines | null {
  const key = JSON.stringify([drawn, picture, sheet]);
  const before = known.get(key);
  if (before !== undefined) return before;
  const lines = layOut(drawn, picture, sheet);
  if (known.size >= mostKnown) known.delete(known.keys().next().value as string);
  known.set(key, lines);
  return lines;
}

function layOut(drawn: DrawnFigure, picture: Size, sheet: Sheet): FigureLines | null {
  const { numberOf, wordsOf } = lookups(drawn);
  const lines = figureLines(drawn.drawing, { ...sheet, picture }, numberOf, wordsOf);
  return lines.balloons.length + lines.dimensions.length === 0 ? null : lines;
}

/** What of a figure's drawing is drawn. */
function drawableIn({ drawn, width, height }: Figure & { drawn: DrawnFigure }): Drawable {
  const { numberOf, wordsOf } = lookups(drawn);
  // The proportions matter only to a picture that is straightened.
  const size = width > 0 && height > 0 ? { width, height } : { width: 4, height: 3 };
  return drawableOf(drawn.drawing, size, numberOf, wordsOf);
}

function lookups({ numbers, values }: DrawnFigure) {
  const numberOf = new Map(numbers.map(({ item, number }) => [item, number]));
  const wordsOf = new Map(values.map(({ mark, text }) => [mark, text]));
  return {
    numberOf: (item: string) => numberOf.get(item) ?? null,
    wordsOf: (mark: string) => wordsOf.get(mark) ?? null,
  };
}

/** "View A"; empty where the figure has no name of its own. */
export function viewName({ drawn }: Figure): string {
  const view = paragraphs(drawn?.drawing.view ?? "").join(" ");
  return view.charAt(0).toUpperCase() + view.slice(1);
}

/** What a figure shows, in words: its view, what is in it, and what is drawn on it. `otherwise` where nobody said. */
export function altOf(figure: Figure, otherwise: string): string {
  const view = viewName(figure);
  const shows = paragraphs(figure.alt).join(" ") || otherwise;
  const drawn = drawnWords(figure);
  return [view && `${view}:`, drawn ? sentence(shows) : shows, drawn].filter(Boolean).join(" ");
}

function drawnWords({ drawn, ...figure }: Figure): string {
  if (!drawn) return "";
  const { balloons, dimensions } = drawableIn({ ...figure, drawn });
  const numbers = [...new Set(balloons.map(({ number }) => number))].sort((a, b) => a - b);
  const items = numbers.length === 1 ? "item" : "items";
  return [
    numbers.length > 0 && `Pointed out: ${items} ${numbers.join(", ")} of the parts list.`,
    dimensions.length > 0 && `Dimensions: ${dimensions.map(({ text }) => text).join("; ")}.`,
  ]
    .filter(Boolean)
    .join(" ");
}
