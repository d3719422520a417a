import { z } from "zod";
import { kindOf, type Mark } from "#lib/mark/index.ts";
import type { Prisma, PrismaClient } from "./prisma-client/client.ts";
import { type Row, readRows } from "./tables.ts";

type Client = Prisma.TransactionClient;

/** A mark found by its words. */
export const found = z.object({ markId: z.string(), buildId: z.string(), snippet: z.string() });
export type Found = z.infer<typeof found>;

/** Brings the words of these marks up to date in the search table; struck-out marks leave it. */
export async function indexMarks(tx: Client, rows: readonly Row[]): Promise<void> {
  for (const row of rows) {
    const mark = row as unknown as Mark;
    await tx.$executeRaw`DELETE FROM mark_words WHERE mark_id = ${mark.id}`;
    const words = searchWords(mark);
    if (mark.gone === null && words !== "") {
      await tx.$executeRaw`INSERT INTO mark_words (mark_id, build_id, words) VALUES (${mark.id}, ${mark.buildId}, ${words})`;
    }
  }
}

/** Everything a person wrote in a mark, on one line: what the search table holds of it. */
export function searchWords(mark: Mark): string {
  return kindOf(mark.kind)
    .fields.map((field) => {
      const value = mark.fields[field.name];
      return typeof value === "string" ? value : ((value as { typed?: string } | undefined)?.typed ?? "");
    })
    .filter(Boolean)
    .join(" · ");
}

/** Marks whose words hold that text (three letters or more), best first. */
export async function findMarks(client: Client, text: string, limit = 50): Promise<Found[]> {
  if (text.trim().length < 3) return [];
  const phrase = `"${text.trim().replaceAll('"', '""')}"`;
  const rows = await client.$queryRaw`
    SELECT mark_id AS markId, build_id AS buildId, snippet(mark_words, 2, '', '', '…', 12) AS snippet
    FROM mark_words WHERE mark_words MATCH ${phrase} ORDER BY bm25(mark_words) LIMIT ${limit}`;
  return z.array(found).parse(rows);
}

/** Makes the search table anew from the marks. */
export async function rebuildSearch(client: PrismaClient): Promise<void> {
  await client.$transaction(
    async (tx) => {
      await tx.$executeRaw`DELETE FROM mark_words`;
      await indexMarks(tx, await readRows<Row>(tx, "mark", { gone: null }));
    },
    { timeout: 600_000 },
  );
}
