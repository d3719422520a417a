import { execFileSync } from "node:child_process";
import {
  mkdtempSync,
  openSync,
  readdirSync,
  rmSync,
  truncateSync,
  utimesSync,
  writeFileSync,
  writeSync,
} from "node:fs";
import { open } from "node:fs/promises";
import { type Agent, createServer, type IncomingMessage, request, type Server } from "node:http";
import { type AddressInfo, connect } from "node:net";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { serveFile } from "#lib/media/index.ts";

// Sections named below are of RFC 9110 (HTTP Semantics).
const folder = mkdtempSync(join(tmpdir(), "serve-"));
// The representation of the examples in 14.1.2 and 14.4 has 10,000 bytes, that in 14.4's second list 1,234.
const tenThousand = Buffer.from(
  Array.from({ length: 10_000 }, (_, index) => (index * 7 + (index >> 8)) % 256),
);
const changed = new Date("2026-05-03T09:21:07.500Z");
const finished: Promise<void>[] = [];
let server: Server;

beforeAll(async () => {
  writeFileSync(join(folder, "film"), tenThousand);
  writeFileSync(join(folder, "short"), tenThousand.subarray(0, 1234));
  writeFileSync(join(folder, "empty"), "");
  for (const name of ["film", "short", "empty"]) utimesSync(join(folder, name), changed, changed);
  server = createServer((req, res) => {
    const file = join(folder, (req.url ?? "").slice(1));
    const headers = { "Cache-Control": "no-cache" };
    finished.push(serveFile(req, res, { file, type: "video/mp4", headers }));
  });
  await new Promise<void>((resolve) => server.listen(0, "127.0.0.1", resolve));
});
afterAll(async () => {
  server.closeAllConnections();
  await new Promise((resolve) => server.close(resolve));
  rmSync(folder, { recursive: true });
});

interface Answer {
  status: number;
  headers: IncomingMessage["headers"];
  body: Buffer;
}

function ask(
  path: string,
  headers: Record<string, string> = {},
  method = "GET",
  agent: Agent | false = false,
) {
  return new Promise<Answer>((resolve, reject) => {
    const { port } = server.address() as AddressInfo;
    const req = request({ host: "127.0.0.1", port, path, headers, method, agent }, async (res) => {
      const pieces: Buffer[] = [];
      for await (const piece of res) pieces.push(piece);
      resolve({ status: res.statusCode ?? 0, headers: res.headers, body: Buffer.concat(pieces) });
    });
    req.on("error", reject).end();
  });
}

async function expectPart(path: string, range: string, contentRange: string, body: Buffer): Promise<void> {
  const answer = await ask(path, { range });
  expect(answer.status).toBe(206);
  expect(answer.headers["content-range"]).toBe(contentRange);
  expect(answer.headers["content-length"]).toBe(String(body.length));
  expect(answer.body.equals(body)).toBe(true);
}

