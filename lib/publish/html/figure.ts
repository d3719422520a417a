import type { Element } from "hast";
import { h } from "hastscript";
import { isAsTaken, type PictureOfFigure, svgOf } from "#lib/figure/index.ts";
import type { Figure, Step } from "#lib/procedure/tree.ts";
import { altOf, screenLines, shownLines, viewName } from "../figure-lines.ts";
import { instructionOf } from "../words.ts";

/** A figure: its picture, what is drawn on it as vectors over it, and the name of its view. */
export function figureNode(figure: Figure, picture: PictureOfFigure, step: Step): Element {
  const alt = altOf(figure, instructionOf(step));
  const view = viewName(figure);
  return h("figure", { "data-mark": figure.mark, "data-still": figure.still }, [
    drawnPicture(figure, picture, alt) ?? plainPicture(picture, alt),
    view === "" ? null : h("figcaption", view),
  ]);
}

function plainPicture({ address, width, height }: PictureOfFigure, alt: string): Element {
  return h("img", { src: address, alt, ...(width > 0 && height > 0 && { width, height }) });
}

/** With what is drawn on it; null where that is nothing and the picture is as it is to be shown. */
function drawnPicture({ drawn, ...figure }: Figure, picture: PictureOfFigure, alt: string): Element | null {
  // Places on a picture whose size nobody knows cannot be found.
  if (!drawn || figure.width === 0 || figure.height === 0) return null;
  const original = { width: figure.width, height: figure.height };
  const asItIs = picture.is === "shown" || isAsTaken(drawn.drawing);
  const lines = screenLines(drawn, original) ?? (asItIs ? null : shownLines(drawn, original));
  if (!lines) return null;
  const svg = svgOf(lines, picture);
  const size = { width: Math.round(lines.width * 2), height: Math.round(lines.height * 2) };
  return { ...svg, properties: { ...svg.properties, ...size, role: "img", ariaLabel: alt } };
}
