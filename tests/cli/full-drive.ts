// Run on a drive of a few megabytes: brings in a film that does not fit, makes room, and goes on.
import { createHash, randomBytes } from "node:crypto";
import fs from "node:fs";
import { createServer } from "node:http";
import type { AddressInfo } from "node:net";
import path from "node:path";
import { doors } from "#lib/cli/doors/index.ts";
import { importBuild, loadBuild, openWorkshop } from "#lib/store/index.ts";
import { sampleDocument } from "../sample.ts";

const drive = process.argv[2] as string;
const opened = openWorkshop(path.join(drive, "workshop"), process.cwd());
await importBuild(opened.client, sampleDocument({ recordings: [] }), null);
const server = createServer((req, res) => void doors(opened, req, res, process.cwd()));
await new Promise<void>((resolve) => server.listen(0, "127.0.0.1", resolve));
const address = `http://127.0.0.1:${(server.address() as AddressInfo).port}/media/uploads`;

const film = randomBytes(3_000_000);
const base64 = (text: string) => Buffer.from(text).toString("base64");
const metadata = `build ${base64("build-1")},sitting ${base64("sitting-1")},name ${base64("first.webm")}`;
const tus = { "tus-resumable": "1.0.0" };
const begun = await fetch(address, {
  method: "POST",
  headers: { ...tus, "upload-length": String(film.length), "upload-metadata": metadata },
});
const url = new URL(begun.headers.get("location") ?? "", address).href;
// Something else fills the drive while the film arrives.
const filler = path.join(drive, "filler");
const { bavail, bsize } = fs.statfsSync(drive);
fs.writeFileSync(filler, Buffer.alloc(bavail * bsize - 1_500_000));
const piece = (offset: number) =>
  fetch(url, {
    method: "PATCH",
    headers: { ...tus, "upload-offset": String(offset), "content-type": "application/offset+octet-stream" },
    body: film.subarray(offset),
  });
const full = await piece(0);
const { found } = (await full.json()) as { found: string };
fs.rmSync(filler);
const head = await fetch(url, { method: "HEAD", headers: tus });
const offset = Number(head.headers.get("upload-offset"));
await piece(offset);
const whole = await fetch(`${url}/whole`, {
  method: "POST",
  body: JSON.stringify({ sha256: createHash("sha256").update(film).digest("hex") }),
});
const document = await loadBuild(opened.client, "build-1");
console.log(
  JSON.stringify({
    full: { status: full.status, found },
    kept: offset > 0 && offset < film.length ? "some of it" : offset,
    whole: whole.status,
    listed: document?.recordings.map((one) => one.name),
  }),
);
process.exit(0);
