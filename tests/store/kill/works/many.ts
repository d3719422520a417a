import { newMark } from "#lib/mark/index.ts";
import { apply, openWorkshop, Refused } from "#lib/store/index.ts";
import type { Tell } from "../child.ts";

export { warmStore as warm } from "./warm.ts";

/** What came of all the commands of one process. */
export interface Wrote {
  marks: string[];
  /** How often the title that both write was written by this one. */
  titles: number;
  /** How often that was refused first, because the other had been quicker. */
  refused: number;
}

/** Writes that many commands: marks of its own, and now and then the title that another process writes too. */
export async function work(
  { folder, name, count }: { folder: string; name: string; count: number },
  tell: Tell,
): Promise<void> {
  const { client } = openWorkshop(folder, process.cwd());
  const wrote: Wrote = { marks: [], titles: 0, refused: 0 };
  let seen = 1;
  for (let number = 0; number < count; number++) {
    if (number % 20 === 19) {
      seen = await writeTitle(seen, `${name} ${number}`);
      continue;
    }
    const id = `${name}-${number}`;
    const mark = newMark({
      id,
      buildId: "build-1",
      sittingId: "sitting-1",
      fields: { v: 1, words: `words of ${id}` },
    });
    const puts = [{ table: "mark" as const, id, rev: 0, set: { ...mark } }];
    await apply(client, { id: `command-${id}`, buildId: "build-1", label: id, puts });
    wrote.marks.push(id);
  }
  await client.$disconnect();
  tell(wrote);

  async function writeTitle(rev: number, title: string): Promise<number> {
    try {
      const puts = [{ table: "build" as const, id: "build-1", rev, set: { title } }];
      await apply(client, { id: crypto.randomUUID(), buildId: "build-1", label: title, puts });
      wrote.titles += 1;
      return rev + 1;
    } catch (error) {
      if (!(error instanceof Refused) || !error.stale?.current) throw error;
      wrote.refused += 1;
      return writeTitle(error.stale.current.rev, title);
    }
  }
}
