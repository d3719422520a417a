import path from "node:path";
import { findFfmpeg, playableCopy } from "#lib/media/index.ts";
import type { Tell } from "../child.ts";

/** Makes copies that play of one film, one after the other. */
export async function work(
  { film, folder, run }: { film: string; folder: string; run: number },
  tell: Tell,
): Promise<void> {
  const ffmpeg = await findFfmpeg();
  if (!ffmpeg) throw new Error("there is no ffmpeg");
  for (let number = 0; number < 50; number++) {
    const name = `${run}-${number}.copy.mp4`;
    await playableCopy({ ffmpeg, from: film, to: path.join(folder, name), duration: 8 });
    tell(name);
  }
}
