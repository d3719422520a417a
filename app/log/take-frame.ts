import type { Still } from "#lib/build/index.ts";
import type { Mark } from "#lib/mark/index.ts";
import { grabFrame, toPng } from "#lib/media/browser/frame.ts";
import { type OfferedFrame, offerSharpest } from "#lib/media/browser/sharpest.ts";
import { middleOf } from "#lib/time/index.ts";
import type { BuildSession } from "../session/build-session.ts";
import { bake, putStill } from "./deeds.ts";
import type { Picture } from "./picture.ts";
import { recordingAddress } from "./player.tsx";

/** Takes the frame that is shown, exactly, as a still of a mark; or the one at another moment of its recording. */
export async function takeFrame(
  session: BuildSession,
  mark: Mark,
  picture: Picture | null,
  replaces?: Still,
  moment = picture?.moment() ?? 0,
): Promise<void> {
  const { src, frames } = filmOf(mark, picture);
  const { canvas } = await grabFrame({ src, frames, moment });
  putStill(
    session,
    mark,
    await bake(await toPng(canvas)),
    { source: "frame", recordingId: mark.recordingId, at: moment },
    replaces,
  );
}

/** Takes the sharpest frame within half a second of the one that is shown; that one itself where none can be measured. */
export async function takeSharpest(
  session: BuildSession,
  mark: Mark,
  picture: Picture | null,
): Promise<void> {
  const { frames } = filmOf(mark, picture);
  const moment = picture?.moment() ?? 0;
  const { offered } = await sharpestNear(mark, picture, moment);
  const best = offered[0];
  await takeFrame(session, mark, picture, undefined, best ? middleOf(frames, best.index) : moment);
}

/** The sharpest frames near a moment of a mark's recording, and the frame of the moment itself. */
export function sharpestNear(
  mark: Mark,
  picture: Picture | null,
  moment: number,
): Promise<{ offered: OfferedFrame[]; exact: OfferedFrame | null }> {
  return offerSharpest({ ...filmOf(mark, picture), moment });
}

function filmOf(mark: Mark, picture: Picture | null) {
  if (!picture?.frames || mark.recordingId === null) {
    throw new Error("There is no picture to take a still from. Add a photograph, or mark on a recording.");
  }
  const { href } = new URL(recordingAddress(mark.recordingId), window.location.href);
  return { src: href, frames: picture.frames };
}
