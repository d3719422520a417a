import { stat } from "node:fs/promises";
import type { NoFilm, ProbeResult } from "./probe-result.ts";
import type { ProbeMessage, ProbeRequest } from "./probe-worker.ts";
import { forget, giveBackThread, takeThread } from "./reader-thread.ts";
import { errorCode } from "./trouble.ts";

export interface ProbeOptions {
  /**
   * How long the reader may give no sign of life, in milliseconds. A film of many hours on a slow disk gives
   * one every thousand frames; a damaged file that makes the reader turn in a circle gives none.
   */
  timeLimitMs?: number;
  /** The module that does the work, for a test that needs one that hangs. */
  workerModule?: URL;
}

/**
 * Says what a video file is and when each of its frames is shown, or why that cannot be said. It reads only,
 * in a worker thread that is ended when it hangs, and never throws for what a file holds.
 */
export async function probe(path: string, options: ProbeOptions = {}): Promise<ProbeResult> {
  const trouble = await missing(path);
  return trouble ?? askWorker(path, options);
}

/** A pipe or a device must not be opened at all: reading one may wait for ever, out of reach of any limit. */
async function missing(path: string): Promise<NoFilm | null> {
  const expected = "A recording is a file that can be read.";
  const todo = "Plug the drive in, or look where the file has gone and whether you may read it.";
  try {
    if ((await stat(path)).isFile()) return null;
    return {
      ok: false,
      kind: "missing",
      found: "This is not a file but a folder or a device.",
      expected,
      todo,
    };
  } catch (error) {
    const found = `The file cannot be reached (${errorCode(error) || String(error)}).`;
    return { ok: false, kind: "missing", found, expected, todo };
  }
}

function askWorker(path: string, options: ProbeOptions): Promise<ProbeResult> {
  const { timeLimitMs = 20_000, workerModule = new URL("./probe-worker.ts", import.meta.url) } = options;
  const worker = takeThread(workerModule);
  return new Promise((resolve) => {
    const giveUp = (result: NoFilm) => {
      clearTimeout(limit);
      forget(worker);
      resolve(worker.terminate().then(() => result));
    };
    const limit = setTimeout(() => giveUp(hung(timeLimitMs)), timeLimitMs);
    worker.on("message", (message: ProbeMessage) => {
      if ("alive" in message) return void limit.refresh();
      clearTimeout(limit);
      giveBackThread(workerModule, worker);
      resolve("result" in message ? message.result : broken(message.failed));
    });
    worker.on("error", (error) => giveUp(broken(error.message)));
    worker.on("exit", () => giveUp(broken("the reader ended without a result")));
    worker.postMessage({ path } satisfies ProbeRequest);
  });
}

function hung(limitMs: number): NoFilm {
  return {
    ok: false,
    kind: "hung",
    found: `Reading the file gave no sign of life for ${Math.round(limitMs / 100) / 10} s, and was stopped.`,
    expected: "A whole file on a working drive answers much sooner.",
    todo: "See that the drive is awake and try again. If it stays so, the file is most likely damaged: copy it again.",
  };
}

function broken(reason: string): NoFilm {
  return {
    ok: false,
    kind: "unreadable",
    found: `Reading the file broke off (${reason.slice(0, 200)}).`,
    expected: "An MP4, MOV, MKV or WebM file with a picture in it.",
    todo: "Copy it again from the camera or the card and compare the sizes.",
  };
}
