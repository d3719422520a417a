import { closeSync, fstatSync, readSync } from "node:fs";
import {
  CustomSource,
  EncodedPacketSink,
  Input,
  type InputVideoTrack,
  MATROSKA,
  MP4,
  MPEG_TS,
  QTFF,
  UnsupportedInputFormatError,
  WEBM,
} from "mediabunny";
import { readFrameTable } from "./frame-table.ts";
import { readMatroskaLayout } from "./layout-matroska.ts";
import { readMp4Layout } from "./layout-mp4.ts";
import { openQuietlySync } from "./open-quietly.ts";
import {
  type Film,
  type NoFilm,
  type ProbeResult,
  playableCodecs,
  playableContainers,
  sayUnplayable,
} from "./probe-result.ts";
import { type Sniffed, sniff } from "./sniff.ts";
import { errorCode, sayBytes } from "./trouble.ts";

/** Only containers of films: a playlist format would let a file name other files, or addresses, to be read. */
const formats = [MP4, QTFF, MATROSKA, WEBM, MPEG_TS];
const containerNames: Record<string, string> = {
  MP4: "MP4",
  "QuickTime File Format": "MOV",
  Matroska: "MKV",
  WebM: "WebM",
  "MPEG Transport Stream": "TS",
};

/**
 * Reads a recording in this very thread. It may never come back: some damaged files make the reader turn in
 * a circle, so everybody but the worker calls `probe` instead.
 *
 * @param alive called now and then while the work goes on.
 */
export async function probeFilm(path: string, alive: () => void): Promise<ProbeResult> {
  const look = firstLook(path);
  if ("ok" in look) return look;
  alive();
  if (look.needs !== null && look.needs > look.size) return cutShort(look.size, look.needs);
  const fd = openQuietlySync(path);
  const input = new Input({ source: sourceOf(fd), formats });
  try {
    return await readFilm(input, look, alive);
  } catch (error) {
    return unreadable(look, error);
  } finally {
    input.dispose();
    closeSync(fd);
  }
}

/** The bytes of an open file, for the reader. */
function sourceOf(fd: number): CustomSource {
  return new CustomSource({
    getSize: () => fstatSync(fd).size,
    read: (start, end) => {
      const bytes = new Uint8Array(end - start);
      readSync(fd, bytes, 0, bytes.length, start);
      return bytes;
    },
    prefetchProfile: "fileSystem",
  });
}

interface Look {
  sniffed: Sniffed;
  size: number;
  needs: number | null;
  createdAt: string | null;
  hasIndex: boolean;
}

/** What the first bytes and the outermost layout say, before the reader is let loose. */
function firstLook(path: string): Look | NoFilm {
  const fd = openQuietlySync(path);
  try {
    const size = fstatSync(fd).size;
    if (size === 0) return empty;
    const head = Buffer.alloc(Math.min(size, 4096));
    readSync(fd, head, 0, head.length, 0);
    const sniffed = sniff(head);
    if (sniffed.sort === "other film") return { ok: false, ...sayUnplayable(`This is ${sniffed.what}.`) };
    if (sniffed.sort === "sound") return noPicture(`This is ${sniffed.what}.`);
    if (sniffed.sort === "picture") return picture(sniffed.what);
    if (sniffed.sort === "text") return notVideo(sniffed.what, size);
    if (sniffed.what.includes("MP4")) return { sniffed, size, ...readMp4Layout(fd, size) };
    return { sniffed, size, hasIndex: true, ...matroska(fd, size, sniffed) };
  } finally {
    closeSync(fd);
  }
}

function matroska(fd: number, size: number, { what }: Sniffed): Pick<Look, "needs" | "createdAt"> {
  return what.includes("Matroska") ? readMatroskaLayout(fd, size) : { needs: null, createdAt: null };
}

async function readFilm(input: Input, look: Look, alive: () => void): Promise<ProbeResult> {
  const format = await input.getFormat();
  const video = await input.getPrimaryVideoTrack();
  alive();
  if (video === null) return withoutPicture(input, look);
  const table = await readFrameTable(new EncodedPacketSink(video), alive);
  if (table === null) return noPicture("There is a picture track, but no frame in it.");
  if (table.tooMany) return tooLong(table.count);
  if (!table.lastIsThere) return cutShort(look.size, null);
  const codec = await codecName(video);
  const container = containerNames[format.name] ?? format.name;
  const audio = await input.getPrimaryAudioTrack();
  return {
    ok: true,
    duration: table.end,
    frames: { starts: table.starts, end: table.end },
    width: await video.getDisplayWidth(),
    height: await video.getDisplayHeight(),
    rotation: await video.getRotation(),
    videoCodec: codec,
    audioCodec: audio && (await codecName(audio)),
    container,
    playable: playableCodecs.has(codec) && playableContainers.has(container),
    ...saidDate(look),
  };
}

