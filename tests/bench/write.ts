import fs from "node:fs";
import os from "node:os";
import path from "node:path";
import { apply, type Command, openWorkshop } from "#lib/store/index.ts";
import { sampleDocument, sampleMark } from "../sample.ts";
import { type BenchLine, median, ms } from "./measure.ts";

/** Writes marks one command at a time, as they are dropped, and gives the median of one. */
async function writeMarks(synchronous: "FULL" | "NORMAL"): Promise<number> {
  const folder = fs.mkdtempSync(path.join(os.tmpdir(), "bench-"));
  const { client } = openWorkshop(folder, process.cwd());
  await client.$executeRawUnsafe(`PRAGMA synchronous = ${synchronous}`);
  const { machine, build, sittings, recordings } = sampleDocument();
  const put = (table: "machine" | "build" | "sitting" | "recording" | "mark", row: { id: string }) => ({
    table,
    id: row.id,
    rev: 0,
    set: { ...row },
  });
  const command = (puts: Command["puts"]): Command => ({
    id: crypto.randomUUID(),
    buildId: "build-1",
    label: "bench",
    puts,
  });
  const [sitting, recording] = [sittings[0], recordings[0]];
  if (!sitting || !recording) throw new Error("the sample has lost its sitting");
  await apply(
    client,
    command([
      put("machine", machine),
      put("build", build),
      put("sitting", sitting),
      put("recording", recording),
    ]),
  );
  const times: number[] = [];
  for (let index = 0; index < 300; index++) {
    const mark = sampleMark(index, "action", { words: "Undo the nuts" }, { id: `mark-${index}` });
    const start = performance.now();
    await apply(client, command([put("mark", mark)]));
    times.push(performance.now() - start);
  }
  await client.$disconnect();
  fs.rmSync(folder, { recursive: true, force: true });
  return median(times);
}

export const writeLine: BenchLine = {
  name: "a mark is on disk before it is acknowledged (synchronous FULL)",
  measure: async () => {
    const [full, normal] = [await writeMarks("FULL"), await writeMarks("NORMAL")];
    return [
      `one mark: FULL ${ms(full)}, NORMAL ${ms(normal)}`,
      `FULL costs ${(full / normal).toFixed(2)} times NORMAL, which can lose the last commits at a power cut`,
    ];
  },
};
