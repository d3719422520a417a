import { statfs } from "node:fs/promises";
import type { IncomingMessage, ServerResponse } from "node:http";
import { FileStore } from "@tus/file-store";
import { Server } from "@tus/server";
import { z } from "zod";
import {
  errorCode,
  incomingFolder,
  incomingId,
  MediaError,
  makeIncomingFolder,
  sayBytes,
} from "#lib/media/index.ts";
import { type OpenWorkshop, Refused } from "#lib/store/index.ts";
import { brokenOff, mustExist, takeArrived } from "../indexing/index.ts";
import { answer, readJson } from "./answer.ts";
import { ask } from "./asked.ts";

/** Where files arrive. */
export const uploadsPath = "/media/uploads";

/**
 * Bringing files in piece by piece, by the tus protocol 1.0.0 (tus.io): POST begins one, PATCH brings a piece, HEAD
 * says how much is there, DELETE throws it away. Beside the protocol, GET lists what a build has that was broken off,
 * and POST to `<id>/whole` takes a file that has arrived: it is verified and listed.
 */
export async function uploadsDoor(
  opened: OpenWorkshop,
  req: IncomingMessage,
  res: ServerResponse,
  asked: { id: string; rest: string; query: URLSearchParams },
): Promise<void> {
  const { id, rest, query } = asked;
  if (id === "" && req.method === "GET") {
    const all = await brokenOff(opened, query.get("build") ?? "");
    answer(res, 200, { uploads: all });
  } else if (incomingId.test(id) && rest === "whole" && req.method === "POST") {
    const { sha256 } = ask(wholeRequest, await readJson(req), askedForHash);
    answer(res, 200, { rows: await takeArrived(opened, id, sha256) });
  } else if (rest === "" && isProtocol(req, id)) {
    await makeIncomingFolder(opened.workshop.recordings);
    await tusFor(opened).handle(req, res);
  } else
    answer(res, 404, { found: "Nothing is arriving there.", expected: "", todo: "Load the page again." });
}

/** What the protocol may be asked here. Reading what has arrived is not part of it. */
function isProtocol(req: IncomingMessage, id: string): boolean {
  if (id === "") return req.method === "POST";
  return incomingId.test(id) && ["HEAD", "PATCH", "DELETE"].includes(req.method ?? "");
}

const Store = FileStore as unknown as new (options: { directory: string }) => Server["datastore"];

/** The protocol's store. It would make its folder by itself, and end the program where it cannot. */
class IncomingStore extends Store {
  checkOrCreateDirectory(): void {
    // Made before each request, where a failure can be told.
  }
}

const servers = new WeakMap<OpenWorkshop, Server>();

function tusFor(opened: OpenWorkshop): Server {
  const known = servers.get(opened);
  if (known) return known;
  const { recordings } = opened.workshop;
  const server = new Server({
    path: uploadsPath,
    datastore: new IncomingStore({ directory: incomingFolder(recordings) }),
    relativeLocation: true,
    // Who asks has been looked at before; no other origin is told anything.
    allowedOrigins: () => false,
    namingFunction: () => crypto.randomUUID(),
    onUploadCreate: async (_, upload) => {
      const told = upload.metadata ?? {};
      if (upload.size === undefined) throw inProtocol(sizeUnknown());
      await mustExist(opened, told.build ?? "", told.sitting ?? "").catch(refuse);
      await needRoom(recordings, upload.size).catch(refuse);
      return {};
    },
    onResponseError: (_, error) => inWords(recordings, error),
  });
  servers.set(opened, server);
  return server;
}

/** A film that has no room is refused before it is sent. */
async function needRoom(folder: string, size: number): Promise<void> {
  const free = await freeBytes(folder);
  if (free === null || free >= size) return;
  throw new Refused({
    found: `The drive of the workshop has ${sayBytes(free)} left; the film has ${sayBytes(size)}.`,
    expected: "Room for the whole film.",
    todo: "Make room, or list the folder where the film lies instead: it stays there, and nothing is copied.",
  });
}

async function freeBytes(folder: string): Promise<number | null> {
  const found = await statfs(folder).catch(() => null);
  return found && found.bavail * found.bsize;
}

interface InProtocol {
  status_code: number;
  body: string;
}

/** Words for the person, as the protocol's errors carry them. */
function inProtocol({ found, expected, todo }: Refused | MediaError, status = 400): InProtocol {
  return { status_code: status, body: JSON.stringify({ found, expected, todo }) };
}

function refuse(error: unknown): never {
  throw error instanceof Refused || error instanceof MediaError ? inProtocol(error) : error;
}

/** What the disk says no with, in words; undefined for anything else. */
async function inWords(folder: string, error: Error | InProtocol): Promise<InProtocol | undefined> {
  const code = errorCode(error);
  if (/^(EACCES|EPERM|EROFS)$/.test(code)) return inProtocol(noWriting(folder, code), 507);
  // The store may say only that it could not write.
  const failed = "body" in error && /receiving the file/.test(error.body);
  const full = /^(ENOSPC|EDQUOT|EFBIG)$/.test(code) || (failed && ((await freeBytes(folder)) ?? 1e9) < 1e6);
  return full ? inProtocol(driveFull(), 507) : undefined;
}

function driveFull(): Refused {
  return new Refused({
    found: "The drive of the workshop is full.",
    expected: "Room for the rest of the film.",
    todo: "Make room, then choose the file again: it goes on where it was broken off.",
  });
}

function noWriting(folder: string, code: string): Refused {
  return new Refused({
    found: `Nothing can be written to ${folder} (${code}).`,
    expected: "A folder that you may write to, on a drive that is not set to reading only.",
    todo: "Mend that, then choose the file again.",
  });
}

function sizeUnknown(): Refused {
  return new Refused({
    found: "The request does not say how long the file is.",
    expected: "The header Upload-Length, in bytes.",
    todo: "Choose the file again.",
  });
}

const wholeRequest = z.object({ sha256: z.string().regex(/^[0-9a-fA-F]{64}$/) });

const askedForHash = {
  expected: "The SHA-256 of the whole file, in 64 hexadecimal digits.",
  todo: "Choose the file again.",
};
