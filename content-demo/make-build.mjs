/**
 * Writes `ostrey-pump/`: build.json, captions and stills, from the job as written in `job/` and the film as
 * drawn in `film/`. The recording must have been made before: `node content-demo/make-film.mjs`.
 *
 *     node --import tsx content-demo/make-build.mjs
 */
import { createHash } from "node:crypto";
import { mkdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import sharp from "sharp";
import { buildFolder, folderVersion } from "#lib/build/index.ts";
import { drawFrame, drawPhotograph } from "./film/frame.mjs";
import { frameOf, height, lengthInFrames, lengthInSeconds, middleOf, width } from "./job/beats.mjs";
import { captionTrack, edits, markId, marks, recordingRow } from "./job/build.mjs";
import { drawingOf } from "./job/figures.mjs";
import { assemblies, build, buildId, items, machine, recordingId, sittings } from "./job/machine.mjs";
import { webvtt } from "./job/speech.mjs";
import { stills } from "./job/stills.mjs";

const folder = join(import.meta.dirname, "ostrey-pump");
const files = {};

function writeFile(rowId, path, bytes) {
  mkdirSync(join(folder, path, ".."), { recursive: true });
  writeFileSync(join(folder, path), bytes);
  files[rowId] = path;
  return createHash("sha256").update(bytes).digest("hex");
}

async function takeStill({ of, at, alt }, rank) {
  const pixels = at === null ? drawPhotograph(of) : drawFrame(frameOf(at));
  const raw = sharp(Buffer.from(pixels), { raw: { width, height, channels: 4 } });
  const bytes = await raw.removeAlpha().jpeg({ quality: 88, chromaSubsampling: "4:4:4" }).toBuffer();
  const slug = of.replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`);
  const id = `demo-still-${slug}`;
  const sha256 = writeFile(id, `stills/${slug}.jpg`, bytes);
  return {
    id,
    buildId,
    markId: markId(of),
    source: at === null ? "photograph" : "frame",
    recordingId: at === null ? null : recordingId,
    at: at === null ? null : middleOf(at),
    sha256,
    width,
    height,
    alt,
    drawing: drawingOf(of),
    rank,
    gone: null,
    rev: 0,
  };
}

function recording() {
  const path = "recordings/water-pump.mp4";
  files[recordingId] = path;
  const sha256 = createHash("sha256")
    .update(readFileSync(join(folder, path)))
    .digest("hex");
  const probe = {
    duration: lengthInSeconds,
    frameCount: lengthInFrames,
    width,
    height,
    rotation: 0,
    videoCodec: "avc",
    audioCodec: "aac",
    playable: true,
  };
  return recordingRow(probe, sha256);
}

rmSync(join(folder, "stills"), { recursive: true, force: true });
writeFile(captionTrack.id, "captions/water-pump.vtt", webvtt());
const stillRows = [];
for (const [rank, still] of stills.entries()) stillRows.push(await takeStill(still, rank));
const document = buildFolder.parse({
  form: "witness-mark-build",
  version: folderVersion,
  machine,
  assemblies,
  items,
  build,
  sittings,
  recordings: [recording()],
  captions: [captionTrack],
  marks,
  stills: stillRows,
  edits,
  answers: [
    {
      id: "demo-answer-hold",
      buildId: build.id,
      key: "hold/hazard/demo-mark-080",
      evidence: "",
      reason: "Turned by hand with the belt off; the belt guard was on before the engine was started.",
      gone: null,
      rev: 1,
    },
  ],
  gotchas: [],
  sightings: [],
  foreign: [],
  files,
});
writeFileSync(join(folder, "build.json"), `${JSON.stringify(document, null, 2)}\n`);
console.log(`${marks.length} marks, ${stillRows.length} stills`);
