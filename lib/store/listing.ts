import type { Recording } from "#lib/build/index.ts";
import { append, type Entry, inTransaction, write } from "./apply.ts";
import type { Written } from "./command.ts";
import type { NewPlace } from "./places.ts";
import type { PrismaClient } from "./prisma-client/client.ts";
import { readRow } from "./tables.ts";

/** A recording to be listed, with the place where its file was found. */
export interface Listed {
  recording: Recording;
  place: Omit<NewPlace, "recordingId" | "role">;
}

/** How many recordings go into one command: others wait for their turn meanwhile. */
const AT_ONCE = 1000;

/**
 * Lists recordings with the places of their files, both or neither: a recording that is listed has a file, and a file
 * that is known is not listed again.
 *
 * @returns the rows that were written, on disk
 */
export async function listRecordings(
  client: PrismaClient,
  rootId: string,
  listed: readonly Listed[],
  label: string,
): Promise<Written[]> {
  const rows: Written[] = [];
  for (let at = 0; at < listed.length; at += AT_ONCE) {
    rows.push(...(await listSome(client, rootId, listed.slice(at, at + AT_ONCE), label)));
  }
  return rows;
}

async function listSome(
  client: PrismaClient,
  rootId: string,
  listed: readonly Listed[],
  label: string,
): Promise<Written[]> {
  return inTransaction(client, async (tx) => {
    const entries: Entry[] = [];
    for (const { recording } of listed) {
      const before = await readRow(tx, "recording", recording.id);
      // Listed already, by an attempt whose answer was lost.
      if (before) continue;
      const after = await write(tx, "recording", recording.id, null, { ...recording });
      entries.push({ table: "recording", id: recording.id, before: null, after });
    }
    const written = new Set(entries.map((entry) => entry.id));
    await tx.place.createMany({
      data: listed
        .filter(({ recording }) => written.has(recording.id))
        .map(({ recording, place }) => ({
          id: crypto.randomUUID(),
          rootId,
          recordingId: recording.id,
          role: "original",
          ...place,
        })),
    });
    if (entries.length === 0) return [];
    const change = { id: crypto.randomUUID(), label, kind: "do" as const, ofSeq: null, entries };
    return (await append(tx, { ...change, buildId: listed[0]?.recording.buildId ?? null })).rows;
  });
}

/**
 * Makes one recording of two whose files hold the same bytes: the places of the second become places of the first,
 * and the second is struck out. Only where nothing hangs on the second: no mark, still, caption or cut, and its clock as it
 * was; and only within one build.
 *
 * @param options.anySitting also where they lie in different sittings, since the first has no file any more
 * @returns the rows that were written; none when something hangs on it
 */
export async function foldRecording(
  client: PrismaClient,
  from: string,
  into: string,
  { anySitting = false }: { anySitting?: boolean } = {},
): Promise<Written[]> {
  return inTransaction(client, async (tx) => {
    const before = await readRow(tx, "recording", from);
    const kept = await readRow(tx, "recording", into);
    if (!before || before.gone !== null || !kept || kept.gone !== null || from === into) return [];
    if (before.buildId !== kept.buildId || before.offset !== 0 || before.rate !== 1) return [];
    if (before.sittingId !== kept.sittingId && !anySitting) return [];
    const hanging = await Promise.all([
      tx.mark.count({ where: { recordingId: from } }),
      tx.still.count({ where: { recordingId: from } }),
      tx.captionTrack.count({ where: { recordingId: from } }),
      tx.draftDecision.count({ where: { recordingId: from } }),
      tx.cut.count({
        where: {
          OR: [{ reelsJson: { contains: `"${from}"` } }, { segmentsJson: { contains: `"${from}"` } }],
        },
      }),
    ]);
    if (hanging.some((count) => count > 0)) return [];
    for (const place of await tx.place.findMany({ where: { recordingId: from, role: "original" } })) {
      const { id, rootId, path } = place;
      await tx.place.deleteMany({ where: { rootId, path, recordingId: into } });
      await tx.place.update({ where: { id }, data: { recordingId: into } });
    }
    const after = await write(tx, "recording", from, before, { gone: new Date().toISOString() });
    return (
      await append(tx, {
        id: crypto.randomUUID(),
        buildId: String(before.buildId),
        label: `${before.name} is ${kept.name} once more, byte for byte: kept as its second place`.slice(
          0,
          500,
        ),
        kind: "noted",
        ofSeq: null,
        entries: [{ table: "recording", id: from, before, after }],
      })
    ).rows;
  });
}
