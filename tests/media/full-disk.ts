// Run on a disk of 256 KiB: receives more than fits, and says what became of it.
import { readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { Readable } from "node:stream";
import { receiveFile } from "#lib/media/index.ts";

const folder = process.argv[2] as string;
writeFileSync(join(folder, "already there.mp4"), "kept");
const body = Readable.from(Array.from({ length: 16 }, () => Buffer.alloc(65_536, 1)));
receiveFile(body, { folder, name: "already there.mp4" })
  .then(
    () => ({ kind: "received" }),
    (error) => error,
  )
  .then(({ kind }) => {
    const kept = readFileSync(join(folder, "already there.mp4"), "utf8");
    console.log(JSON.stringify({ kind, left: readdirSync(folder), kept }));
  });