describe("ranges", () => {
  test.each([
    ["14.1.2: the first 500 bytes", "bytes=0-499", "bytes 0-499/10000", 0, 500],
    ["14.1.2: the second 500 bytes", "bytes=500-999", "bytes 500-999/10000", 500, 1000],
    ["14.1.2: the final 500 bytes, by a suffix", "bytes=-500", "bytes 9500-9999/10000", 9500, 10_000],
    ["14.1.2: the final 500 bytes, open at the end", "bytes=9500-", "bytes 9500-9999/10000", 9500, 10_000],
    ["14.1.2: the first byte alone", "bytes=0-0", "bytes 0-0/10000", 0, 1],
    ["14.1.2: the last byte alone", "bytes=-1", "bytes 9999-9999/10000", 9999, 10_000],
    [
      "14.1.2: a last position past the end is the end",
      "bytes=9990-20000",
      "bytes 9990-9999/10000",
      9990,
      10_000,
    ],
    ["14.1.2: a suffix longer than the whole is the whole", "bytes=-20000", "bytes 0-9999/10000", 0, 10_000],
    ["5.6.1 and 14.1.2: space around the range", "bytes= 10-19 ", "bytes 10-19/10000", 10, 20],
    ["14.1: unit names ignore case", "Bytes=10-19", "bytes 10-19/10000", 10, 20],
  ])("%s", async (_section, range, contentRange, from, to) => {
    await expectPart("/film", range, contentRange, tenThousand.subarray(from, to));
  });

  test.each([
    ["14.4: the first 500 of 1234", "bytes=0-499", "bytes 0-499/1234"],
    ["14.4: the second 500 of 1234", "bytes=500-999", "bytes 500-999/1234"],
    ["14.4: all but the first 500 of 1234", "bytes=500-", "bytes 500-1233/1234"],
    ["14.4: the last 500 of 1234", "bytes=-500", "bytes 734-1233/1234"],
  ])("%s", async (_section, range, contentRange) => {
    const [, from, to] = /(\d+)-(\d+)/.exec(contentRange) ?? [];
    await expectPart("/short", range, contentRange, tenThousand.subarray(Number(from), Number(to) + 1));
  });

  test.each([
    ["14.1.2 and 15.5.17: a first position at the end", "/film", "bytes=10000-", "bytes */10000"],
    ["15.5.17: past the end", "/short", "bytes=5000-6000", "bytes */1234"],
    ["14.1.2: a suffix of nought", "/film", "bytes=-0", "bytes */10000"],
    ["14.1.2: any position in an empty file", "/empty", "bytes=0-", "bytes */0"],
    ["a position of forty digits", "/film", `bytes=${"9".repeat(40)}-`, "bytes */10000"],
  ])("416, %s", async (_section, path, range, contentRange) => {
    const answer = await ask(path, { range });
    expect([answer.status, answer.headers["content-range"], answer.body.length]).toEqual([
      416,
      contentRange,
      0,
    ]);
    expect(answer.headers["content-length"]).toBe("0");
  });

  test.each([
    ["14.2: a unit that is not known", "seconds=1-2"],
    ["14.1.1: a last position before the first is no range", "bytes=500-499"],
    ["14.1.1: letters", "bytes=a-b"],
    ["14.1.1: nothing on either side", "bytes=-"],
    ["14.1.1: a sign", "bytes=+1-2"],
    ["14.1.1: no unit", "0-499"],
    ["14.2: several ranges; a server may send the whole", "bytes=0-0,-1"],
    [
      "14.2: several ranges, many and overlapping",
      `bytes=${Array.from({ length: 200 }, () => "0-").join(",")}`,
    ],
  ])("ignored, %s", async (_section, range) => {
    const answer = await ask("/film", { range });
    expect([answer.status, answer.headers["content-range"]]).toEqual([200, undefined]);
    expect(answer.body.equals(tenThousand)).toBe(true);
  });

  test("14.1.2: a suffix of an empty file can be met, and is all of nothing", async () => {
    const answer = await ask("/empty", { range: "bytes=-500" });
    expect([answer.status, answer.headers["content-length"], answer.body.length]).toEqual([200, "0", 0]);
  });

  test("14.2: ranges mean nothing to HEAD", async () => {
    const answer = await ask("/film", { range: "bytes=0-499" }, "HEAD");
    expect([answer.status, answer.headers["content-length"], answer.body.length]).toEqual([200, "10000", 0]);
  });
});

