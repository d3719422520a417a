// Finds the system's Chromium for the browser tests, or brings it where that can be done without asking.
import { spawnSync } from "node:child_process";
import fs from "node:fs";
import path from "node:path";

const places = {
  linux: ["/usr/bin/chromium", "/usr/bin/chromium-browser", "/usr/bin/google-chrome", "/snap/bin/chromium"],
  darwin: [
    "/Applications/Chromium.app/Contents/MacOS/Chromium",
    "/Applications/Google Chrome.app/Contents/MacOS/Google Chrome",
  ],
  win32: [process.env.PROGRAMFILES, process.env["PROGRAMFILES(X86)"], process.env.LOCALAPPDATA]
    .filter(Boolean)
    .map((folder) => path.join(folder, "Google", "Chrome", "Application", "chrome.exe")),
};

/** The path of a Chromium, or null. CHROMIUM_PATH names one. */
export function findChromium() {
  const candidates = [process.env.CHROMIUM_PATH, ...(places[process.platform] ?? [])];
  return candidates.find((file) => file && fs.existsSync(file)) ?? null;
}

/** Brings Chromium, and ffmpeg for the tests of copies, from Debian's packages where this may be done. */
export function bringBrowser() {
  const lacks = [...(findChromium() ? [] : ["chromium"]), ...(which("ffmpeg") ? [] : ["ffmpeg"])];
  if (lacks.length > 0 && process.platform === "linux" && process.getuid?.() === 0 && which("apt-get")) {
    console.error(`Installing ${lacks.join(" and ")} from the system's packages…`);
    const options = { stdio: ["ignore", 2, 2], env: { ...process.env, DEBIAN_FRONTEND: "noninteractive" } };
    spawnSync("apt-get", ["update", "-qq"], options);
    spawnSync("apt-get", ["install", "-y", "-qq", "--no-install-recommends", ...lacks], options);
  }
  return findChromium();
}

export const noChromium = `The browser tests need Chromium or Chrome, and none was found.
Install it (Debian and Ubuntu: sudo apt-get install chromium), or name it: CHROMIUM_PATH=/path/to/chrome npm test`;

function which(name) {
  return (process.env.PATH ?? "")
    .split(path.delimiter)
    .some((folder) => fs.existsSync(path.join(folder, name)));
}
