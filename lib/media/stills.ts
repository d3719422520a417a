import { createHash } from "node:crypto";
import type { Sharp } from "sharp";
import { sniff } from "./sniff.ts";
import { MediaError } from "./trouble.ts";

/** A photograph or a frame, ready for page and print: upright, sRGB, nothing in it but the picture. */
export interface BakedPicture {
  jpeg: Buffer;
  /** As shown, in pixels. */
  width: number;
  height: number;
  /** Of the JPEG's bytes, lower-case hexadecimal. */
  sha256: string;
}

/** The largest picture that is taken: 120 million pixels, about 360 MB while it is being read. */
export const mostPixels = 120_000_000;

/** Brought when the first picture comes: a workshop that takes in films holds 30 MB less without it. */
const pictureLibrary = async () => (await import("sharp")).default;

const quality = 90;
const timeLimitSeconds = 60;

/**
 * Bakes a picture: turns it upright, brings its colours to sRGB, and leaves out all that a camera wrote beside it
 * (place, maker, serial number, previews). The same bytes give the same bytes.
 *
 * @param bytes a JPEG, PNG or WebP; AVIF where the build of the picture library has it, HEIC seldom
 * @throws MediaError `not-a-picture`, `too-large` or `unreadable-picture`
 */
export async function bakePicture(bytes: Uint8Array): Promise<BakedPicture> {
  const { sort, what } = sniff(Buffer.from(bytes.buffer, bytes.byteOffset, Math.min(bytes.length, 4096)));
  const readable = /JPEG|PNG|WebP|HEIC/.test(what);
  if (sort !== "picture" || !readable) throw notAPicture(bytes.length === 0 ? "an empty file" : what);
  await checkSize(bytes, what);
  const sharp = await pictureLibrary();
  const picture = sharp(bytes, { limitInputPixels: mostPixels, failOn: "error", sequentialRead: true });
  try {
    const { data, info } = await baked(picture).toBuffer({ resolveWithObject: true });
    const sha256 = createHash("sha256").update(data).digest("hex");
    return { jpeg: data, width: info.width, height: info.height, sha256 };
  } catch (error) {
    throw unreadable(what, error);
  }
}

function baked(picture: Sharp): Sharp {
  return picture
    .timeout({ seconds: timeLimitSeconds })
    .autoOrient()
    .flatten({ background: "white" })
    .toColourspace("srgb")
    .jpeg({ quality, chromaSubsampling: "4:4:4", mozjpeg: false });
}

/** By the picture's head alone, before any of it is unpacked. */
async function checkSize(bytes: Uint8Array, what: string): Promise<void> {
  const sharp = await pictureLibrary();
  const { width, height } = await sharp(bytes, { limitInputPixels: false })
    .metadata()
    .catch((error) => {
      throw unreadable(what, error);
    });
  if (width * height <= mostPixels) return;
  throw new MediaError({
    kind: "too-large",
    found: `The picture is ${width} by ${height} pixels.`,
    expected: `Pictures of up to ${mostPixels / 1e6} million pixels are taken.`,
    todo: "Make a smaller copy of it, or cut out the part that matters, and bring that in.",
  });
}

function notAPicture(what: string): MediaError<"not-a-picture"> {
  return new MediaError({
    kind: "not-a-picture",
    found: `This is ${what}.`,
    expected: "A photograph is a JPEG, PNG or WebP file.",
    todo: "Choose the photograph, or save it as JPEG first.",
  });
}

function unreadable(what: string, cause: unknown): MediaError<"unreadable-picture"> {
  const heic = what.includes("HEIC");
  return new MediaError(
    {
      kind: "unreadable-picture",
      found: heic
        ? `This is ${what}, which cannot be read here.`
        : `This is ${what}, but it is damaged or cut short.`,
      expected: "A photograph is a whole JPEG, PNG or WebP file.",
      todo: heic
        ? "Save it as JPEG and bring that in. A telephone can be set to take JPEG (“most compatible”)."
        : "Copy it again from the camera, and see whether another program opens it.",
    },
    { cause },
  );
}