describe("the whole file", () => {
  test("8.6, 14.3: its length, its type, and that ranges may be asked for", async () => {
    const answer = await ask("/film");
    expect(answer.status).toBe(200);
    expect(answer.headers).toMatchObject({
      "content-length": "10000",
      "content-type": "video/mp4",
      "accept-ranges": "bytes",
      "x-content-type-options": "nosniff",
      "cache-control": "no-cache",
      "last-modified": "Sun, 03 May 2026 09:21:07 GMT",
    });
    expect(answer.headers.etag).toMatch(/^"[^"]+"$/);
    expect(answer.body.equals(tenThousand)).toBe(true);
  });

  test("9.3.2: HEAD has the header fields of GET and no content", async () => {
    const [get, head] = [await ask("/film"), await ask("/film", {}, "HEAD")];
    expect({ ...head.headers, date: "" }).toEqual({ ...get.headers, date: "" });
    expect([head.status, head.body.length]).toEqual([200, 0]);
  });

  test.each(["POST", "PUT", "DELETE", "OPTIONS", "PATCH"])(
    "15.5.6: %s is not allowed, and what is, is said",
    async (method) => {
      const answer = await ask("/film", {}, method);
      expect([answer.status, answer.headers.allow]).toEqual([405, "GET, HEAD"]);
    },
  );

  test("9.3: one connection carries one answer after another, also with and without content", async () => {
    const { port } = server.address() as AddressInfo;
    const socket = connect(port, "127.0.0.1");
    const host = "Host: x\r\n";
    socket.write(`GET /film HTTP/1.1\r\n${host}Range: bytes=0-4\r\n\r\nHEAD /film HTTP/1.1\r\n${host}\r\n`);
    socket.write(
      `GET /film HTTP/1.1\r\n${host}Range: bytes=99999-\r\n\r\nGET /film HTTP/1.1\r\n${host}Connection: close\r\n\r\n`,
    );
    const pieces: Buffer[] = [];
    for await (const piece of socket) pieces.push(piece);
    const all = Buffer.concat(pieces).toString("latin1");
    expect(all.match(/HTTP\/1\.1 \d+/g)).toEqual([
      "HTTP/1.1 206",
      "HTTP/1.1 200",
      "HTTP/1.1 416",
      "HTTP/1.1 200",
    ]);
    expect(all.endsWith(tenThousand.toString("latin1"))).toBe(true);
  });
});

describe("preconditions", () => {
  const date = "Sun, 03 May 2026 09:21:07 GMT";
  const earlier = "Sat, 02 May 2026 09:21:07 GMT";
  const later = "Mon, 04 May 2026 09:21:07 GMT";
  const tag = async () => (await ask("/film", {}, "HEAD")).headers.etag as string;

  test.each<[section: string, headers: (tag: string) => Record<string, string>, status: number]>([
    ["13.1.2: the same tag", (tag) => ({ "if-none-match": tag }), 304],
    ["13.1.2: weak comparison", (tag) => ({ "if-none-match": `W/${tag}` }), 304],
    ["13.1.2: one of several", (tag) => ({ "if-none-match": `"a", ${tag}, "b"` }), 304],
    ["13.1.2: any", () => ({ "if-none-match": "*" }), 304],
    ["13.1.2: another tag", () => ({ "if-none-match": '"other"' }), 200],
    ["13.1.3: not changed since", () => ({ "if-modified-since": date }), 304],
    ["13.1.3: changed since", () => ({ "if-modified-since": earlier }), 200],
    ["13.1.3: no date at all", () => ({ "if-modified-since": "yesterday" }), 200],
    [
      "13.2.2: a tag outweighs a date",
      () => ({ "if-none-match": '"other"', "if-modified-since": later }),
      200,
    ],
    ["13.1.1: the same tag", (tag) => ({ "if-match": tag }), 200],
    ["13.1.1: strong comparison", (tag) => ({ "if-match": `W/${tag}` }), 412],
    ["13.1.1: another tag", () => ({ "if-match": '"other"' }), 412],
    ["13.1.1: any", () => ({ "if-match": "*" }), 200],
    ["13.1.4: not changed since", () => ({ "if-unmodified-since": date }), 200],
    ["13.1.4: changed since", () => ({ "if-unmodified-since": earlier }), 412],
    [
      "13.2.2: preconditions come before ranges",
      (tag) => ({ "if-none-match": tag, range: "bytes=0-4" }),
      304,
    ],
    ["13.1.5: the same tag", (tag) => ({ "if-range": tag, range: "bytes=0-4" }), 206],
    ["13.1.5: a weak tag never holds", (tag) => ({ "if-range": `W/${tag}`, range: "bytes=0-4" }), 200],
    ["13.1.5: another tag", () => ({ "if-range": '"other"', range: "bytes=0-4" }), 200],
    ["13.1.5: the very date", () => ({ "if-range": date, range: "bytes=0-4" }), 206],
    ["13.1.5: a later date is not the very date", () => ({ "if-range": later, range: "bytes=0-4" }), 200],
    ["13.1.5: neither tag nor date", () => ({ "if-range": "x", range: "bytes=0-4" }), 200],
    [
      "13.1.5: what does not hold makes an unmeetable range harmless",
      () => ({ "if-range": '"x"', range: "bytes=99999-" }),
      200,
    ],
  ])("%s", async (_section, headers, status) => {
    const answer = await ask("/film", headers(await tag()));
    expect(answer.status).toBe(status);
    const bytes = { 200: 10_000, 206: 5, 304: 0, 412: 0 }[status];
    expect(answer.body.length).toBe(bytes);
    // 15.4.5: a 304 carries what a 200 would have carried to know the file again.
    if (status === 304) expect(answer.headers).toMatchObject({ etag: await tag(), "last-modified": date });
  });

  test("8.8.1: the tag changes with the file", async () => {
    const path = join(folder, "growing");
    writeFileSync(path, "one");
    const before = (await ask("/growing")).headers.etag;
    writeFileSync(path, "one, two");
    expect((await ask("/growing")).headers.etag).not.toBe(before);
  });
});

