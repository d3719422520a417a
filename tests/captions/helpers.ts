import fs from "node:fs";
import path from "node:path";
import { type Cue, readCaptions } from "#lib/captions/index.ts";

const folder = import.meta.dirname;

/** A recording: its name, where its captions lie, and the gold notes of what must, may and must not be marked. */
export interface Recording {
  name: string;
  captions: string;
  gold: string;
}

const one = (place: string, name: string, ext: string): Recording => ({
  name: `${name}.${ext}`,
  captions: path.join(folder, place, `${name}.${ext}`),
  gold: path.join(folder, place, `${name}.gold.json`),
});

/** The recordings on which the rules were made. */
export const known: readonly Recording[] = [
  one("shared", "treadle-head", "vtt"),
  one("shared", "lathe-apron", "vtt"),
  one("shared", "lathe-apron", "srt"),
  one("shared", "outboard-lower", "vtt"),
  one("shared", "outboard-lower", "txt"),
  one("recordings", "tube-radio", "vtt"),
  one("recordings", "bracket-clock", "srt"),
  one("recordings", "hub-gear", "vtt"),
  one("recordings", "oil-engine", "txt"),
  one("recordings", "typewriter", "vtt"),
];

/** The recordings that were kept aside until the rules were made. */
export const keptAside: readonly Recording[] = [
  one("recordings", "platen-press", "txt"),
  one("recordings", "well-pump", "srt"),
];

export const cuesOf = (recording: Recording): Cue[] => readCaptions(fs.readFileSync(recording.captions)).cues;

/** Captions in which somebody says this and nothing else, a sentence each ten seconds. */
export function saying(...sentences: string[]): string {
  const cues = sentences.map(
    (text, i) => `${10 * i + 1}:\n${stamp(10 * i + 1)} --> ${stamp(10 * i + 8)}\n${text}`,
  );
  return `WEBVTT\n\n${cues.join("\n\n")}`;
}

const stamp = (seconds: number) =>
  `00:${String(Math.floor(seconds / 60)).padStart(2, "0")}:${String(seconds % 60).padStart(2, "0")}.000`;
