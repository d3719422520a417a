// `npm test`: types, lint, unit and reference tests, then the browser tests. The last line counts what the runners
// themselves reported. `npm run test:long` (LONG=1) runs the full counts.
import { spawnSync } from "node:child_process";
import fs from "node:fs";
import os from "node:os";
import path from "node:path";
import { prepare, root } from "../lib/cli/prepare.mjs";
import { bringBrowser, noChromium } from "./chromium.mjs";

const long = process.argv.includes("--long");
const started = Date.now();
prepare();
const chromium = bringBrowser();

const reports = fs.mkdtempSync(path.join(os.tmpdir(), "reports-"));
const unitReport = path.join(reports, "unit.json");
const browserReport = path.join(reports, "browser.json");
const env = { ...process.env, ...(long ? { LONG: "1" } : {}), NEXT_TELEMETRY_DISABLED: "1" };

let passed = 0;
let failed = 0;
let skipped = 0;

check("types", ["node_modules/typescript/bin/tsc", "--noEmit", "-p", "."]);
check("lint", ["node_modules/@biomejs/biome/bin/biome", "check", "."]);

node([
  "node_modules/vitest/vitest.mjs",
  "run",
  "--reporter=default",
  "--reporter=json",
  `--outputFile.json=${unitReport}`,
]);
count(unitReport, "unit and reference tests", (report) => ({
  passed: report.numPassedTests,
  failed: report.numFailedTests + filesThatBroke(report).length,
  skipped: report.numPendingTests + report.numTodoTests,
}));

if (chromium) {
  const more = { CHROMIUM_PATH: chromium, PLAYWRIGHT_JSON_OUTPUT_NAME: browserReport };
  node(["node_modules/@playwright/test/cli.js", "test", "--reporter=list,json"], more);
  count(browserReport, "browser tests", ({ stats, errors }) => ({
    passed: stats.expected + stats.flaky,
    failed: stats.unexpected + errors.length,
    skipped: stats.skipped,
  }));
} else {
  console.error(noChromium);
  failed += 1;
}

fs.rmSync(reports, { recursive: true, force: true });
console.log(`\nTook ${Math.round((Date.now() - started) / 1000)} s. Skipped: ${skipped}.`);
console.log(`${passed} passed, ${failed} failed`);
process.exit(failed > 0 ? 1 : 0);

/** Test files that failed as a whole, so that none of their tests could. */
function filesThatBroke({ testResults }) {
  return testResults.filter(
    (file) => file.status === "failed" && file.assertionResults.every((one) => one.status !== "failed"),
  );
}

/** A tool that says yes or no counts as one test. */
function check(name, args) {
  const ok = node(args) === 0;
  console.log(`${ok ? "ok" : "FAILED"}: ${name}`);
  if (ok) passed += 1;
  else failed += 1;
}

function node(args, more = {}) {
  return spawnSync(process.execPath, args, { cwd: root, stdio: "inherit", env: { ...env, ...more } }).status;
}

/** Adds what a runner reported; a runner that wrote no report has failed. */
function count(file, name, read) {
  if (!fs.existsSync(file)) {
    console.log(`FAILED: ${name} wrote no report`);
    failed += 1;
    return;
  }
  const result = read(JSON.parse(fs.readFileSync(file, "utf8")));
  passed += result.passed;
  failed += result.failed;
  skipped += result.skipped;
}