describe("large files and clients that leave", () => {
  const size = 5_000_000_000;

  test("positions above 2³¹ and 2³² (a file of 5 × 10⁹ bytes)", async () => {
    const fd = openSync(join(folder, "large"), "w");
    truncateSync(join(folder, "large"), size);
    writeSync(fd, "above two to the 31", 2 ** 31 + 5);
    writeSync(fd, "the end", size - 7);
    await expectPart(
      "/large",
      `bytes=${2 ** 31 + 5}-${2 ** 31 + 23}`,
      `bytes 2147483653-2147483671/${size}`,
      Buffer.from("above two to the 31"),
    );
    await expectPart("/large", "bytes=-7", `bytes 4999999993-4999999999/${size}`, Buffer.from("the end"));
    expect((await ask("/large", {}, "HEAD")).headers["content-length"]).toBe(String(size));
  });

  test.skipIf(process.platform !== "linux")(
    "a hundred clients that leave half-way leave no file open",
    async () => {
      const before = finished.length;
      for (let count = 0; count < 100; count++) await leaveEarly("/large");
      await Promise.all(finished.slice(before));
      const links = readdirSync("/proc/self/fd").map((fd) => {
        try {
          return execFileSync("readlink", [`/proc/${process.pid}/fd/${fd}`], {
            stdio: ["ignore", "pipe", "ignore"],
          }).toString();
        } catch {
          return "";
        }
      });
      // One is the file this test itself holds.
      expect(links.filter((link) => link.startsWith(join(folder, "large"))).length).toBe(1);
    },
  );

  test("a handle that is given is closed, also when nothing is sent", async () => {
    const handle = await open(join(folder, "film"));
    const other = createServer((req, res) => serveFile(req, res, { file: handle, type: "video/mp4" }));
    await new Promise<void>((resolve) => other.listen(0, "127.0.0.1", resolve));
    const { port } = other.address() as AddressInfo;
    const answer = await fetch(`http://127.0.0.1:${port}/`, { headers: { range: "bytes=20000-" } });
    expect([answer.status, handle.fd]).toEqual([416, -1]);
    other.closeAllConnections();
    await new Promise((resolve) => other.close(resolve));
  });

  test("a file that shrinks while it is sent ends the connection, not the answer", async () => {
    writeFileSync(join(folder, "shrinking"), Buffer.alloc(64_000_000));
    await expect(
      new Promise((resolve, reject) => {
        const { port } = server.address() as AddressInfo;
        const req = request({ host: "127.0.0.1", port, path: "/shrinking", agent: false }, (res) => {
          truncateSync(join(folder, "shrinking"), 1000);
          res.on("error", reject).on("end", resolve).resume();
        });
        req.on("error", reject).end();
      }),
    ).rejects.toThrow(/aborted/);
  });

  function leaveEarly(path: string): Promise<void> {
    return new Promise((resolve, reject) => {
      const { port } = server.address() as AddressInfo;
      const req = request({ host: "127.0.0.1", port, path, agent: false }, (res) => {
        res.once("data", () => res.destroy());
        res.once("close", resolve);
        res.on("error", () => undefined);
      });
      req.on("error", reject).end();
    });
  }
});
