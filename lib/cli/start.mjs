// `npm start`: prepares what is missing, then serves the workshop on the loopback address until it is stopped.
import path from "node:path";
import { pathToFileURL } from "node:url";
import { setFlagsFromString } from "node:v8";
import { checkNode, generateClient, giveUp, installPackages, prepare, root } from "./prepare.mjs";

const dev = process.argv[2] === "dev";
if (dev) {
  checkNode();
  installPackages();
  generateClient();
} else prepare();

// The database's query compiler is WebAssembly. Compiling it again, optimized, holds 70 to 110 MB and makes writing no
// faster (300 commands took 1.9 to 2.1 s without, 2.0 to 2.6 s with it).
setFlagsFromString("--no-wasm-tier-up");
setFlagsFromString("--no-wasm-dynamic-tiering");
process.chdir(root);
process.env.NODE_ENV = dev ? "development" : "production";
process.env.NEXT_TELEMETRY_DISABLED = "1";
const { register } = await import("tsx/esm/api");
register();
// Maps from what runs to its source are kept in memory for each module, of Next's as well: 75 MB.
if (!dev) {
  process.setSourceMapsEnabled(false);
  process.setSourceMapsEnabled = () => undefined;
}

const { serve, wordsOf } = await import(pathToFileURL(path.join(root, "lib/cli/serve.ts")).href);
const serving = await serveAtFreePort(portOf(process.env.PORT || "4718")).catch((error) => {
  const words = wordsOf(error);
  if (words) giveUp([words.found, words.expected, words.todo].filter(Boolean).join("\n"));
  throw error;
});
console.log(`Witness Mark is at ${serving.address}`);
console.log("Stop it with Ctrl+C. Everything is on disk at every moment.");

const parent = process.ppid;
for (const signal of ["SIGINT", "SIGTERM", "SIGHUP"]) process.on(signal, stop);
// npm is told to stop and does not always pass it on: when it has gone, so does this.
setInterval(() => process.ppid !== parent && stop(), 1000).unref();

function portOf(text) {
  const port = Number(text);
  if (/^\d{1,5}$/.test(text) && port < 65536) return port;
  giveUp(`The port is “${text}”.\nPORT is a whole number from 0 to 65535, or left away.`);
}

async function serveAtFreePort(port) {
  for (let tries = 0; ; tries++) {
    try {
      return await serve({ root, port: port + tries, dev });
    } catch (error) {
      if (error?.code !== "EADDRINUSE" || tries >= 20 || port + tries === 65535) throw error;
    }
  }
}

function stop() {
  const late = setTimeout(() => process.exit(0), 3000);
  late.unref();
  serving.close().finally(() => process.exit(0));
}
