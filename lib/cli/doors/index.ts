import type { IncomingMessage, ServerResponse } from "node:http";
import type { OpenWorkshop } from "#lib/store/index.ts";
import { answer, answerError } from "./answer.ts";
import { indexDoor } from "./indexing.ts";
import {
  bringIn,
  listFolderInPlace,
  serveFrames,
  serveRecording,
  takeNamedFile,
  tellWhereabouts,
} from "./recordings.ts";
import { serveStill, takePicture } from "./stills.ts";

/** Doors behind which much has to be loaded are opened when somebody comes, so that the first screen need not wait. */
const captions = () => import("./captions.ts");
const copies = () => import("./copies.ts");
const folders = () => import("./folders.ts");
const keep = () => import("./keep.ts");
const print = () => import("./print.ts");
const releases = () => import("./releases.ts");
const uploads = () => import("./uploads.ts");

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
    else if (door === "folders") await (await folders()).foldersDoor(opened, req, res, root);
    else if (door === "keep" && kind !== "") await (await keep()).keepDoor(opened, req, res, { kind, root });
    else if (door === "print") await (await print()).printDoor(opened, req, res, { build: kind, format: id });
    else if (door === "release")
      await (await releases()).releasesDoor(opened, req, res, { id: kind, name: restOf(url) });
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
  if (kind === "uploads") return (await uploads()).uploadsDoor(opened, req, res, { id, rest, query });
  if (kind === "index" && id === "") return indexDoor(opened, req, res, query);
  if (kind === "stills" && id === "" && post) return takePicture(opened, req, res);
  if (kind === "recordings" && id !== "" && rest === "") return serveRecording(opened, req, res, id);
  if (kind === "recordings" && rest === "frames") return serveFrames(opened, req, res, id);
  if (kind === "recordings" && rest === "whereabouts") return tellWhereabouts(opened, res, id);
  if (kind === "recordings" && rest === "file" && post) return takeNamedFile(opened, req, res, id);
  if (kind === "recordings" && rest === "copy") return (await copies()).copyDoor(opened, req, res, id);
  if (kind === "recordings" && rest === "captions")
    return (await captions()).captionsDoor(opened, req, res, id);
  if (kind === "stills" && id !== "") return serveStill(opened, req, res, id);
  answer(res, 404, { found: `Nothing is kept at ${req.url?.slice(0, 200)}.`, expected: "", todo: "" });
}

/** What stands below the second part of an address: a path. */
function restOf(url: URL): string {
  return url.pathname.split("/").slice(3).map(decode).join("/");
}

function decode(part: string): string {
  try {
    return decodeURIComponent(part);
  } catch {
    return "";
  }
}
