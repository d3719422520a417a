import { type ChildProcess, spawn } from "node:child_process";
import fs from "node:fs/promises";
import path from "node:path";
import { stripVTControlCharacters } from "node:util";
import { decodeCaptions, readCaptions } from "#lib/captions/index.ts";

import { type Ffmpeg, soundOf } from "#lib/media/index.ts";
import { Refused } from "#lib/store/index.ts";
import { fillIn, splitCommand } from "./split-command.ts";

/** How far the making of captions is. */
export interface CaptionProgress {
  doing: "sound" | "words";
  /** From 0 to 1; null while the command does not say. */
  fraction: number | null;
  /** The last line that the command wrote. */
  line: string;
}

export interface CaptionWork {
  /** The restorer's own command, with {sound} and, where it writes a file, {captions}. */
  command: string;
  /** The film; read and never written to. */
  film: string;
  /** Its length in seconds. */
  duration: number;
  /** Makes the sound file; without one the command is given the film itself. */
  ffmpeg: Ffmpeg | null;
  /** An existing folder in which a folder of this work's own is made and taken away again. */
  within: string;
  /** After how many milliseconds the command is ended. */
  limit: number;
  signal: AbortSignal;
  onProgress: (progress: CaptionProgress) => void;
}

/** The most that is read of what the command gives, in bytes. */
const MOST_BYTES = 10_000_000;

/**
 * Makes captions from the sound of a film with the restorer's own command, which runs as a process of its own and
 * without a shell. It is ended when it is stopped or takes too long; nothing of it stays but the captions.
 *
 * @returns the text of the captions, as they came
 * @throws Refused with what would help, or the signal's reason
 */
export async function captionsFromSound(work: CaptionWork): Promise<string> {
  const words = splitCommand(work.command);
  if (!words.some((word) => word.includes("{sound}"))) throw noPlace();
  const folder = await fs.mkdtemp(path.join(work.within, "captions-"));
  try {
    const sound = work.ffmpeg ? path.join(folder, "sound.wav") : work.film;
    if (work.ffmpeg) await makeSound(work, work.ffmpeg, sound);
    const captions = path.join(folder, "captions.vtt");
    const printed = await run(fillIn(words, { sound, captions }), folder, work);
    const bytes = work.command.includes("{captions}") ? await readWritten(captions) : printed;
    return readable(bytes);
  } finally {
    await fs.rm(folder, { recursive: true, force: true }).catch(() => undefined);
  }
}

async function makeSound({ film, duration, signal, onProgress }: CaptionWork, ffmpeg: Ffmpeg, to: string) {
  const told = (fraction: number) => onProgress({ doing: "sound", fraction, line: "" });
  told(0);
  await soundOf({ ffmpeg, from: film, to, duration, signal, onProgress: told });
}

/** Runs the command and gives what it printed. */
function run(words: string[], cwd: string, { limit, signal, onProgress }: CaptionWork): Promise<Buffer> {
  const [program = "", ...args] = words;
  return new Promise((resolve, reject) => {
    signal.throwIfAborted();
    onProgress({ doing: "words", fraction: null, line: "" });
    // A group of its own, so that what the command has started ends with it.
    const child = spawn(program, args, {
      cwd,
      stdio: ["ignore", "pipe", "pipe"],
      detached: process.platform !== "win32",
      windowsHide: true,
    });
    const end = () => endGroup(child);
    const timer = setTimeout(() => {
      end();
      reject(tooLong(limit));
    }, limit);
    signal.addEventListener("abort", end, { once: true });
    process.once("exit", end);
    const printed: Buffer[] = [];
    let size = 0;
    let said = "";
    const hear = (bytes: Buffer) => {
      said = (said + bytes.toString("utf8")).slice(-4000);
      onProgress({ doing: "words", ...lastSaid(said) });
    };
    child.stdout.on("data", (bytes: Buffer) => {
      size += bytes.length;
      if (size <= MOST_BYTES) printed.push(bytes);
    });
    child.stderr.on("data", hear);
    const over = () => {
      clearTimeout(timer);
      signal.removeEventListener("abort", end);
      process.removeListener("exit", end);
    };
    child.on("error", (error) => {
      over();
      reject(notRun(program, error.message));
    });
    child.on("close", (code) => {
      over();
      if (signal.aborted) reject(signal.reason);
      else if (code === 0) resolve(Buffer.concat(printed));
      else reject(failed(code, said));
    });
  });
}

function endGroup(child: ChildProcess): void {
  try {
    if (process.platform !== "win32" && child.pid) process.kill(-child.pid, "SIGKILL");
    else child.kill("SIGKILL");
  } catch {
    // It has ended by itself.
  }
}

/** The last line that was written, and how far it says it is. */
function lastSaid(said: string): { fraction: number | null; line: string } {
  const lines = plain(said)
    .split("\n")
    .filter((line) => line.trim() !== "");
  const line = (lines.at(-1) ?? "").trim().slice(0, 200);
  const percent = Number(/(\d{1,3}(?:\.\d+)?)\s?%/.exec(line)?.[1] ?? Number.NaN);
  return { fraction: percent >= 0 && percent <= 100 ? percent / 100 : null, line };
}

/** Without the signs with which a terminal is steered. */
function plain(said: string): string {
  return stripVTControlCharacters(said)
    .replace(/\r/g, "\n")
    .replace(/[^\P{Cc}\n]/gu, "");
}

async function readWritten(file: string): Promise<Buffer> {
  const { size } = await fs.stat(file).catch(() => ({ size: 0 }));
  return size === 0 || size > MOST_BYTES ? Buffer.alloc(0) : fs.readFile(file);
}

function readable(bytes: Buffer): string {
  const { cues, problems } = readCaptions(bytes);
  if (cues.length > 0) return decodeCaptions(bytes).text;
  throw new Refused({
    found: `The command ended well, and gave no captions. ${problems[0]?.found ?? ""}`,
    expected:
      "WebVTT, SRT or timed text, in the file {captions} or, where the command has no {captions}, printed.",
    todo: "Try the command by hand on a short film, and see what it writes.",
  });
}

const inSettings = "Mend the command under Keys and settings.";

function noPlace(): Refused {
  return new Refused({
    found: "The command that makes captions does not say where the sound file goes.",
    expected: "{sound} where the sound file goes, and {captions} where the captions go.",
    todo: inSettings,
  });
}

function notRun(program: string, why: string): Refused {
  return new Refused({
    found: `“${program.slice(0, 200)}” could not be run: ${why.slice(0, 200)}.`,
    expected: "A program on this computer: its whole path, or a name that is found without one.",
    todo: inSettings,
  });
}

function failed(code: number | null, said: string): Refused {
  return new Refused({
    found: `The command ended with ${code}: ${plain(said).trim().split("\n").slice(-3).join(" ").slice(-400) || "it said nothing"}`,
    expected: "An end with 0, and captions.",
    todo: "Try it by hand on this film. Nothing was changed.",
  });
}

function tooLong(limit: number): Refused {
  return new Refused({
    found: `The command had not ended after ${Math.round(limit / 60_000)} minutes, and was stopped.`,
    expected: "An end within four times the length of the film and half an hour.",
    todo: "Try it by hand; a smaller model is quicker.",
  });
}
