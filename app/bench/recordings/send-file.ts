import { type DetailedError, Upload } from "tus-js-client";
import type { Row, TableName } from "#lib/store/tables.ts";
import { sayWords, Trouble } from "../../parts/send.ts";
import type { HashAnswer } from "./hash-worker.ts";

export type Rows = { table: TableName; row: Row }[];

/** A file of which a part has arrived before it was broken off. */
export interface BrokenOff {
  id: string;
  sitting: string;
  name: string;
  size: number;
  offset: number;
  told: Record<string, string>;
}

/** What is being done with a file that is being brought in. */
export interface SendingState {
  doing: "sending" | "waiting" | "checking";
  /** 0 to 1. */
  fraction: number;
}

export interface SendOptions {
  build: string;
  sitting: string;
  /** Where it was broken off, to go on from there. */
  from: BrokenOff | null;
  signal: AbortSignal;
  onState: (state: SendingState) => void;
}

/** Pieces of 16 MiB: a broken line loses a second or two, and the program answers between them. */
const PIECE = 16 * 1024 * 1024;

/** While the program is away it is asked again after these times, in milliseconds, for about an hour. */
const RETRIES = [300, 1000, 3000, ...Array.from({ length: 720 }, () => 5000)];

/**
 * Sends a file piece by piece, from where it was broken off if it was, and has it verified and listed. It goes on by
 * itself when the program has been away; a page that was closed goes on when the file is chosen again.
 *
 * @returns the rows of its recording, on disk
 * @throws Trouble with words for the person; an AbortError when it was stopped, and may go on later
 */
export async function sendFile(file: File, options: SendOptions): Promise<Rows> {
  const hashing = hashOf(file, options.signal);
  hashing.catch(() => undefined);
  const id = await upload(file, options);
  options.onState({ doing: "checking", fraction: 1 });
  const sha256 = await hashing;
  return takeWhole(id, sha256, options.signal);
}

/** Whether a chosen file is the one that was broken off: by its name, its length and its time of change. */
export function isSameFile(file: File, broken: BrokenOff): boolean {
  const { name, size, told } = broken;
  return file.name === name && file.size === size && String(file.lastModified) === (told.modified ?? "");
}

/** @returns the id under which it has arrived */
function upload(file: File, { build, sitting, from, signal, onState }: SendOptions): Promise<string> {
  return new Promise((resolve, reject) => {
    const one = new Upload(file, {
      endpoint: `${location.origin}/media/uploads`,
      ...(from ? { uploadUrl: `${location.origin}/media/uploads/${from.id}` } : {}),
      metadata: { build, sitting, name: file.name, modified: String(file.lastModified) },
      chunkSize: PIECE,
      retryDelays: RETRIES,
      // What was broken off is asked of the program, which knows it whatever page or browser asks.
      storeFingerprintForResuming: false,
      onProgress: (sent, size) => onState({ doing: "sending", fraction: size > 0 ? sent / size : 1 }),
      onShouldRetry: (error) => {
        const status = error.originalResponse?.getStatus() ?? 0;
        const again = status === 0 || status === 409 || status === 423 || (status >= 500 && status !== 507);
        if (again) onState({ doing: "waiting", fraction: 0 });
        return again;
      },
      onError: (error) => reject(inWords(error)),
      onSuccess: () => resolve(new URL(one.url ?? "", location.href).pathname.split("/").at(-1) ?? ""),
    });
    const stop = () => {
      void one.abort();
      reject(new DOMException("Stopped.", "AbortError"));
    };
    if (signal.aborted) return stop();
    signal.addEventListener("abort", stop, { once: true });
    one.start();
  });
}

function inWords(error: Error | DetailedError): Trouble {
  const body = "originalResponse" in error ? (error.originalResponse?.getBody() ?? "") : "";
  try {
    return new Trouble(sayWords(JSON.parse(body)));
  } catch {
    return new Trouble(
      "It could not be sent to its end. Choose it again: it goes on where it was broken off.",
    );
  }
}

/** Has what arrived verified and listed. While the program is away it is asked again; asking twice lists it once. */
async function takeWhole(id: string, sha256: string, signal: AbortSignal): Promise<Rows> {
  const body = JSON.stringify({ sha256 });
  const headers = { "content-type": "application/json" };
  for (let tries = 0; ; tries++) {
    signal.throwIfAborted();
    const address = `/media/uploads/${id}/whole`;
    const response = await fetch(address, { method: "POST", headers, body }).catch(() => null);
    const answer = await response?.json().catch(() => null);
    if (response?.ok && answer) return (answer as { rows: Rows }).rows;
    if (response && answer) throw new Trouble(sayWords(answer));
    await new Promise((resolve) => setTimeout(resolve, RETRIES[Math.min(tries, RETRIES.length - 1)]));
  }
}

function hashOf(file: File, signal: AbortSignal): Promise<string> {
  const worker = new Worker(new URL("./hash-worker.ts", import.meta.url), { type: "module" });
  const answer = new Promise<string>((resolve, reject) => {
    worker.onmessage = ({ data }: MessageEvent<HashAnswer>) =>
      "sha256" in data ? resolve(data.sha256) : reject(unreadable(data.failed));
    worker.onerror = (event) => reject(unreadable(event.message));
    signal.addEventListener("abort", () => reject(signal.reason), { once: true });
  });
  worker.postMessage(file);
  return answer.finally(() => worker.terminate());
}

function unreadable(why: string): Trouble {
  return new Trouble(
    `The file could not be read to its end (${why || "the browser does not say why"}). See whether it was moved or its drive has gone, then choose it again.`,
  );
}
