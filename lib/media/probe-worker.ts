import { parentPort } from "node:worker_threads";
import { probeFilm } from "./probe-film.ts";
import type { ProbeResult } from "./probe-result.ts";

/** What the worker is sent: one recording at a time. */
export interface ProbeRequest {
  path: string;
}

/** What it answers: a sign of life now and then, then the result or what went wrong in reading the disk. */
export type ProbeMessage = { alive: true } | { result: ProbeResult } | { failed: string };

const send = (message: ProbeMessage, transfer: ArrayBuffer[] = []) =>
  parentPort?.postMessage(message, transfer);

parentPort?.on("message", async ({ path }: ProbeRequest) => {
  try {
    const result = await probeFilm(path, () => send({ alive: true }));
    send({ result }, result.ok ? [result.frames.starts.buffer as ArrayBuffer] : []);
  } catch (error) {
    send({ failed: error instanceof Error ? error.message : String(error) });
  }
});
