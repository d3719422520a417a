import { execFileSync } from "node:child_process";
import { createHash, randomBytes } from "node:crypto";
import fs from "node:fs";
import { createServer, type Server } from "node:http";
import type { AddressInfo } from "node:net";
import os from "node:os";
import path from "node:path";
import { fileURLToPath } from "node:url";
import { afterEach, describe, expect, test } from "vitest";
import { doors } from "#lib/cli/doors/index.ts";
import { finishArrived, indexingOf, takeArrived } from "#lib/cli/indexing/index.ts";
import { loadBuild, type OpenWorkshop, placesOf } from "#lib/store/index.ts";
import { sampleDocument } from "../sample.ts";
import { freshWorkshop, writeDocument } from "../store/fresh.ts";

const film = fs.readFileSync(new URL("../fixtures/video/data/vp9.webm", import.meta.url));
const sha256 = (bytes: Buffer) => createHash("sha256").update(bytes).digest("hex");

const running: { server: Server; opened: OpenWorkshop }[] = [];
afterEach(async () => {
  for (const { server, opened } of running.splice(0)) {
    server.closeAllConnections();
    server.close();
    await indexingOf(opened).stop();
  }
});

/** A workshop with one sitting, and the doors in front of it. */
async function shop() {
  const opened = freshWorkshop();
  await writeDocument(opened, sampleDocument({ recordings: [] }));
  const server = createServer((req, res) => void doors(opened, req, res, process.cwd()));
  running.push({ server, opened });
  await new Promise<void>((resolve) => server.listen(0, "127.0.0.1", resolve));
  const { port } = server.address() as AddressInfo;
  return { opened, address: `http://127.0.0.1:${port}/media/uploads` };
}

const tus = { "tus-resumable": "1.0.0" };
const pair = (name: string, value: string) => `${name} ${Buffer.from(value).toString("base64")}`;
const told = (name: string, more: Record<string, string> = {}) =>
  Object.entries({ build: "build-1", sitting: "sitting-1", name, ...more })
    .map(([key, value]) => pair(key, value))
    .join(",");

function begin(address: string, length: number, metadata = told("first.webm")) {
  const headers = { ...tus, "upload-length": String(length), "upload-metadata": metadata };
  return fetch(address, { method: "POST", headers });
}

function piece(url: string, offset: number, body: Uint8Array) {
  const headers = {
    ...tus,
    "upload-offset": String(offset),
    "content-type": "application/offset+octet-stream",
  };
  return fetch(url, { method: "PATCH", headers, body: Uint8Array.from(body) });
}

async function whole(url: string, hash: string) {
  const headers = { "content-type": "application/json" };
  const response = await fetch(`${url}/whole`, {
    method: "POST",
    headers,
    body: JSON.stringify({ sha256: hash }),
  });
  return { status: response.status, answer: await response.json() };
}

/** Begins an upload and brings all of it but the last bytes. @returns its address and its id */
async function bring(address: string, bytes: Buffer, name = "first.webm", less = 0) {
  const response = await begin(address, bytes.length, told(name));
  expect(response.status).toBe(201);
  const url = new URL(response.headers.get("location") ?? "", address).href;
  await piece(url, 0, bytes.subarray(0, bytes.length - less));
  return { url, id: url.split("/").at(-1) as string };
}

const filmsOf = ({ workshop }: OpenWorkshop) =>
  fs.readdirSync(workshop.recordings).filter((name) => !name.startsWith("."));
const incomingOf = ({ workshop }: OpenWorkshop) => {
  const folder = path.join(workshop.recordings, ".incoming");
  return fs.existsSync(folder) ? fs.readdirSync(folder) : [];
};
async function listed({ client }: OpenWorkshop) {
  const document = await loadBuild(client, "build-1");
  return document?.recordings.filter((one) => one.gone === null) ?? [];
}

