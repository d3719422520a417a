import fs from "node:fs";
import os from "node:os";
import path from "node:path";
import { openWorkshop } from "#lib/store/index.ts";

/** Opens a workshop that nobody needs, so that everything is loaded before the work begins. */
export async function warmStore(): Promise<void> {
  const folder = fs.mkdtempSync(path.join(os.tmpdir(), "warm-"));
  const { client } = openWorkshop(folder, process.cwd());
  await client.$transaction((tx) => tx.machine.count());
  await client.$disconnect();
  fs.rmSync(folder, { recursive: true });
}
