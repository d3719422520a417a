import path from "node:path";
import { sendBuild } from "#lib/cli/bring-build.ts";
import { openWorkshop } from "#lib/store/index.ts";
import type { Tell } from "../child.ts";

/** Writes a build as a build folder, with its films, again and again. */
export async function work(
  { folder, target, run }: { folder: string; target: string; run: number },
  tell: Tell,
): Promise<void> {
  const opened = openWorkshop(folder, process.cwd());
  for (let number = 0; ; number++) {
    const name = `build-${run}-${number}`;
    await sendBuild(opened, "build-1", path.join(target, name), true);
    tell(name);
  }
}
