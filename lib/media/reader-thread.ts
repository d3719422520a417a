import { Worker } from "node:worker_threads";

/** A damaged index may ask for any amount of memory; one hour of film needs 131 MB at most (measured). */
const memoryLimit = { maxOldGenerationSizeMb: 768 };

/** How long a thread without work is kept: starting one takes longer than reading most films. */
const idleMs = 5000;

interface IdleThread {
  module: string;
  worker: Worker;
  end: NodeJS.Timeout;
}

let idle: IdleThread | null = null;

/** Takes the thread that waits, or starts one, for a module that answers each message with others. */
export function takeThread(module: URL): Worker {
  if (idle?.module !== module.href) return startThread(module);
  const { worker, end } = idle;
  idle = null;
  clearTimeout(end);
  forget(worker);
  worker.ref();
  return worker;
}

/** Gives back a thread that has done its work; it does not keep the process alive. One waits, others end. */
export function giveBackThread(module: URL, worker: Worker): void {
  forget(worker);
  worker.unref();
  if (idle !== null) return void worker.terminate();
  const drop = () => {
    if (idle?.worker === worker) idle = null;
    void worker.terminate();
  };
  idle = { module: module.href, worker, end: setTimeout(drop, idleMs).unref() };
  worker.on("error", drop);
  worker.on("exit", drop);
}

/** Stops listening. Not to everything: a Worker listens to itself in order to pass messages on. */
export function forget(worker: Worker): void {
  for (const event of ["message", "error", "exit"]) worker.removeAllListeners(event);
}

/**
 * What the thread prints is the reader's own warnings about damaged files: it is kept from our output, and not
 * read either, since reading it would keep the process alive.
 */
function startThread(module: URL): Worker {
  return new Worker(new URL("./worker-boot.mjs", import.meta.url), {
    workerData: { module: module.href },
    execArgv: [],
    resourceLimits: memoryLimit,
    stdout: true,
    stderr: true,
  });
}
