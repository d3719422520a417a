import path from "node:path";
import type { BuildDocument } from "#lib/build/index.ts";
import { writeFolder } from "#lib/folder/index.ts";
import type { Running } from "../e2e/program.ts";

const film = "content-demo/ostrey-pump/recordings/water-pump.mp4";

/** Brings a build, on the demonstration's film, into a running program; gives the build's address. */
export async function bringIn(document: BuildDocument, { address, folder }: Running): Promise<string> {
  const place = path.join(folder, "..", "brought");
  await writeFolder(document, place, { still: async () => null, recording: async () => path.resolve(film) });
  const response = await fetch(`${address}folders/in`, {
    method: "POST",
    headers: { "content-type": "application/json", origin: address.replace(/\/$/, "") },
    body: JSON.stringify({ folder: place, choice: null }),
  });
  if (!response.ok) throw new Error(await response.text());
  return `${address}builds/${document.build.id}`;
}
