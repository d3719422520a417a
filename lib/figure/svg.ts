import type { Element } from "hast";
import { s } from "hastscript";
import type { Point } from "./drawing.ts";
import type { Segment } from "./geometry.ts";
import type { BalloonLines, FigureLines } from "./lines.ts";

/** Widths of lines, as shares of the height of the text. White beside the black lets a line be read on any picture. */
const share = { ink: 0.085, casing: 0.24, capHeight: 0.66 };

/** The picture that the lines are drawn over. */
export interface PictureOfFigure {
  /** Its address, or its bytes as a data address. */
  address: string;
  /** The picture as it is shown already, or the original, which is then turned, cropped and lit here. */
  is: "shown" | "original";
  /** Pixels of the original; needed where it is that. */
  width: number;
  height: number;
}

/**
 * A figure as SVG: the picture, and over it what is drawn, in black cased in white, so that it is read on any picture
 * and in print without colours. It has no words of its own; who uses it says them beside it.
 */
export function svgOf(lines: FigureLines, picture: PictureOfFigure | null): Element {
  const { width, height } = lines;
  return s("svg", { xmlns, viewBox: `0 0 ${round(width)} ${round(height)}` }, [
    s("rect", { width: round(width), height: round(height), fill: "white" }),
    picture && pictureOf(lines, picture),
    ...drawnOn(lines),
  ]);
}

/** What is drawn on a picture, without it: to be laid over the picture by who has it already. */
export function overlayOf(lines: FigureLines): Element {
  const viewBox = `0 0 ${round(lines.width)} ${round(lines.height)}`;
  return s("svg", { xmlns, viewBox }, drawnOn(lines));
}

function drawnOn(lines: FigureLines): Element[] {
  const { text, balloons, dimensions } = lines;
  const strokes = [
    ...balloons.map(({ leader }) => leader),
    ...dimensions.flatMap(({ line, extensions }) => [line, ...extensions]),
  ];
  const heads = dimensions.flatMap(({ arrows }) => arrows);
  const dots = balloons.map(({ dot }) => dot);
  const path = strokes.map(pathOf).join("");
  const casing = round((share.casing - share.ink) * text);
  const flat = { stroke: "white", "stroke-width": casing, "stroke-linejoin": "round" } as const;
  return [
    ...dimensions.map(({ plate }) => s("path", { d: polygon(plate), fill: "white" })),
    path && s("path", { d: path, fill: "none", stroke: "white", "stroke-width": round(share.casing * text) }),
    ...heads.map((head) => s("path", { d: polygon(head), fill: "white", ...flat })),
    ...dots.map(({ centre, radius }) => s("circle", { ...circleAt(centre, radius), fill: "white", ...flat })),
    path && s("path", { d: path, fill: "none", stroke: "black", "stroke-width": round(share.ink * text) }),
    ...heads.map((head) => s("path", { d: polygon(head), fill: "black" })),
    ...dots.map(({ centre, radius }) => s("circle", { ...circleAt(centre, radius), fill: "black" })),
    ...balloons.filter(({ shares }) => !shares).flatMap((one) => balloonOf(one, text)),
    ...dimensions.map((one) => textOf(one, text)),
  ].filter((one) => typeof one !== "string");
}

const xmlns = "http://www.w3.org/2000/svg";
const letters = {
  "font-family": "'Source Sans 3', Arial, sans-serif",
  "font-weight": 600,
  "text-anchor": "middle",
} as const;

function balloonOf({ number, centre, radius }: BalloonLines, text: number): Element[] {
  const circle = { ...circleAt(centre, radius), fill: "white", stroke: "black" };
  const foot = { x: round(centre.x), y: round(centre.y + (share.capHeight / 2) * text) };
  return [
    s("circle", { ...circle, "stroke-width": round(share.ink * text) }),
    s("text", { ...foot, ...letters, "font-size": round(text), fill: "black" }, String(number)),
  ];
}

function textOf({ text: words, textAt, textTurn }: FigureLines["dimensions"][number], text: number): Element {
  const at = `translate(${round(textAt.x)} ${round(textAt.y)}) rotate(${round(textTurn)})`;
  return s("text", { transform: at, ...letters, "font-size": round(text), fill: "black" }, words);
}

function pictureOf(
  { picture, shown }: FigureLines,
  { address, is, width, height }: PictureOfFigure,
): Element {
  const place = {
    x: round(picture.x),
    y: round(picture.y),
    width: round(picture.width),
    height: round(picture.height),
  };
  if (is === "shown") return s("image", { ...place, href: address, preserveAspectRatio: "none" });
  const { a, b, c, d, e, f } = shown.matrix;
  return s("svg", { ...place, viewBox: `0 0 ${shown.width} ${shown.height}`, preserveAspectRatio: "none" }, [
    s("image", {
      href: address,
      width,
      height,
      transform: `matrix(${[a, b, c, d, e, f].join(" ")})`,
      style: shown.light === 1 ? undefined : `filter: brightness(${round(shown.light)})`,
    }),
  ]);
}

function circleAt({ x, y }: Point, radius: number) {
  return { cx: round(x), cy: round(y), r: round(radius) };
}

function pathOf({ from, to }: Segment): string {
  return `M${round(from.x)} ${round(from.y)}L${round(to.x)} ${round(to.y)}`;
}

function polygon(corners: readonly Point[]): string {
  return `M${corners.map(({ x, y }) => `${round(x)} ${round(y)}`).join("L")}Z`;
}

/** To a thousandth of the unit: nobody sees more, and the same figure is the same text. */
function round(value: number): number {
  return Math.round(value * 1000) / 1000;
}
