// What must be there before anything else runs: packages, the generated database client, the built pages. Each is
// made when what it is made from has changed, and left alone otherwise. Depends on nothing but Node.
import { spawnSync } from "node:child_process";
import { createHash } from "node:crypto";
import fs from "node:fs";
import path from "node:path";

export const root = path.resolve(import.meta.dirname, "..", "..");
const stamps = path.join(root, ".stamp");

/** Stops with words for a person, without a stack. */
export function giveUp(message) {
  console.error(`\n${message}\n`);
  process.exit(1);
}

/** Node 20.19 or later; the packages here need it. */
export function checkNode() {
  const [major, minor] = process.versions.node.split(".").map(Number);
  if (major > 20 || (major === 20 && minor >= 19)) return;
  giveUp(
    `This is Node ${process.versions.node}; version 20.19 or later is needed.\nInstall it from your system's packages or from nodejs.org, and run the command again.`,
  );
}

/** Installs the packages of package-lock.json, if it or Node has changed since the last time. */
export function installPackages() {
  const made = [process.version, process.platform, process.arch, hashOf(["package-lock.json"])].join(" ");
  if (isStamped("packages", made) && fs.existsSync(path.join(root, "node_modules"))) return;
  if (fs.lstatSync(path.join(root, "node_modules"), { throwIfNoEntry: false })?.isSymbolicLink()) {
    giveUp(
      "node_modules is a link, and installing would empty the folder it leads to.\nTake the link away and run the command again.",
    );
  }
  console.error("Installing packages; the first time takes a minute or two…");
  const { status } = npm(["ci", "--no-audit", "--no-fund"]);
  if (status !== 0) giveUp(`Installing the packages failed. ${compilerHint()}`);
  stamp("packages", made);
}

/** One package is compiled where no ready-made one can be fetched; this brings what that needs. */
function compilerHint() {
  const command = {
    linux: "sudo apt-get install python3 make g++    (or your distribution's equivalent)",
    darwin: "xcode-select --install",
    win32: 'winget install Microsoft.VisualStudio.2022.BuildTools, with "Desktop development with C++"',
  }[process.platform];
  return `If the messages above speak of better-sqlite3, node-gyp or a missing compiler, this brings one:\n\n  ${command ?? "a C++ compiler, make and Python 3"}\n\nOtherwise look whether the network is up: packages are fetched once, and never again when they are there.`;
}

/** Makes the database client from prisma/schema.prisma. */
export function generateClient() {
  const made = hashOf(["prisma/schema.prisma", "package-lock.json"]);
  if (isStamped("client", made) && fs.existsSync(path.join(root, "lib/store/prisma-client/client.ts")))
    return;
  const env = { ...process.env, CHECKPOINT_DISABLE: "1", PRISMA_HIDE_UPDATE_MESSAGE: "1" };
  run(["node_modules/prisma/build/index.js", "generate"], "Making the database client failed.", env);
  stamp("client", made);
}

/** Builds the pages, if anything they are made from has changed. */
export function buildPages() {
  const made = hashOf(["app", "lib", "public", "next.config.mjs", "tsconfig.json", "package-lock.json"]);
  if (isStamped("pages", made) && fs.existsSync(path.join(root, ".next", "BUILD_ID"))) return;
  console.error("Building the pages…");
  const env = { ...process.env, NEXT_TELEMETRY_DISABLED: "1", NODE_ENV: "production" };
  run(["node_modules/next/dist/bin/next", "build"], "Building the pages failed.", env);
  stamp("pages", made);
}

/** Everything, in order. */
export function prepare() {
  checkNode();
  installPackages();
  generateClient();
  buildPages();
}

/** Runs a script of this folder with Node; its own words go to standard error, so that output stays clean. */
function run(args, failure, env) {
  const { status, stdout, stderr } = spawnSync(process.execPath, args, { cwd: root, env, encoding: "utf8" });
  if (status !== 0) giveUp(`${failure}\n\n${stdout}\n${stderr}`);
}

/** npm as it was called, wherever it lies; no shell syntax, so that Windows does the same. */
function npm(args) {
  const options = { cwd: root, stdio: ["ignore", 2, 2] };
  const own = process.env.npm_execpath;
  if (own) return spawnSync(process.execPath, [own, ...args], options);
  return process.platform === "win32"
    ? spawnSync("npm.cmd", args, { ...options, shell: true })
    : spawnSync("npm", args, options);
}

/** A hash over the contents of files and folders, generated and hidden ones left out. */
function hashOf(names) {
  const hash = createHash("sha256");
  const visit = (name) => {
    const full = path.join(root, name);
    const stat = fs.statSync(full, { throwIfNoEntry: false });
    if (!stat) return;
    if (stat.isDirectory()) {
      for (const entry of fs.readdirSync(full).sort()) {
        if (!entry.startsWith(".") && entry !== "prisma-client") visit(path.join(name, entry));
      }
    } else hash.update(`${name}\0`).update(fs.readFileSync(full));
  };
  for (const name of names) visit(name);
  return hash.digest("hex");
}

function isStamped(name, made) {
  const file = path.join(stamps, name);
  return fs.existsSync(file) && fs.readFileSync(file, "utf8") === made;
}

function stamp(name, made) {
  fs.mkdirSync(stamps, { recursive: true });
  fs.writeFileSync(path.join(stamps, name), made);
}