// Statuses and headers: tus resumable upload protocol 1.0.0, tus.io/protocols/resumable-upload.
describe("a file that arrives piece by piece", () => {
  test("says how much of it is there, takes the next piece only from there, and is listed when it is whole", async () => {
    const { opened, address } = await shop();
    const { url } = await bring(address, film, "Tag 1 – Uhrwerk.webm", 1000);
    const head = await fetch(url, { method: "HEAD", headers: tus });
    expect(head.headers.get("upload-offset")).toBe(String(film.length - 1000));
    expect(head.headers.get("upload-length")).toBe(String(film.length));
    expect(head.headers.get("cache-control")).toBe("no-store");
    expect((await piece(url, 0, film.subarray(0, 10))).status).toBe(409);
    expect((await fetch(url, { method: "HEAD" })).status).toBe(412);
    const early = await whole(url, sha256(film));
    expect(early).toMatchObject({ status: 400, answer: { expected: "The whole file." } });
    expect([filmsOf(opened), await listed(opened)]).toEqual([[], []]);

    const last = await piece(url, film.length - 1000, film.subarray(film.length - 1000));
    expect([last.status, last.headers.get("upload-offset")]).toEqual([204, String(film.length)]);
    expect(filmsOf(opened)).toEqual([]);
    expect((await whole(url, sha256(film))).status).toBe(200);
    const [recording] = await listed(opened);
    expect(recording).toMatchObject({ name: "Tag 1 – Uhrwerk.webm", sha256: sha256(film), trouble: null });
    expect(recording?.probe?.playable).toBe(true);
    expect(filmsOf(opened)).toEqual(["Tag 1 – Uhrwerk.webm"]);
    expect(fs.readFileSync(path.join(opened.workshop.recordings, "Tag 1 – Uhrwerk.webm")).equals(film)).toBe(
      true,
    );
    expect(incomingOf(opened)).toEqual([]);
    // The answer may have been lost on its way: asking again lists nothing twice.
    expect((await whole(url, sha256(film))).status).toBe(200);
    expect([(await listed(opened)).length, filmsOf(opened).length]).toEqual([1, 1]);
  });

  test("is told of as broken off, in its build alone, once a part of it is there", async () => {
    const { address } = await shop();
    await begin(address, 100);
    const { id } = await bring(address, film, "first.webm", 10);
    const ask = async (build: string) => (await (await fetch(`${address}?build=${build}`)).json()).uploads;
    expect(await ask("build-1")).toMatchObject([
      { id, name: "first.webm", size: film.length, offset: film.length - 10 },
    ]);
    expect(await ask("build-2")).toEqual([]);
    expect((await fetch(`${address}/${id}`, { method: "DELETE", headers: tus })).status).toBe(204);
    expect(await ask("build-1")).toEqual([]);
  });

  test("with other bytes than were sent is thrown away, and nothing is listed", async () => {
    const { opened, address } = await shop();
    const { url } = await bring(address, film);
    const { status, answer } = await whole(url, sha256(Buffer.from("another")));
    expect(status).toBe(400);
    expect(answer.found).toContain("not what was sent");
    expect([filmsOf(opened), incomingOf(opened), await listed(opened)]).toEqual([[], [], []]);
  });

  test("that the build has already becomes its second place", async () => {
    const { opened, address } = await shop();
    for (const name of ["first.webm", "again.webm"]) {
      const { url } = await bring(address, film, name);
      expect((await whole(url, sha256(film))).status).toBe(200);
    }
    const [recording, ...more] = await listed(opened);
    expect([recording?.name, more]).toEqual(["first.webm", []]);
    expect(await placesOf(opened.client, recording?.id as string)).toHaveLength(2);
  });

  test("may be empty; the list says what is wrong with it", async () => {
    const { opened, address } = await shop();
    const response = await begin(address, 0, told("flat battery.mp4"));
    const url = new URL(response.headers.get("location") ?? "", address).href;
    expect((await whole(url, sha256(Buffer.alloc(0)))).status).toBe(200);
    expect((await listed(opened))[0]?.trouble?.found).toContain("0 bytes");
  });
});

