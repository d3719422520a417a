import { type Mark, wordsOf } from "#lib/mark/index.ts";
import type { Prisma, PrismaClient } from "./prisma-client/client.ts";
import { readRows } from "./tables.ts";

/** Something left provisional in a build, and still so: no mark of any build of the machine closes it. */
export interface OpenItem {
  markId: string;
  buildId: string;
  sittingId: string;
  words: string;
  waitsFor: string;
}

/** What is left open in every build of the workshop that is not struck out; of one machine's when it is named. */
export async function openItems(client: PrismaClient, machineId?: string): Promise<OpenItem[]> {
  const build = { gone: null, ...(machineId === undefined ? {} : { machineId }) };
  return (await openMarks(client, build))
    .sort(
      (a, b) =>
        compare(a.buildId, b.buildId) || compare(a.sittingId, b.sittingId) || (a.at ?? 0) - (b.at ?? 0),
    )
    .map((mark) => ({
      markId: mark.id,
      buildId: mark.buildId,
      sittingId: mark.sittingId,
      words: wordsOf(mark),
      waitsFor: wordsOf(mark, "waitsFor"),
    }));
}

/** The deferred marks of these builds that no mark closes. */
export async function openMarks(client: PrismaClient, build: Record<string, unknown>): Promise<Mark[]> {
  const left = await readRows<Mark>(client, "mark", { gone: null, kind: "deferred", build });
  const closed = await closedMarks(client, build);
  return left.filter((mark) => !closed.has(mark.id));
}

/** Ids of all marks that a mark of these builds closes. A mark does not close itself. */
export async function closedMarks(
  client: Prisma.TransactionClient,
  build: Record<string, unknown>,
): Promise<Set<string>> {
  const closers = await readRows<Mark>(client, "mark", {
    gone: null,
    build,
    fieldsJson: { contains: '"closes":["' },
  });
  return new Set(closers.flatMap((mark) => (mark.fields.closes ?? []).filter((id) => id !== mark.id)));
}

function compare(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
