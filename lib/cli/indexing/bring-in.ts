import { newRecording } from "#lib/build/index.ts";
import {
  type ArrivedFile,
  findSettled,
  forgetIncoming,
  type Incoming,
  idsOfIncoming,
  incomingFolder,
  listIncoming,
  readIncoming,
  readTold,
  settleIncoming,
  sweepIncoming,
} from "#lib/media/index.ts";
import {
  listRecordings,
  loadBuild,
  type OpenWorkshop,
  Refused,
  readRecording,
  rootFor,
  type Written,
} from "#lib/store/index.ts";
import { inTurn } from "../in-turn.ts";
import { indexingOf } from "./indexing.ts";
import { lookAt } from "./look.ts";
import { settleTwins } from "./twins.ts";

/** What the sender tells of a file that it brings in. */
export interface BroughtIn {
  build: string;
  sitting: string;
  name: string;
}

/** @throws Refused when there is no such sitting in the build */
export async function mustExist({ client }: OpenWorkshop, buildId: string, sittingId: string): Promise<void> {
  const sitting = await client.sitting.findUnique({ where: { id: sittingId } });
  if (sitting?.buildId === buildId && sitting.gone === null) return;
  const document = await loadBuild(client, buildId);
  throw new Refused({
    found: document ? "The sitting is not one of this build." : "There is no such build in this workshop.",
    expected: "A sitting of the build was expected.",
    todo: "Load the page again and choose the sitting.",
  });
}

/**
 * Takes a file that has arrived whole: verifies it, gives it its name among the recordings, and lists it. It has the
 * id it arrived under, so that asking twice lists it once.
 *
 * @param sha256 what the sender's own file comes to
 * @returns the rows of its recording, on disk
 * @throws MediaError when it is not whole or not what was sent, Refused when its sitting has gone meanwhile
 */
export function takeArrived(opened: OpenWorkshop, id: string, sha256: string): Promise<Written[]> {
  return inTurn(`${opened.workshop.folder} ${id}`, () => take(opened, id, sha256));
}

async function take(opened: OpenWorkshop, id: string, sha256: string): Promise<Written[]> {
  const { recordings } = opened.workshop;
  const folder = incomingFolder(recordings);
  if (await readRecording(opened.client, id)) {
    await forgetIncoming(folder, id);
    return lookedAt(opened, id);
  }
  const incoming = await readIncoming(folder, id);
  const known = await readTold(folder, id);
  if (!known) throw nothingArrived();
  const told = toldOf(known);
  await mustExist(opened, told.build, told.sitting);
  const file = incoming
    ? await settleIncoming(recordings, incoming, told.name, sha256)
    : await findSettled(recordings, id);
  if (!file) throw nothingArrived();
  return list(opened, id, told, file);
}

/** Lists what got its name among the recordings just before the program was ended, and sweeps what never began. */
export async function finishArrived(opened: OpenWorkshop): Promise<void> {
  const { recordings } = opened.workshop;
  const folder = incomingFolder(recordings);
  for (const id of await idsOfIncoming(folder)) {
    const settled = await findSettled(recordings, id);
    if (settled)
      await takeArrived(opened, id, settled.sha256).catch((error: unknown) => console.error(error));
    else if (await readRecording(opened.client, id)) await forgetIncoming(folder, id);
  }
  await sweepIncoming(folder);
}

/** Files for a build that were broken off, or are arriving now. One of which nothing has arrived is not told of. */
export async function brokenOff(opened: OpenWorkshop, buildId: string): Promise<(Incoming & BroughtIn)[]> {
  const all = await listIncoming(incomingFolder(opened.workshop.recordings));
  return all
    .map((one) => ({ ...one, ...toldOf(one) }))
    .filter((one) => one.build === buildId && one.offset > 0);
}

async function list(
  opened: OpenWorkshop,
  id: string,
  told: BroughtIn,
  file: ArrivedFile,
): Promise<Written[]> {
  const { client, workshop } = opened;
  const { build: buildId, sitting: sittingId, name } = told;
  const { sha256, fingerprint, size, mtimeMs: modifiedAt, diskName: path } = file;
  const recording = newRecording({ id, buildId, sittingId, name, sha256 });
  const rootId = await rootFor(client, workshop.recordings, true);
  const rows = await listRecordings(
    client,
    rootId,
    [{ recording, place: { path, size, modifiedAt, fingerprint } }],
    `Recording ${name}`.slice(0, 500),
  );
  await forgetIncoming(incomingFolder(workshop.recordings), id);
  const now = [...rows, ...(await lookedAt(opened, id)), ...(await settleTwins(opened, id))];
  indexingOf(opened).wake();
  return now;
}

async function lookedAt(opened: OpenWorkshop, id: string): Promise<Written[]> {
  await lookAt(opened, id);
  const row = await readRecording(opened.client, id);
  return row ? [{ table: "recording", row: { ...row } }] : [];
}

function toldOf({ told }: Pick<Incoming, "told">): BroughtIn {
  const { build = "", sitting = "", name = "" } = told;
  return { build, sitting, name: name.slice(0, 300) || "recording" };
}

function nothingArrived(): Refused {
  return new Refused({
    found: "Nothing is arriving under that name.",
    expected: "A file that was being brought in.",
    todo: "Load the page again, and bring the file in anew.",
  });
}