describe("hostile or mistaken requests lose nothing and reach nothing", () => {
  test.each([
    ["../../../../etc/passwd", "passwd"],
    ["C:\\films\\a.mp4", "a.mp4"],
    ["CON.mp4", "_CON.mp4"],
    ["a\"b'c<d>.mp4", "a_b'c_d_.mp4"],
    ["line\nbreak.mp4", "line_break.mp4"],
    ["\u202egnp.mp4", "gnp.mp4"],
    [`${"ü".repeat(200)}.mp4`, `${"ü".repeat(57)}.mp4`],
  ])("a name such as %j", async (name, onDisk) => {
    const { opened, address } = await shop();
    const { url } = await bring(address, film, name);
    expect((await whole(url, sha256(film))).status).toBe(200);
    expect(filmsOf(opened)).toEqual([onDisk]);
    expect((await listed(opened))[0]?.name).toBe(name.slice(0, 300));
  });

  test.each(["..%2F..%2Fworkshop.db", "..", "not-an-id", "a".repeat(500), "%00", "x.json"])(
    "an id such as %s",
    async (id) => {
      const { opened, address } = await shop();
      const before = fs.readFileSync(opened.workshop.database);
      for (const method of ["HEAD", "PATCH", "DELETE", "GET"]) {
        const { status } = await fetch(`${address}/${id}`, {
          method,
          headers: { ...tus, "upload-offset": "0" },
        });
        expect(status, method).toBe(404);
      }
      expect((await whole(`${address}/${id}`, sha256(film))).status).toBe(404);
      expect(fs.readFileSync(opened.workshop.database).equals(before)).toBe(true);
    },
  );

  test("what has arrived of a file cannot be read back through this door", async () => {
    const { address } = await shop();
    const { url } = await bring(address, film, "first.webm", 1);
    for (const asked of [url, `${url}.json`, `${url}/whole`]) {
      const response = await fetch(asked);
      expect([response.status, response.headers.get("content-type")]).toEqual([
        404,
        "application/json; charset=utf-8",
      ]);
    }
  });

  test.each([
    ["no such sitting", told("a.mp4", { sitting: "elsewhere" }), 10, "sitting"],
    ["no such build", told("a.mp4", { build: "elsewhere" }), 10, "no such build"],
    ["nothing told but a name", pair("name", "a.mp4"), 10, "no such build"],
    ["more than any drive has", told("a.mp4"), 9e15, "left; the film has"],
  ])("%s is refused before anything is sent", async (_what, metadata, length, words) => {
    const { opened, address } = await shop();
    const response = await begin(address, length, metadata);
    expect(response.status).toBe(400);
    const { found, todo } = await response.json();
    expect(found).toContain(words);
    expect(todo).not.toBe("");
    expect(incomingOf(opened)).toEqual([]);
  });

  test.each([["abc"], [42], ["g".repeat(64)]])("a hash such as %j", async (hash) => {
    const { opened, address } = await shop();
    const { url } = await bring(address, film);
    expect((await whole(url, hash as string)).status).toBe(400);
    expect(incomingOf(opened)).toHaveLength(2);
  });

  test("more bytes than were promised are not taken", async () => {
    const { opened, address } = await shop();
    const response = await begin(address, 100);
    const url = new URL(response.headers.get("location") ?? "", address).href;
    expect((await piece(url, 0, randomBytes(200))).status).toBe(413);
    const sizes = incomingOf(opened).map((name) =>
      name.endsWith(".json") ? 0 : fs.statSync(path.join(opened.workshop.recordings, ".incoming", name)).size,
    );
    expect(Math.max(...sizes)).toBeLessThanOrEqual(100);
  });

  test("no other origin is told that it may ask", async () => {
    const { address } = await shop();
    const headers = { ...tus, origin: "http://elsewhere.example", "upload-length": "1" };
    const response = await fetch(address, { method: "POST", headers });
    expect(response.headers.get("access-control-allow-origin")).toBeNull();
  });
});