async function codecName(
  track: Pick<InputVideoTrack, "getInternalCodecId"> & { getCodec(): Promise<string | null> },
) {
  const internal = await track.getInternalCodecId();
  const printable = String(internal ?? "unknown")
    .replace(/[^\x20-\x7e]/g, "?")
    .slice(0, 32);
  return (await track.getCodec()) ?? printable;
}

function saidDate(look: Look): Pick<Film, "createdAt" | "createdAtTrust"> {
  if (look.createdAt === null)
    return { createdAt: null, createdAtTrust: "The file does not say when it was made." };
  const createdAtTrust =
    "Written by the camera; UTC by the standard, but not every camera keeps to it, and its clock may be wrong.";
  return { createdAt: look.createdAt, createdAtTrust };
}

async function withoutPicture(input: Input, look: Look): Promise<NoFilm> {
  if (!look.hasIndex) return indexMissing(look.size);
  const sound = await input.getPrimaryAudioTrack();
  return noPicture(
    sound ? "There is sound in this file, but no picture." : "There is no picture in this file.",
  );
}

const filmExpected = "A recording is an MP4, MOV, MKV or WebM file with a picture in it.";

const empty: NoFilm = {
  ok: false,
  kind: "empty",
  found: "The file has 0 bytes.",
  expected: filmExpected,
  todo: "Copy it again from the camera or the card; if it is empty there too, nothing was recorded.",
};

function notVideo(what: string, size: number): NoFilm {
  const todo =
    "Choose the recording itself. If this came from a camera, copy it again and compare the sizes.";
  return {
    ok: false,
    kind: "not-video",
    found: `This is ${what} (${sayBytes(size)}).`,
    expected: filmExpected,
    todo,
  };
}

function picture(what: string): NoFilm {
  const todo = "Bring it in as a photograph instead.";
  return { ok: false, kind: "not-video", found: `This is ${what}.`, expected: filmExpected, todo };
}

function noPicture(found: string): NoFilm {
  const todo = "Choose the file that holds the picture; a recorder for sound writes its own.";
  return { ok: false, kind: "no-picture", found, expected: filmExpected, todo };
}

const copyAgain =
  "Copy it again from the camera or the card and compare the sizes. If this is all there is, " +
  "a copy that plays, made with ffmpeg, may save what is left.";

function cutShort(size: number, needs: number | null): NoFilm {
  const found =
    needs === null ? "The end of the recording is missing or blank." : `The file ends at ${sayBytes(size)}.`;
  const expected =
    needs === null
      ? "Its index lists frames that are not there."
      : `Its own index asks for ${sayBytes(needs)}.`;
  return { ok: false, kind: "cut-short", found, expected, todo: copyAgain };
}

function indexMissing(size: number): NoFilm {
  return {
    ok: false,
    kind: "cut-short",
    found: `The file (${sayBytes(size)}) has no index: the part a camera writes last is missing.`,
    expected: "An MP4 or MOV file holds an index that says where each frame lies.",
    todo:
      "Copy it again from the camera or the card and compare the sizes. If the camera lost power while recording, " +
      "put the card back in it and switch it on: many finish the file themselves.",
  };
}

function tooLong(count: number): NoFilm {
  return {
    ok: false,
    kind: "unreadable",
    found: `The index lists more than ${count} frames.`,
    expected: "A recording has fewer; an index like this is most likely damaged.",
    todo: copyAgain,
  };
}

function unreadable(look: Look, error: unknown): NoFilm {
  if (error instanceof UnsupportedInputFormatError) return notVideo(look.sniffed.what, look.size);
  if (isFileError(error)) throw error;
  return {
    ok: false,
    kind: "unreadable",
    found: `This is ${look.sniffed.what}, but its index does not hold together: the file is damaged.`,
    expected: filmExpected,
    todo: copyAgain,
  };
}

/** The drive failed, not the film. */
function isFileError(error: unknown): boolean {
  return /^E[A-Z]+$/.test(errorCode(error));
}
