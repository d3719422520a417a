import { type FigureLines, overlayOf } from "#lib/figure/index.ts";
import type { Figure, Step } from "#lib/procedure/tree.ts";
import { altOf, linesAt, viewName } from "../figure-lines.ts";
import { svgText } from "../figures.ts";
import type { Edition } from "../output.ts";
import type { PublishedStill, Stills } from "../stills.ts";
import { instructionOf } from "../words.ts";

/**
 * Rooms that a figure is laid out in, in millimetres. The template makes the first picture of a step as high as its
 * page has room for, between 48 and 104; from `least` on it takes that layout, enlarged. Further pictures stand in pairs.
 */
const first = [
  { least: 0, room: { width: 142, height: 48 } },
  { least: 72, room: { width: 142, height: 72 } },
];
const pair = { least: 0, room: { width: 69, height: 60 } };
/** Beside the words of the page edition. */
const beside = { least: 0, room: { width: 72, height: 66 } };

/** Numbers and values on a figure are as large as the words beside it, in millimetres: 12 points, at the bench 18. */
const textHeight: Record<Edition, number> = { page: 4.23, bench: 6.35 };

/** A figure as the template sets it; none where its picture is missing. */
export function printFigure(figure: Figure, step: Step, stills: Stills["found"], edition: Edition) {
  const still = stills.get(figure.still);
  if (!still) return [];
  const laidOut = (of: typeof pair) => layoutOf(figure, still, of, textHeight[edition]);
  return [
    {
      file: pictureName(still),
      alt: altOf(figure, instructionOf(step)),
      view: viewName(figure),
      first: figure.drawn ? first.map(laidOut) : [laidOut(pair)],
      pair: laidOut(pair),
      beside: laidOut(beside),
    },
  ];
}

/** The name of a picture among the data of a print. */
export function pictureName({ name }: PublishedStill): string {
  return `${name}.jpg`;
}

function layoutOf({ drawn }: Figure, still: PublishedStill, { least, room }: typeof pair, text: number) {
  const lines = drawn ? linesAt(drawn, still.original, { room, text }) : null;
  if (!lines)
    return { least, width: still.width, height: still.height, picture: null, lines: null, small: false };
  return {
    least,
    width: lines.width,
    height: lines.height,
    picture: sharesOf(lines),
    lines: svgText(overlayOf(lines)),
    small: lines.text < text,
  };
}

/** Where the picture lies in a figure, in shares of the figure's width and height. */
function sharesOf({ picture, width, height }: FigureLines) {
  return {
    x: picture.x / width,
    y: picture.y / height,
    width: picture.width / width,
    height: picture.height / height,
  };
}
