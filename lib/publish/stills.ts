import sharp from "sharp";
import type { Figure, Procedure } from "#lib/procedure/tree.ts";
import type { OutputFile, PublishOptions } from "./output.ts";
import { allSteps } from "./words.ts";

/** A still as it is published: its bytes, and its size in pixels as they say it. */
export interface PublishedStill {
  bytes: Uint8Array;
  width: number;
  height: number;
}

/** The stills of a procedure by SHA-256, and a sentence for each that cannot be shown. */
export interface Stills {
  found: ReadonlyMap<string, PublishedStill>;
  losses: string[];
}

/** Fetches every still of a procedure once. One that is missing or is no JPEG becomes a loss, never an error. */
export async function fetchStills(procedure: Procedure, options: PublishOptions): Promise<Stills> {
  const found = new Map<string, PublishedStill>();
  const losses: string[] = [];
  for (const { number, figure } of figuresOf(procedure)) {
    if (found.has(figure.sha256)) continue;
    const bytes = figure.sha256 === "" ? null : await options.stills(figure.sha256);
    const still = bytes && (await published(bytes));
    if (still) found.set(figure.sha256, still);
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
async function published(bytes: Uint8Array): Promise<PublishedStill | null> {
  try {
    const { format, width, height } = await sharp(bytes).metadata();
    return format === "jpeg" && width > 0 && height > 0 ? { bytes, width, height } : null;
  } catch {
    return null;
  }
}

/** A still's name among the files of an output. */
export function stillName({ sha256 }: Pick<Figure, "sha256">): string {
  return `stills/${sha256.slice(0, 16)}.jpg`;
}

/** The stills as files of an output. */
export function stillFiles({ found }: Stills): OutputFile[] {
  return [...found].map(([sha256, { bytes }]) => ({ name: stillName({ sha256 }), bytes }));
}
