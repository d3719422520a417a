import type { FilmSource } from "./decoder.ts";

/** Which frame a player drew, and a copy of it. */
interface DrawnFrame {
  canvas: HTMLCanvasElement;
  /** The frame's own time in seconds, as the player says it; it names the frame really drawn. */
  time: number;
}

interface HiddenPlayer {
  src: FilmSource;
  video: HTMLVideoElement;
  address: string;
}

let hidden: HiddenPlayer | null = null;
let queue: Promise<unknown> = Promise.resolve();

/**
 * Shows the frame at `moment` in a player and copies it while it is being drawn. One request at a time: a second
 * seek would end the first.
 *
 * @param video the player to use; a hidden one unless given. It is left paused where it was sent.
 * @returns null when no frame was drawn within the limit, which happens now and then
 */
export function playFrame(
  src: FilmSource,
  moment: number,
  limitMs: number,
  video?: HTMLVideoElement,
): Promise<DrawnFrame | null> {
  const next = queue.then(() => seekAndDraw(video ?? playerFor(src), moment, limitMs));
  queue = next.catch(() => undefined);
  return next;
}

/** Frees the hidden player, if it plays this film; in any case when none is named. */
export function closePlayer(src?: FilmSource): void {
  if (hidden === null || (src !== undefined && src !== hidden.src)) return;
  hidden.video.removeAttribute("src");
  hidden.video.load();
  if (typeof hidden.src !== "string") URL.revokeObjectURL(hidden.address);
  hidden = null;
}

function playerFor(src: FilmSource): HTMLVideoElement {
  if (hidden?.src === src) return hidden.video;
  closePlayer();
  const video = document.createElement("video");
  const address = typeof src === "string" ? src : URL.createObjectURL(src);
  video.muted = true;
  video.playsInline = true;
  video.preload = "auto";
  video.src = address;
  hidden = { src, video, address };
  return video;
}

async function seekAndDraw(
  video: HTMLVideoElement,
  moment: number,
  limitMs: number,
): Promise<DrawnFrame | null> {
  video.pause();
  // A picture that cannot be shown leaves the width at nought, without any error.
  if (video.readyState < HTMLMediaElement.HAVE_CURRENT_DATA)
    await event(video, ["loadeddata", "error"], limitMs);
  if (video.videoWidth === 0) return null;
  const drawn = nextFrame(video, limitMs);
  const arrived = event(video, ["seeked", "error"], limitMs);
  video.currentTime = moment;
  const frame = await drawn;
  // Sent on before it says that it has arrived, a player may draw nothing for many seconds.
  await arrived;
  return frame;
}

/** Copies the frame that is drawn next; null when none is within the limit. */
function nextFrame(video: HTMLVideoElement, limitMs: number): Promise<DrawnFrame | null> {
  return new Promise((resolve) => {
    const drawn = video.requestVideoFrameCallback((_now, { mediaTime }) => {
      clearTimeout(limit);
      resolve({ canvas: copyOf(video), time: mediaTime });
    });
    const limit = setTimeout(() => {
      video.cancelVideoFrameCallback(drawn);
      resolve(null);
    }, limitMs);
  });
}

function event(video: HTMLVideoElement, names: string[], limitMs: number): Promise<void> {
  return new Promise((resolve) => {
    const limit = setTimeout(done, limitMs);
    function done() {
      clearTimeout(limit);
      for (const name of names) video.removeEventListener(name, done);
      resolve();
    }
    for (const name of names) video.addEventListener(name, done);
  });
}

function copyOf(video: HTMLVideoElement): HTMLCanvasElement {
  const canvas = document.createElement("canvas");
  canvas.width = video.videoWidth;
  canvas.height = video.videoHeight;
  canvas.getContext("2d")?.drawImage(video, 0, 0);
  return canvas;
}
