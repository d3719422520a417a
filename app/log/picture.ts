import { type Frames, frameAt, intervalOf, middleOf } from "#lib/time/index.ts";

type Watch = () => void;

/** The speeds of the picture, slowest first. */
const rates = [0.1, 0.25, 0.5, 1, 1.5, 2, 4, 8];
/** A frame's time as the player reports it may lie a hair before the table's. */
const HAIR = 0.001;
/**
 * Where in a frame's interval, or beside it, the player is sent, one after another, until it draws that frame. The
 * middle is right nearly always; just before key frames of fragmented files some players give a neighbour.
 */
const aims = [0.5, 0.8, 0.2, 0.95, 0.05, 1.5, -0.5];

/**
 * The picture of one recording: which frame is shown, and moving about in it. It knows the frame by what the
 * browser says it has drawn, never by where it was asked to go.
 */
export class Picture {
  readonly #video: HTMLVideoElement;
  #frames: Frames | null = null;
  /** When the frame on the screen begins; null from the moment a move is asked for until it has been drawn. */
  #drawn: number | null = null;
  #sought: { frame: number; tries: number } | null = null;
  #waiting = false;
  #watching = true;
  readonly #watches = new Set<Watch>();

  constructor(video: HTMLVideoElement) {
    this.#video = video;
    const follow: VideoFrameRequestCallback = (_, metadata) => {
      if (!video.seeking && !this.#waiting) this.#draw(metadata.mediaTime);
      if (this.#watching) video.requestVideoFrameCallback(follow);
    };
    video.requestVideoFrameCallback(follow);
    video.addEventListener("seeking", () => {
      this.#drawn = null;
    });
    video.addEventListener("seeked", () => {
      // Asked to move while it was moving, the player may draw nothing for seconds: the last wish waits its turn.
      if (this.#waiting) this.#move();
    });
    for (const event of ["seeked", "ratechange", "play", "pause", "loadedmetadata"]) {
      video.addEventListener(event, () => this.#tell());
    }
  }

  set frames(frames: Frames | null) {
    this.#frames = frames;
    this.#tell();
  }

  get frames(): Frames | null {
    return this.#frames;
  }

  get video(): HTMLVideoElement {
    return this.#video;
  }

  get running(): boolean {
    return !this.#video.paused && !this.#video.ended;
  }

  get rate(): number {
    return this.#video.playbackRate;
  }

  /** Index of the frame that is shown; null while the table of frames is not there. */
  frame(): number | null {
    if (!this.#frames || this.#frames.starts.length === 0) return null;
    // While a move is under way the frame on the screen is the old one; where it goes is what the hand means.
    if (this.#drawn === null && this.#sought) return this.#sought.frame;
    const moment = this.#drawn ?? this.#video.currentTime;
    return frameAt(this.#frames, moment + HAIR);
  }

  /**
   * The moment that is shown, less the reaction time while the picture runs: the middle of the frame it falls
   * in, in seconds of the recording's clock. A frame looked at while the picture is held is meant itself.
   */
  moment(reactionTime = 0): number {
    const lag = this.running ? reactionTime * this.rate : 0;
    const frame = this.frame();
    if (frame === null || !this.#frames) return Math.max(0, this.#video.currentTime - lag);
    const shown = middleOf(this.#frames, frame);
    return middleOf(this.#frames, frameAt(this.#frames, Math.max(0, shown - lag)));
  }

  goTo(moment: number): void {
    if (this.#frames?.starts.length) this.#seek(frameAt(this.#frames, moment));
    else this.#video.currentTime = moment;
    this.#tell();
  }

  stepFrames(by: number): void {
    const frame = this.frame();
    if (frame === null || !this.#frames) return;
    this.#video.pause();
    this.#seek(Math.min(Math.max(frame + by, 0), this.#frames.starts.length - 1));
    this.#tell();
  }

  runOrHold(): void {
    if (this.running) this.#video.pause();
    else void this.#video.play().catch(() => undefined);
  }

  /** Plays from one moment to another and holds there, unless something else is asked for meanwhile. */
  playThrough(from: number, to: number): void {
    this.goTo(from);
    const video = this.#video;
    const check = () => {
      if (video.currentTime < to && !video.ended) return;
      leave();
      video.pause();
    };
    const leave = () => {
      for (const event of ["timeupdate", "pause"]) video.removeEventListener(event, check);
      video.removeEventListener("seeking", leave);
    };
    const begin = () => {
      video.addEventListener("timeupdate", check);
      video.addEventListener("seeking", leave);
      void video.play().catch(leave);
    };
    if (video.seeking) video.addEventListener("seeked", begin, { once: true });
    else begin();
  }

  changeRate(by: 1 | -1): void {
    const index = rates.findIndex((rate) => rate >= this.rate - 1e-6);
    this.#video.playbackRate = rates[Math.min(Math.max(index + by, 0), rates.length - 1)] as number;
  }

  watch(watch: Watch): () => void {
    this.#watches.add(watch);
    watch();
    return () => this.#watches.delete(watch);
  }

  close(): void {
    this.#watching = false;
    this.#watches.clear();
  }

  #seek(frame: number, tries = 0): void {
    this.#sought = { frame, tries };
    this.#drawn = null;
    this.#waiting = this.#video.seeking;
    if (!this.#waiting) this.#move();
  }

  #move(): void {
    this.#waiting = false;
    if (!this.#frames || !this.#sought) return;
    const { start, end } = intervalOf(this.#frames, this.#sought.frame);
    this.#video.currentTime = Math.max(0, start + (end - start) * (aims[this.#sought.tries] as number));
  }

  /** A frame has been drawn. Asked for one, some files give its neighbour first: then it is asked for again. */
  #draw(mediaTime: number): void {
    const sought = this.#sought;
    this.#drawn = mediaTime;
    if (sought && this.#frames && !this.running) {
      const missed = frameAt(this.#frames, mediaTime + HAIR) !== sought.frame;
      if (missed && sought.tries + 1 < aims.length) {
        this.#seek(sought.frame, sought.tries + 1);
        return;
      }
    }
    this.#sought = null;
    this.#tell();
  }

  #tell(): void {
    for (const watch of this.#watches) watch();
  }
}
