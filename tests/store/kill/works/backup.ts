import path from "node:path";
import { backup } from "#lib/store/backup/index.ts";
import { workshopAt } from "#lib/store/index.ts";
import type { Tell } from "../child.ts";

/** Makes backups of a workshop into one folder, one after the other. */
export async function work(
  { folder, parent }: { folder: string; parent: string },
  tell: Tell,
): Promise<void> {
  for (;;) {
    const made = await backup(workshopAt(folder), parent, { programRoot: process.cwd() });
    tell(path.basename(made.folder));
  }
}
