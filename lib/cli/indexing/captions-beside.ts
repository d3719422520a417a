import path from "node:path";
import type { CaptionTrack } from "#lib/build/index.ts";
import { decodeCaptions, filmStemsOf, mostCaptionBytes, readCaptions, stemOf } from "#lib/captions/index.ts";
import { type ListedFile, openInside } from "#lib/media/index.ts";
import { apply, type OpenWorkshop, type Written } from "#lib/store/index.ts";

/**
 * Takes in the captions that lie beside the films of a folder, under the same name but for the ending. A recording
 * that has captions, or had some that were struck out, keeps what it has; of several files the first by name counts.
 *
 * @param films the recordings of the folder's files by path
 * @returns the rows that were written, in one change, and the files in which no captions could be read
 */
export async function takeCaptionsBeside(
  { client }: OpenWorkshop,
  folder: string,
  files: readonly ListedFile[],
  films: ReadonlyMap<string, string>,
  buildId: string,
): Promise<{ rows: Written[]; bad: string[] }> {
  const pairs = pair(files, films);
  if (pairs.size === 0) return { rows: [], bad: [] };
  const waiting = await client.recording.findMany({
    where: { id: { in: [...pairs.keys()] }, buildId, captions: { none: {} } },
    select: { id: true },
  });
  const tracks: Omit<CaptionTrack, "rev">[] = [];
  const bad: string[] = [];
  for (const { id: recordingId } of waiting) {
    const file = pairs.get(recordingId) as string;
    const text = await readText(folder, file).catch(() => null);
    const row = { id: crypto.randomUUID(), buildId, recordingId, gone: null, clock: "recording" as const };
    if (text === null) bad.push(file);
    else tracks.push({ ...row, name: path.posix.basename(file).slice(0, 500), text });
  }
  if (tracks.length === 0) return { rows: [], bad };
  const label = `Captions beside the films of ${folder}`.slice(0, 500);
  const puts = tracks.map((set) => ({ table: "captionTrack" as const, id: set.id, rev: 0, set }));
  return { rows: (await apply(client, { id: crypto.randomUUID(), buildId, label, puts })).rows, bad };
}

/** Which caption file belongs to which recording. */
function pair(files: readonly ListedFile[], films: ReadonlyMap<string, string>): Map<string, string> {
  const paths = files.map((file) => file.path).sort();
  const byStem = new Map<string, string>();
  for (const file of paths.reverse()) for (const stem of filmStemsOf(file)) byStem.set(stem, file);
  const found = [...films].flatMap(([film, recordingId]) => {
    const file = byStem.get(stemOf(film));
    return file ? [[recordingId, file] as const] : [];
  });
  return new Map(found);
}

/** The text of a caption file; null where nothing in it can be read as captions. */
async function readText(folder: string, file: string): Promise<string | null> {
  const { handle, size } = await openInside(folder, file);
  try {
    if (size > mostCaptionBytes) return null;
    const bytes = await handle.readFile();
    return readCaptions(bytes).cues.length > 0 ? decodeCaptions(bytes).text : null;
  } finally {
    await handle.close();
  }
}