describe("a program that is ended while it takes a file that has arrived", () => {
  /** A file that has arrived, as its sender and the disk know it. */
  async function arrived() {
    const { opened, address } = await shop();
    const { id } = await bring(address, film, "first.webm");
    const { recordings } = opened.workshop;
    const incoming = (name: string) => path.join(recordings, ".incoming", name);
    const checked = (diskName: string) =>
      fs.writeFileSync(
        incoming(`${id}.checked`),
        JSON.stringify({ sha256: sha256(film), fingerprint: "", diskName }),
      );
    return { opened, id, recordings, incoming, checked };
  }

  const cuts: Record<string, (shop: Awaited<ReturnType<typeof arrived>>) => void> = {
    "before it was checked": () => undefined,
    "while its check was being written": ({ id, incoming }) =>
      fs.writeFileSync(incoming(`${id}.checked`), '{"sha'),
    "when it was checked and had no name": ({ checked }) => checked("first.webm"),
    "when its name had been taken by another": ({ checked, recordings }) => {
      checked("first.webm");
      fs.writeFileSync(path.join(recordings, "first.webm"), "another film");
    },
    "when it had both names": ({ checked, id, incoming, recordings }) => {
      checked("first.webm");
      fs.linkSync(incoming(id), path.join(recordings, "first.webm"));
    },
  };

  test.each(Object.keys(cuts))("%s: asked again, it is there once, whole", async (when) => {
    const shop = await arrived();
    cuts[when]?.(shop);
    const others = filmsOf(shop.opened).length - (when.includes("both names") ? 1 : 0);
    await finishArrived(shop.opened);
    await takeArrived(shop.opened, shop.id, sha256(film));
    await takeArrived(shop.opened, shop.id, sha256(film));
    const all = await listed(shop.opened);
    expect(all.map((one) => one.id)).toEqual([shop.id]);
    const [place] = await placesOf(shop.opened.client, shop.id);
    expect(fs.readFileSync(path.join(shop.recordings, place?.path as string)).equals(film)).toBe(true);
    expect(filmsOf(shop.opened)).toHaveLength(others + 1);
    if (others > 0)
      expect(fs.readFileSync(path.join(shop.recordings, "first.webm"), "utf8")).toBe("another film");
    expect(incomingOf(shop.opened)).toEqual([]);
  });

  const named = {
    "under its name only": fs.renameSync,
    "under its name and still among the arriving ones": fs.linkSync,
  };

  test.each(Object.entries(named))(
    "%s, and not listed: it is listed at the next start, with nobody asking",
    async (_, give) => {
      const { opened, id, incoming, checked, recordings } = await arrived();
      checked("first.webm");
      give(incoming(id), path.join(recordings, "first.webm"));
      await finishArrived(opened);
      expect((await listed(opened)).map((one) => [one.id, one.sha256])).toEqual([[id, sha256(film)]]);
      expect(incomingOf(opened)).toEqual([]);
    },
  );
});

describe("what never came to anything", () => {
  test("is thrown away after a day; a part that has arrived is kept until somebody lets it go", async () => {
    const { opened, address } = await shop();
    const { id } = await bring(address, film, "first.webm", 10);
    await begin(address, 100);
    const folder = path.join(opened.workshop.recordings, ".incoming");
    const cut = crypto.randomUUID();
    fs.writeFileSync(path.join(folder, cut), "");
    await finishArrived(opened);
    expect(incomingOf(opened)).toHaveLength(5);
    const old = new Date(Date.now() - 2 * 86_400_000);
    for (const name of incomingOf(opened)) fs.utimesSync(path.join(folder, name), old, old);
    await finishArrived(opened);
    expect(incomingOf(opened).sort()).toEqual([id, `${id}.json`]);
  });
});

describe("a drive that takes no more", () => {
  test("is said to be full, and what has arrived can go on when there is room", () => {
    const script = fileURLToPath(new URL("./full-drive.ts", import.meta.url));
    const folder = fs.mkdtempSync(path.join(os.tmpdir(), "full-"));
    const mount = `mount -t tmpfs -o size=6m none "$1" && exec "$0" --import tsx "$2" "$1"`;
    try {
      execFileSync("unshare", ["-rm", "mount", "-t", "tmpfs", "none", folder], { stdio: "ignore" });
    } catch {
      console.log("not tried: this system lets no test mount a small drive of its own");
      return;
    }
    const args = ["-rm", "sh", "-c", mount, process.execPath, folder, script];
    const said = execFileSync("unshare", args, { encoding: "utf8" });
    fs.rmSync(folder, { recursive: true, force: true });
    expect(JSON.parse(said)).toEqual({
      full: { status: 507, found: "The drive of the workshop is full." },
      kept: "some of it",
      whole: 200,
      listed: ["first.webm"],
    });
  });
});
