import { mkdir, open, readdir, stat } from "node:fs/promises";
import { dirname, join } from "node:path";
import { errorCode } from "./trouble.ts";

/**
 * Makes a folder, and those that are missing above it; one that is there is left as it is. Node's own way of making
 * several at once turns in a circle for ever where a file system answers that something is missing and takes no
 * folders (`/proc`, some network drives).
 *
 * @throws the system's error where it cannot be made
 */
export async function makeFolder(folder: string): Promise<void> {
  try {
    await mkdir(folder);
  } catch (error) {
    const code = errorCode(error);
    if (code === "EEXIST" && (await isFolder(folder))) return;
    if (code !== "ENOENT" || (await isFolder(dirname(folder))) || dirname(folder) === folder) throw error;
    await makeFolder(dirname(folder));
    await makeFolder(folder);
  }
}

async function isFolder(path: string): Promise<boolean> {
  return (await stat(path).catch(() => null))?.isDirectory() ?? false;
}

/** Makes new names in a folder survive a power cut. Windows cannot open a folder, and needs no such step. */
export async function syncFolder(folder: string): Promise<void> {
  const handle = await open(folder, "r").catch(() => null);
  await handle?.sync().catch(() => undefined);
  await handle?.close();
}

/** Makes the names of everything below a folder survive a power cut. */
export async function syncTree(folder: string): Promise<void> {
  for (const entry of await readdir(folder, { withFileTypes: true })) {
    if (entry.isDirectory()) await syncTree(join(folder, entry.name));
  }
  await syncFolder(folder);
}
