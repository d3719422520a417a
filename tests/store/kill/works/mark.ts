import { newMark } from "#lib/mark/index.ts";
import { apply, openWorkshop } from "#lib/store/index.ts";
import type { Tell } from "../child.ts";

/** A mark as it was when it was acknowledged. */
export interface Marked {
  id: string;
  rev: number;
  words: string;
}

const sentence = "Turn the cover until its arrow meets the punch mark, and only then lift it";

/** Drops marks and types into them, as at the bench: each letter or two is a command. */
export async function work({ folder, run }: { folder: string; run: number }, tell: Tell): Promise<void> {
  const { client } = openWorkshop(folder, process.cwd());
  for (let number = 0; ; number++) {
    const id = `mark-${run}-${number}`;
    const mark = newMark({
      id,
      buildId: "build-1",
      sittingId: "sitting-1",
      recordingId: "recording-1",
      at: number,
    });
    await command(id, 0, { ...mark });
    for (let typed = 5; typed <= sentence.length; typed += 17) {
      await command(id, Math.floor((typed - 5) / 17) + 1, {
        fields: { v: 1, words: sentence.slice(0, typed) },
      });
    }
  }

  async function command(id: string, rev: number, set: Record<string, unknown>): Promise<void> {
    const puts = [{ table: "mark" as const, id, rev, set }];
    await apply(client, { id: crypto.randomUUID(), buildId: "build-1", label: "typing", puts });
    tell({ id, rev: rev + 1, words: (set.fields as { words?: string }).words ?? "" } satisfies Marked);
  }
}
