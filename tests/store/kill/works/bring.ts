import { createHash } from "node:crypto";
import http from "node:http";
import type { AddressInfo } from "node:net";
import { uploadsDoor } from "#lib/cli/doors/uploads.ts";
import { finishArrived } from "#lib/cli/indexing/index.ts";
import { openWorkshop } from "#lib/store/index.ts";
import type { Tell } from "../child.ts";

/** What has been acknowledged of a file: so many bytes have arrived; or it has arrived whole and is listed. */
export interface Brought {
  id: string;
  name: string;
  bytes: number;
  whole: boolean;
}

/** The bytes of a file that tells its own name, so that half of it is known for what it is. */
export function bytesOf(name: string): Buffer {
  return Buffer.alloc(200_000, `${name} `);
}

/**
 * Serves a workshop as the program does, and brings files in over HTTP by the tus protocol 1.0.0 (tus.io): created,
 * sent in four pieces, taken as whole. First it finishes what another process was killed in.
 *
 * @param order.count how many files; null for as many as it can
 */
export async function work(
  { folder, run, count }: { folder: string; run: number; count: number | null },
  tell: Tell,
): Promise<void> {
  const opened = openWorkshop(folder, process.cwd());
  await finishArrived(opened);
  // The one door that files come in by; the others would only make the start slower.
  const server = http.createServer((req, res) => {
    const { pathname, searchParams: query } = new URL(req.url ?? "/", "http://localhost");
    const [, , , id = "", rest = ""] = pathname.split("/");
    uploadsDoor(opened, req, res, { id, rest, query }).catch((error: unknown) => {
      console.error(error);
      process.exit(1);
    });
  });
  await new Promise<void>((resolve) => server.listen(0, "127.0.0.1", resolve));
  const origin = `http://127.0.0.1:${(server.address() as AddressInfo).port}`;
  for (let number = 0; count === null || number < count; number++) {
    await bringIn(origin, `film-${run}-${number}.mp4`, tell);
  }
  server.closeAllConnections();
  server.close();
  process.exit(0);
}

async function bringIn(origin: string, name: string, tell: Tell): Promise<void> {
  const bytes = bytesOf(name);
  const told = { build: "build-1", sitting: "sitting-1", name };
  const metadata = Object.entries(told).map(
    ([key, value]) => `${key} ${Buffer.from(value).toString("base64")}`,
  );
  const begun = await ask(`${origin}/media/uploads`, "POST", {
    "upload-length": String(bytes.length),
    "upload-metadata": metadata.join(","),
  });
  const address = new URL(begun.headers.get("location") ?? "", `${origin}/media/uploads`);
  const id = address.pathname.split("/").at(-1) ?? "";
  const piece = bytes.length / 4;
  for (let from = 0; from < bytes.length; from += piece) {
    const headers = { "upload-offset": String(from), "content-type": "application/offset+octet-stream" };
    await ask(address, "PATCH", headers, bytes.subarray(from, from + piece));
    tell({ id, name, bytes: from + piece, whole: false } satisfies Brought);
  }
  const sha256 = createHash("sha256").update(bytes).digest("hex");
  const taken = { "content-type": "application/json" };
  await ask(`${origin}/media/uploads/${id}/whole`, "POST", taken, JSON.stringify({ sha256 }));
  tell({ id, name, bytes: bytes.length, whole: true } satisfies Brought);
}

async function ask(
  address: string | URL,
  method: string,
  headers: Record<string, string>,
  body?: Uint8Array | string,
): Promise<Response> {
  const response = await fetch(address, {
    method,
    headers: { "tus-resumable": "1.0.0", ...headers },
    ...(body === undefined ? {} : { body: typeof body === "string" ? body : new Uint8Array(body) }),
  });
  if (!response.ok) throw new Error(`${method} ${address}: ${response.status} ${await response.text()}`);
  await response.arrayBuffer();
  return response;
}
