// The first module of a worker thread, in plain script: Node 20 cannot start a worker from TypeScript,
// whatever its main thread was started with. It brings the loader in and hands over to the module named.
import { workerData } from "node:worker_threads";
import { tsImport } from "tsx/esm/api";

await tsImport(workerData.module, import.meta.url);
