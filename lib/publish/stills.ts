import sharp from "sharp";
import type { Size } from "#lib/figure/index.ts";
import type { Figure, Procedure } from "#lib/procedure/tree.ts";
import { type ShownPicture, shortHash, shownPicture, svgFile } from "./figures.ts";
import type { OutputFile, PublishOptions } from "./output.ts";
import { allSteps } from "./words.ts";

/** A still as it is published: as its drawing shows it, and its size in pixels as its bytes say it. */
export interface PublishedStill extends ShownPicture {
  /** What a file of it is called, without the ending: by its bytes. */
  name: string;
  /** The size of what was taken: places on the picture are fractions of it. */
  original: Size;
}

/** The stills of a procedure by their ids, and a sentence for each that cannot be shown. */
export interface Stills {
  found: ReadonlyMap<string, PublishedStill>;
  losses: string[];
}

/** Fetches every still of a procedure once. One that is missing or is no JPEG becomes a loss, never an error. */
export async function fetchStills(procedure: Procedure, options: PublishOptions): Promise<Stills> {
  const found = new Map<string, PublishedStill>();
  const losses: string[] = [];
  for (const { number, figure } of figuresOf(procedure)) {
    const bytes = figure.sha256 === "" ? null : await options.stills(figure.sha256);
    const still = bytes && (await published(bytes, figure));
    if (still) found.set(figure.still, still);
    else
      losses.push(
        `Step ${number}: ${bytes ? "a picture's file is not a JPEG" : "a picture is missing"}. Take the still again.`,
      );
  }
  return { found, losses };
}

function figuresOf(procedure: Procedure): { number: number; figure: Figure }[] {
  return allSteps(procedure).flatMap(({ number, stills }) => stills.map((figure) => ({ number, figure })));
}

/** Reads the head of a picture, since an output must not be made of what only claims to be one. */
async function published(bytes: Uint8Array, { sha256, drawn }: Figure): Promise<PublishedStill | null> {
  try {
    const { format, width, height } = await sharp(bytes).metadata();
    if (format !== "jpeg" || !(width > 0 && height > 0)) return null;
    const original = { width, height };
    const shown = drawn ? await shownPicture(bytes, original, drawn) : { bytes, ...original };
    const name = shown.bytes === bytes ? sha256.slice(0, 16) : shortHash(shown.bytes);
    return { ...shown, original, name };
  } catch {
    return null;
  }
}

/** The figures of a procedure as files of an output, by their stills: JPEGs, and SVGs where something is drawn on them. */
export function figureFiles(procedure: Procedure, { found }: Stills): Map<string, OutputFile> {
  const files = new Map<string, OutputFile>();
  for (const { figure } of figuresOf(procedure)) {
    const still = found.get(figure.still);
    if (still) files.set(figure.still, figureFile(figure, still));
  }
  return files;
}

function figureFile({ drawn }: Figure, still: PublishedStill): OutputFile {
  const svg = drawn ? svgFile(drawn, still.original, still) : null;
  if (svg) return { name: `stills/${shortHash(svg)}.svg`, bytes: svg };
  return { name: `stills/${still.name}.jpg`, bytes: still.bytes };
}

/** Those files, each name once: one still may stand in several steps. */
export function filesOnce(files: ReadonlyMap<string, OutputFile>): OutputFile[] {
  return [...new Map([...files.values()].map((file) => [file.name, file])).values()];
}
