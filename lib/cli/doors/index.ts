import type { IncomingMessage, ServerResponse } from "node:http";
import type { OpenWorkshop } from "#lib/store/index.ts";
import { answer, answerError } from "./answer.ts";
import { copyDoor } from "./copies.ts";
import { foldersDoor } from "./folders.ts";
import { indexDoor } from "./indexing.ts";
import { keepDoor } from "./keep.ts";
import { printDoor } from "./print.ts";
import {
  bringIn,
  listFolderInPlace,
  serveFrames,
  serveRecording,
  takeNamedFile,
  tellWhereabouts,
} from "./recordings.ts";
import { serveStill, takePicture } from "./stills.ts";
import { uploadsDoor } from "./uploads.ts";

/**
 * Answers what has to do with files of recordings and pictures, in front of the pages; false for anything else.
 * Who asks has been looked at before.
 */
export async function doors(
  opened: OpenWorkshop,
  req: IncomingMessage,
  res: ServerResponse,
  root: string,
): Promise<boolean> {
  const url = new URL(req.url ?? "/", "http://localhost");
  const [door, kind = "", id = "", rest = ""] = url.pathname.slice(1).split("/").map(decode);
  try {
    if (door === "media") await media(opened, req, res, { kind, id, rest, query: url.searchParams });
    else if (door === "folders") await foldersDoor(opened, req, res, root);
    else if (door === "keep" && kind !== "") await keepDoor(opened, req, res, { kind, root });
    else if (door === "print") await printDoor(opened, req, res);
    else return false;
  } catch (error) {
    answerError(res, error);
  }
  return true;
}

async function media(
  opened: OpenWorkshop,
  req: IncomingMessage,
  res: ServerResponse,
  asked: { kind: string; id: string; rest: string; query: URLSearchParams },
): Promise<void> {
  const { kind, id, rest, query } = asked;
  const post = req.method === "POST";
  if (kind === "recordings" && id === "" && post) return bringIn(opened, req, res, query);
  if (kind === "folders" && id === "" && post) return listFolderInPlace(opened, req, res);
  if (kind === "uploads") return uploadsDoor(opened, req, res, { id, rest, query });
  if (kind === "index" && id === "") return indexDoor(opened, req, res, query);
  if (kind === "stills" && id === "" && post) return takePicture(opened, req, res);
  if (kind === "recordings" && id !== "" && rest === "") return serveRecording(opened, req, res, id);
  if (kind === "recordings" && rest === "frames") return serveFrames(opened, req, res, id);
  if (kind === "recordings" && rest === "whereabouts") return tellWhereabouts(opened, res, id);
  if (kind === "recordings" && rest === "file" && post) return takeNamedFile(opened, req, res, id);
  if (kind === "recordings" && rest === "copy") return copyDoor(opened, req, res, id);
  if (kind === "stills" && id !== "") return serveStill(opened, req, res, id);
  answer(res, 404, { found: `Nothing is kept at ${req.url?.slice(0, 200)}.`, expected: "", todo: "" });
}

function decode(part: string): string {
  try {
    return decodeURIComponent(part);
  } catch {
    return "";
  }
}
