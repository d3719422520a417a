// `npm run bench`: every figure of speed that is claimed anywhere, measured in one run, medians of several turns.
// Absolute times are this machine's; what carries over is the ratio beside them. Nothing here fails a test.
import path from "node:path";
import { pathToFileURL } from "node:url";
import { prepare, root } from "../../lib/cli/prepare.mjs";
import { findChromium } from "../chromium.mjs";

prepare();
process.chdir(root);
process.env.WITNESS_MARK_ROOT = root;
process.env.NODE_ENV = "production";
const chromium = findChromium();
if (chromium) process.env.CHROMIUM_PATH = chromium;
const { register } = await import("tsx/esm/api");
register();
const { lines } = await import(pathToFileURL(path.join(root, "tests/bench/lines.ts")).href);

const wanted = process.argv[2];
for (const line of lines) {
  if (wanted && !line.name.includes(wanted)) continue;
  console.log(`\n${line.name}`);
  for (const said of await line.measure()) console.log(`  ${said}`);
}
process.exit(0);
