import type { Build, Recording, Sitting } from "#lib/build/index.ts";
import { runningSoak, type Soak } from "#lib/procedure/index.ts";
import { openMarks } from "./open-items.ts";
import type { PrismaClient } from "./prisma-client/client.ts";
import { readRow, readRows } from "./tables.ts";

/** A soak, cure or bath that is going on, and where. */
export interface OpenSoak extends Soak {
  buildId: string;
  sittingId: string;
  buildTitle: string;
}

/** Every soak, cure and bath that is going on in any build of the workshop; those that began first stand first. */
export async function openSoaks(client: PrismaClient): Promise<OpenSoak[]> {
  const marks = (await openMarks(client, { gone: null })).filter(
    ({ fields }) => fields.least !== undefined || fields.longest !== undefined,
  );
  const found: OpenSoak[] = [];
  for (const buildId of new Set(marks.map((mark) => mark.buildId))) {
    const build = (await readRow(client, "build", buildId)) as unknown as Build;
    const sittings = await readRows<Sitting>(client, "sitting", { buildId });
    const recordings = await readRows<Recording>(client, "recording", { buildId });
    for (const mark of marks.filter((one) => one.buildId === buildId)) {
      const soak = runningSoak(mark, { build, sittings, recordings });
      if (soak) found.push({ ...soak, buildId, sittingId: mark.sittingId, buildTitle: build.title });
    }
  }
  return found.sort((a, b) => (a.began ?? 0) - (b.began ?? 0));
}
