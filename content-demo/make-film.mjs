/**
 * Draws the demonstration's two recordings, frame by frame, and has ffmpeg (with libx264) write them. The same
 * bytes come out each time on the same machine.
 *
 *     node content-demo/make-film.mjs [folder]
 */
import { spawn } from "node:child_process";
import { once } from "node:events";
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join, resolve } from "node:path";
import { drawFrame, drawLaterFrame } from "./film/frame.mjs";
import { laterWav, wav } from "./film/sound.mjs";
import { framesPerSecond, height, laterLengthInFrames, lengthInFrames, width } from "./job/beats.mjs";

const folder = resolve(process.argv[2] ?? join(import.meta.dirname, "ostrey-pump/recordings"));
const films = [
  { name: "water-pump.mp4", frames: lengthInFrames, draw: drawFrame, sound: wav },
  { name: "drain-plug.mp4", frames: laterLengthInFrames, draw: drawLaterFrame, sound: laterWav },
];
const scratch = mkdtempSync(join(tmpdir(), "film-"));

const bitExact = [
  "-fflags",
  "+bitexact",
  "-flags:v",
  "+bitexact",
  "-flags:a",
  "+bitexact",
  "-map_metadata",
  "-1",
];
const pictureIn = [
  "-f",
  "rawvideo",
  "-pix_fmt",
  "rgba",
  "-s",
  `${width}x${height}`,
  "-r",
  `${framesPerSecond}`,
  "-i",
  "pipe:0",
];
const colour = [
  "-vf",
  "scale=out_color_matrix=bt709:out_range=tv",
  "-colorspace",
  "bt709",
  "-color_primaries",
  "bt709",
  "-color_trc",
  "bt709",
];
const picture = [
  "-c:v",
  "libx264",
  "-profile:v",
  "high",
  "-preset",
  "slower",
  "-tune",
  "animation",
  "-crf",
  "29",
  "-g",
  "250",
  "-threads",
  "1",
  "-pix_fmt",
  "yuv420p",
  ...colour,
];
const soundOut = ["-c:a", "aac", "-b:a", "24k", "-ac", "1", "-ar", "24000"];

async function film({ name, frames, draw, sound }) {
  const soundFile = join(scratch, "sound.wav");
  writeFileSync(soundFile, sound());
  mkdirSync(folder, { recursive: true });
  const options = [
    "-nostdin",
    "-v",
    "error",
    "-y",
    ...pictureIn,
    "-i",
    soundFile,
    ...picture,
    ...soundOut,
    ...bitExact,
  ];
  const ffmpeg = spawn("ffmpeg", [...options, "-movflags", "+faststart", "-f", "mp4", join(folder, name)], {
    stdio: ["pipe", "inherit", "inherit"],
  });
  const ended = once(ffmpeg, "close");
  for (let index = 0; index < frames; index++) {
    const pixels = draw(index);
    const bytes = Buffer.from(pixels);
    if (!ffmpeg.stdin.write(bytes)) await once(ffmpeg.stdin, "drain");
    if (index % 250 === 0) console.log(`${name}: frame ${index} of ${frames}`);
  }
  ffmpeg.stdin.end();
  const [code] = await ended;
  if (code !== 0) throw new Error(`ffmpeg ended with ${code}`);
}

try {
  for (const one of films) await film(one);
} finally {
  rmSync(scratch, { recursive: true, force: true });
}
