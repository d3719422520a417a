import { foldRecording, type OpenWorkshop, sameBytes, type Written } from "#lib/store/index.ts";
import { originalsNow } from "./whereabouts.ts";

/**
 * Settles a recording that has just been read whole and holds the same bytes as another of its build. The one on which
 * nothing hangs becomes a second place of the other. Where something hangs on both, or there are more than two, all
 * stay as they are, and the page says that they are the same.
 *
 * @returns the rows that were written
 */
export async function settleTwins(opened: OpenWorkshop, id: string): Promise<Written[]> {
  const { client } = opened;
  const row = await client.recording.findUnique({ where: { id }, select: { buildId: true } });
  if (!row) return [];
  const alike = (await sameBytes(client, row.buildId)).find((ids) => ids.includes(id)) ?? [];
  const [other, ...more] = alike.filter((one) => one !== id);
  if (other === undefined || more.length > 0) return [];
  const away = (await originalsNow(opened, other)).length === 0;
  const folded = await foldRecording(client, id, other, { anySitting: away });
  return folded.length > 0 || away ? folded : foldRecording(client, other, id);
}
