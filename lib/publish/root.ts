import { existsSync, readFileSync } from "node:fs";
import { dirname, join, resolve } from "node:path";

const packageName = "witness-mark";

/**
 * The folder of the project, where its package.json lies: `WITNESS_MARK_ROOT`, else the first folder from the
 * working directory upwards that holds it. It does not ask where this module lies, since a bundler moves it.
 */
export function projectRoot(): string {
  const named = process.env.WITNESS_MARK_ROOT;
  const start = resolve(named ?? /* turbopackIgnore: true */ process.cwd());
  for (let folder = start; ; folder = dirname(folder)) {
    if (isProject(folder)) return folder;
    if (folder === dirname(folder)) break;
  }
  throw new Error(
    `The files of the program were not found: no package.json named "${packageName}" in ${start} or above it. ` +
      "Start the program from its own folder, or name that folder in WITNESS_MARK_ROOT.",
  );
}

/** The absolute path of a file of the project. */
export function projectPath(...parts: string[]): string {
  return join(projectRoot(), ...parts);
}

function isProject(folder: string): boolean {
  const file = join(folder, "package.json");
  if (!existsSync(file)) return false;
  try {
    return (JSON.parse(readFileSync(file, "utf8")) as { name?: unknown }).name === packageName;
  } catch {
    return false;
  }
}
