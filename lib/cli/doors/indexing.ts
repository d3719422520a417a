import type { IncomingMessage, ServerResponse } from "node:http";
import { z } from "zod";
import {
  indexCounts,
  type OpenWorkshop,
  Refused,
  readRecording,
  recordingsSince,
  sameBytes,
} from "#lib/store/index.ts";
import { type AwayRecording, awayOf, forgetLook, indexingOf } from "../indexing/index.ts";
import { answer, readJson } from "./answer.ts";
import { ask } from "./asked.ts";

const wish = z.object({
  build: z.string().min(1).max(100),
  do: z.enum(["stop", "go on", "look again"]),
  /** The recording to look at again. */
  recording: z.string().max(100).optional(),
});

/**
 * The work in the background on listed recordings: GET says how far it is with a build, what has been found since
 * change `since`, and which films are not where they were; POST stops it, lets it go on, or has one looked at again.
 */
export async function indexDoor(
  opened: OpenWorkshop,
  req: IncomingMessage,
  res: ServerResponse,
  query: URLSearchParams,
): Promise<void> {
  if (req.method === "POST") {
    const asked = ask(wish, await readJson(req));
    await carryOut(opened, asked);
    answer(res, 200, await tell(opened, asked.build, null));
  } else if (req.method === "GET") {
    const since = Number(query.get("since") ?? Number.NaN);
    answer(
      res,
      200,
      await tell(opened, query.get("build") ?? "", Number.isSafeInteger(since) ? since : null),
    );
  } else answer(res, 405, { found: "Only GET and POST are answered here.", expected: "", todo: "" });
}

async function carryOut(
  opened: OpenWorkshop,
  { do: what, recording: id }: z.infer<typeof wish>,
): Promise<void> {
  const indexing = indexingOf(opened);
  if (what === "stop") return indexing.stop();
  if (what === "look again") {
    if (!id || !(await readRecording(opened.client, id))) {
      throw new Refused({
        found: "There is no such recording.",
        expected: "One of this build.",
        todo: "Load the page again.",
      });
    }
    await forgetLook(opened, id);
  }
  indexing.goOn();
}

async function tell(opened: OpenWorkshop, build: string, since: number | null) {
  const indexing = indexingOf(opened);
  const { client } = opened;
  const away = await awayNow(opened, build);
  return {
    state: indexing.state,
    doing: indexing.doing,
    ...(await indexCounts(client, build)),
    away,
    same: await sameBytes(client, build),
    ...(await recordingsSince(client, build, since)),
  };
}

/** What was away when a build was last asked for. */
const lastAway = new WeakMap<OpenWorkshop, Map<string, Set<string>>>();

/** The films that are away now. One that has come back may have to be looked at, or read whole. */
async function awayNow(opened: OpenWorkshop, build: string): Promise<AwayRecording[]> {
  const away = await awayOf(opened, build);
  const known = lastAway.get(opened) ?? new Map<string, Set<string>>();
  const before = known.get(build);
  const now = new Set(away.map((one) => one.recording));
  lastAway.set(opened, known.set(build, now));
  if (before && [...before].some((id) => !now.has(id))) indexingOf(opened).wake();
  return away;
}
