import { createHash } from "node:crypto";
import type { Element } from "hast";
import rehypeStringify from "rehype-stringify";
import sharp from "sharp";
import { unified } from "unified";
import { isAsTaken, lightFactor, type Size, shown, svgOf, turnedSize } from "#lib/figure/index.ts";
import type { DrawnFigure } from "#lib/procedure/tree.ts";
import { screenLines } from "./figure-lines.ts";

/** A picture as it is published: turned, cropped and lit as its drawing says. */
export interface ShownPicture extends Size {
  bytes: Uint8Array;
}

const quality = 90;

/** A JPEG as a drawing shows it; the very bytes that came where it shows it as taken. The same gives the same bytes. */
export async function shownPicture(
  bytes: Uint8Array,
  original: Size,
  { drawing }: DrawnFigure,
): Promise<ShownPicture> {
  if (isAsTaken(drawing)) return { bytes, ...original };
  const { width, height } = shown(drawing, original);
  const turned = await sharp(bytes)
    .rotate(drawing.quarter + drawing.straighten, { background: "white" })
    .raw()
    .toBuffer({ resolveWithObject: true });
  const { info, data } = turned;
  const whole = turnedSize(drawing, original);
  const from = (all: number, part: number, at: number, most: number) =>
    Math.min(Math.max(0, Math.round((all - part) / 2 + at * part)), all - most);
  const jpeg = await sharp(data, { raw: { width: info.width, height: info.height, channels: info.channels } })
    .extract({
      left: from(info.width, whole.width, drawing.crop.x, width),
      top: from(info.height, whole.height, drawing.crop.y, height),
      width,
      height,
    })
    .linear(lightFactor(drawing), 0)
    .jpeg({ quality, chromaSubsampling: "4:4:4", mozjpeg: false })
    .toBuffer();
  return { bytes: new Uint8Array(jpeg), width, height };
}

/** A figure as an SVG file that holds its picture, for outputs that name pictures; null where nothing is drawn on it. */
export function svgFile(drawn: DrawnFigure, original: Size, picture: ShownPicture): Uint8Array | null {
  const lines = screenLines(drawn, original);
  if (!lines) return null;
  const svg = svgOf(lines, { ...picture, address: jpegAddress(picture.bytes), is: "shown" });
  // Twice the size it is laid out at, so that it is large enough where a reader shows files as large as they say.
  const sized = {
    ...svg.properties,
    width: Math.round(lines.width * 2),
    height: Math.round(lines.height * 2),
  };
  return new TextEncoder().encode(svgText({ ...svg, properties: sized }));
}

/** An SVG element as text. */
export function svgText(svg: Element): string {
  return unified()
    .use(rehypeStringify, { space: "svg" })
    .stringify({ type: "root", children: [svg] });
}

/** The bytes of a JPEG as an address. */
export function jpegAddress(bytes: Uint8Array): string {
  return `data:image/jpeg;base64,${Buffer.from(bytes).toString("base64")}`;
}

/** What a file's name says of its bytes. */
export function shortHash(bytes: Uint8Array): string {
  return createHash("sha256").update(bytes).digest("hex").slice(0, 16);
}
