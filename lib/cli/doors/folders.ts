import type { IncomingMessage, ServerResponse } from "node:http";
import path from "node:path";
import { z } from "zod";
import type { OpenWorkshop } from "#lib/store/index.ts";
import { bringBuild, sendBuild } from "../bring-build.ts";
import { answer, readJson } from "./answer.ts";
import { ask, askedForPath, wholePath } from "./asked.ts";

const incoming = z.object({ folder: wholePath, choice: z.enum(["replace", "keep both"]).nullable() });
const outgoing = z.object({ folder: wholePath, build: z.string().min(1).max(100), films: z.boolean() });

/** Build folders come in and go out; the demonstration is one that lies with the program. */
export async function foldersDoor(
  opened: OpenWorkshop,
  req: IncomingMessage,
  res: ServerResponse,
  root: string,
): Promise<void> {
  const { pathname } = new URL(req.url ?? "/", "http://localhost");
  if (req.method !== "POST")
    answer(res, 405, { found: "Only POST is answered here.", expected: "", todo: "" });
  else if (pathname === "/folders/demo") await bring(opened, res, demoFolder(root), "replace");
  else if (pathname === "/folders/gotcha-demo") {
    for (const name of ["first", "second"]) await bringBuild(opened, pumpFolder(root, name), "replace");
    await bring(opened, res, pumpFolder(root, "third"), "replace");
  } else if (pathname === "/folders/in") {
    const { folder, choice } = ask(incoming, await readJson(req), askedForPath);
    await bring(opened, res, folder, choice);
  } else if (pathname === "/folders/out") {
    const { folder, build, films } = ask(outgoing, await readJson(req), askedForPath);
    const files = await sendBuild(opened, build, folder, films);
    answer(res, files ? 200 : 404, files ? { files: files.length } : { found: "There is no such build." });
  } else answer(res, 404, { found: "Nothing is kept there.", expected: "", todo: "" });
}

/** Where the demonstration lies, in the program's own folder. */
export function demoFolder(root: string): string {
  return path.join(root, "content-demo", "ostrey-pump");
}

/** Where the three small builds lie that show the gotcha book at work. */
export function pumpFolder(root: string, name: string): string {
  return path.join(root, "content-demo", "halvern-pumps", name);
}

async function bring(
  opened: OpenWorkshop,
  res: ServerResponse,
  folder: string,
  choice: "replace" | "keep both" | null,
): Promise<void> {
  const brought = await bringBuild(opened, folder, choice);
  if (brought.kind === "exists") answer(res, 409, { exists: brought.title });
  else answer(res, 200, { build: brought.document.build.id, missing: brought.missing });
}
