import type { Still } from "#lib/build/index.ts";
import type { Mark } from "#lib/mark/index.ts";
import { grabFrame, toPng } from "#lib/media/browser/frame.ts";
import type { BuildSession } from "../session/build-session.ts";
import { bake, putStill } from "./deeds.ts";
import type { Picture } from "./picture.ts";
import { recordingAddress } from "./player.tsx";

/** Takes the frame that is shown, exactly, as a still of a mark. */
export async function takeFrame(
  session: BuildSession,
  mark: Mark,
  picture: Picture | null,
  replaces?: Still,
): Promise<void> {
  if (!picture?.frames || mark.recordingId === null) {
    throw new Error("There is no picture to take a still from. Add a photograph, or mark on a recording.");
  }
  const at = picture.moment();
  const { canvas } = await grabFrame({
    src: new URL(recordingAddress(mark.recordingId), window.location.href).href,
    frames: picture.frames,
    moment: at,
  });
  putStill(
    session,
    mark,
    await bake(await toPng(canvas)),
    { source: "frame", recordingId: mark.recordingId, at },
    replaces,
  );
}
