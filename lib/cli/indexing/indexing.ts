import { setTimeout as sleep } from "node:timers/promises";
import { MediaError } from "#lib/media/index.ts";
import { type OpenWorkshop, waiting } from "#lib/store/index.ts";
import { lookAt, readWhole } from "./look.ts";
import { settleTwins } from "./twins.ts";

/** What the work in the background is doing now. */
export interface Doing {
  recording: string;
  /** `looking` at a film's length and frames, or `reading` it whole for its hash. */
  what: "looking" | "reading";
  /** How far it is, 0 to 1. */
  fraction: number;
}

export type IndexState = "working" | "stopped" | "resting";

/** How long after a request reading makes way for the next ones, and for how long each time, in milliseconds. */
const QUIET_AFTER = 300;
const GIVE_WAY = 30;

/**
 * The work in the background on recordings that have been listed: each is looked at, then, when all have been, read
 * whole, one file at a time. What is to be done is asked of the database, so that it goes on where it was after a
 * restart. It reads only, and makes way for requests.
 */
export class Indexing {
  readonly #opened: OpenWorkshop;
  #work: Promise<void> | null = null;
  #stop = new AbortController();
  #stopped = false;
  #doing: Doing | null = null;
  /** Told of something new while it was working. */
  #woken = false;
  /** What has been tried since it was woken: a film that is away, or cannot be read, is not tried for ever. */
  readonly #tried = { looking: new Set<string>(), reading: new Set<string>() };
  #askedAt = 0;

  constructor(opened: OpenWorkshop) {
    this.#opened = opened;
  }

  get state(): IndexState {
    return this.#stopped ? "stopped" : this.#work ? "working" : "resting";
  }

  get doing(): Doing | null {
    return this.#doing;
  }

  /** There may be something to do: films were listed, or a drive has come back. */
  wake(): void {
    this.#tried.looking.clear();
    this.#tried.reading.clear();
    this.#woken = true;
    if (this.#stopped || this.#work) return;
    this.#stop = new AbortController();
    this.#work = this.#run().finally(() => {
      this.#work = null;
      this.#doing = null;
      // Woken between the last question and the end.
      if (this.#woken && !this.#stopped) this.wake();
    });
  }

  /** Stops at once; what was being read whole begins anew when it goes on. */
  async stop(): Promise<void> {
    this.#stopped = true;
    this.#stop.abort();
    await this.#work;
  }

  goOn(): void {
    this.#stopped = false;
    this.wake();
  }

  /** A request has come: reading makes way for a moment. */
  makeWay(): void {
    this.#askedAt = Date.now();
  }

  /** Resolves when there is nothing left to do, or it has been stopped. */
  async rest(): Promise<void> {
    while (this.#work) await this.#work;
  }

  async #run(): Promise<void> {
    const { signal } = this.#stop;
    try {
      while (!signal.aborted) {
        await this.#lookAtAll(signal);
        const next = (await waiting(this.#opened.client)).hash.find((id) => !this.#tried.reading.has(id));
        if (next === undefined && !this.#woken) return;
        if (next !== undefined) await this.#read(next, signal);
      }
    } catch (error) {
      if (!signal.aborted) console.error(error);
    }
  }

  async #lookAtAll(signal: AbortSignal): Promise<void> {
    while (!signal.aborted) {
      this.#woken = false;
      const open = (await waiting(this.#opened.client)).look.filter((id) => !this.#tried.looking.has(id));
      if (open.length === 0) return;
      for (const id of open) {
        if (signal.aborted) return;
        await this.#attempt({ recording: id, what: "looking", fraction: 0 }, () => lookAt(this.#opened, id));
      }
    }
  }

  async #read(id: string, signal: AbortSignal): Promise<void> {
    const doing: Doing = { recording: id, what: "reading", fraction: 0 };
    const onBytes = async (read: number, size: number) => {
      // Films that were listed meanwhile go first: looking at one is quick, and shows it on the page.
      if (this.#woken) await this.#lookAtAll(signal);
      this.#doing = { ...doing, fraction: read / size };
      if (Date.now() - this.#askedAt < QUIET_AFTER) await sleep(GIVE_WAY);
    };
    await this.#attempt(doing, async () => {
      if (await readWhole(this.#opened, id, { signal, onBytes })) await settleTwins(this.#opened, id);
    });
  }

  /** Does something with a recording. One that cannot be read holds up none of the others. */
  async #attempt(doing: Doing, work: () => Promise<unknown>): Promise<void> {
    this.#doing = doing;
    this.#tried[doing.what].add(doing.recording);
    try {
      await work();
    } catch (error) {
      if (this.#stop.signal.aborted) throw error;
      if (!(error instanceof MediaError)) console.error(error);
    }
  }
}

const known = new WeakMap<OpenWorkshop, Indexing>();

/** The one work in the background of an open workshop. */
export function indexingOf(opened: OpenWorkshop): Indexing {
  const indexing = known.get(opened) ?? new Indexing(opened);
  known.set(opened, indexing);
  return indexing;
}
