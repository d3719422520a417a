import fs from "node:fs";
import http from "node:http";
import os from "node:os";
import path from "node:path";
import { deflateSync } from "node:zlib";
import sharp from "sharp";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import type { BuildDocument } from "#lib/build/index.ts";
import { type Running, startProgram, stopProgram } from "../e2e/program.ts";

/*
 * Hostile input at every door of the running program. Each case says what is expected of the message; after each
 * one, the build that was there before is there still, to the letter.
 */
const data = path.resolve("tests/fixtures/video/data");
const demo = path.resolve("content-demo/ostrey-pump");
const film = fs.readFileSync(path.join(data, "long-gop.mp4"));
const scratch = fs.mkdtempSync(path.join(os.tmpdir(), "hostile-"));
let program: Running;
let origin: string;
let before: string;

beforeAll(async () => {
  program = await startProgram(path.join(scratch, "workshop"));
  origin = program.address.replace(/\/$/, "");
  await post("/folders/demo", "{}");
  before = await marksNow();
}, 180_000);

afterAll(async () => {
  await stopProgram(program);
  fs.rmSync(scratch, { recursive: true, force: true });
});

interface Answer {
  status: number;
  body: string;
  json: Record<string, unknown>;
}

/** Asks without the manners of a browser: any method, any header, any path as it is written. */
function ask(
  method: string,
  address: string,
  body: string | Buffer = "",
  headers: Record<string, string> = {},
): Promise<Answer> {
  const { port } = new URL(origin);
  return new Promise((resolve, reject) => {
    const request = http.request(
      {
        host: "127.0.0.1",
        port,
        method,
        path: address,
        headers: { host: `127.0.0.1:${port}`, origin, ...headers },
      },
      (response) => {
        const chunks: Buffer[] = [];
        response.on("data", (chunk: Buffer) => chunks.push(chunk));
        response.on("end", () => {
          const text = Buffer.concat(chunks).toString("utf8");
          resolve({ status: response.statusCode ?? 0, body: text, json: parse(text) });
        });
        response.on("error", reject);
      },
    );
    request.on("error", reject);
    request.end(body);
  });
}

function parse(text: string): Record<string, unknown> {
  try {
    return JSON.parse(text) as Record<string, unknown>;
  } catch {
    return {};
  }
}

const post = (address: string, body: string | Buffer, headers?: Record<string, string>) =>
  ask("POST", address, body, headers);

async function documentNow(): Promise<BuildDocument> {
  return (await ask("GET", "/builds/demo-build-water-pump/document")).json.document as BuildDocument;
}

/** Everything the restorer has written, as one text. */
async function marksNow(): Promise<string> {
  const { marks, edits, stills, build } = await documentNow();
  return JSON.stringify([marks, edits, stills, build.title]);
}

/** Sees to it that the answer is a refusal in words, and that nothing was lost or changed. */
async function refused(answer: Answer, words: RegExp): Promise<void> {
  expect(answer.status, answer.body.slice(0, 300)).toBeGreaterThanOrEqual(400);
  expect(answer.status, answer.body.slice(0, 300)).toBeLessThan(500);
  expect(String(answer.json.found ?? answer.body)).toMatch(words);
  expect(await marksNow()).toBe(before);
}

describe("requests from elsewhere", () => {
  const harmless = JSON.stringify({
    id: "hostile-0001",
    buildId: null,
    label: "x",
    puts: [{ table: "machine", id: "m", rev: 0, set: {} }],
  });
  test.each([
    ["a host of another name", "GET", "/", { host: "workshop.example" }, /host/],
    ["a host that begins like ours", "GET", "/", { host: "127.0.0.1.evil.example" }, /host/],
    ["no origin", "POST", "/commands", { origin: "" }, /came from/],
    ["the origin null", "POST", "/commands", { origin: "null" }, /came from/],
    ["another site's origin", "POST", "/commands", { origin: "http://evil.example" }, /evil\.example/],
    ["our name with another port", "POST", "/commands", { origin: "http://127.0.0.1:1" }, /came from/],
    ["our name over https", "POST", "/folders/demo", { origin: "https://127.0.0.1" }, /came from/],
    [
      "a picture of another site's page",
      "GET",
      "/media/stills/x",
      { "sec-fetch-site": "cross-site", "sec-fetch-mode": "no-cors" },
      /another site/,
    ],
  ] as [string, string, string, Record<string, string>, RegExp][])(
    "%s is turned away",
    async (_, method, address, headers, words) => {
      await refused(await ask(method, address, method === "GET" ? "" : harmless, headers), words);
    },
  );

  test("many requests in a row are all answered, and the program goes on", async () => {
    const count = process.env.LONG ? 10_000 : 1000;
    let answered = 0;
    for (let round = 0; round < count / 50; round++) {
      const answers = await Promise.all(
        Array.from({ length: 50 }, () => ask("GET", "/media/stills/nothing")),
      );
      answered += answers.filter((one) => one.status === 404).length;
    }
    expect(answered).toBe(count);
    expect(await marksNow()).toBe(before);
  });
});

describe("commands", () => {
  const mark = (set: Record<string, unknown>) => ({
    id: `hostile-${crypto.randomUUID()}`,
    buildId: "demo-build-water-pump",
    label: "hostile",
    puts: [
      {
        table: "mark",
        id: `hostile-${crypto.randomUUID()}`,
        rev: 0,
        set: {
          buildId: "demo-build-water-pump",
          sittingId: "demo-sitting-bench",
          recordingId: null,
          at: null,
          until: null,
          rank: 0,
          kind: "action",
          fields: { v: 1 },
          ...set,
        },
      },
    ],
  });
  const cases: [string, unknown, RegExp][] = [
    ["words instead of JSON", "not json at all", /not a command/],
    ["a list", [], /not a command/],
    ["no rows", { ...mark({}), puts: [] }, /puts/],
    [
      "more rows than can be meant",
      { ...mark({}), puts: Array.from({ length: 20_001 }, () => mark({}).puts[0]) },
      /puts/,
    ],
    [
      "a table there is not",
      { ...mark({}), puts: [{ table: "Setting", id: "x", rev: 0, set: {} }] },
      /table/,
    ],
    [
      "a table called __proto__",
      { ...mark({}), puts: [{ table: "__proto__", id: "x", rev: 0, set: {} }] },
      /table/,
    ],
    ["a revision in words", { ...mark({}), puts: [{ table: "mark", id: "x", rev: "1", set: {} }] }, /rev/],
    [
      "a row that is not there",
      { ...mark({}), puts: [{ table: "mark", id: "nowhere", rev: 7, set: {} }] },
      /changed somewhere else/,
    ],
    ["a moment before the beginning", mark({ at: -1 }), /at/],
    ["a moment beyond all film", mark({ at: 1e300 }), /at/],
    ["a kind nobody knows", mark({ kind: "sermon" }), /kind/],
    ["fields of a later version", mark({ fields: { v: 99 } }), /fields/],
    ["a number where words belong", mark({ kind: "tool", fields: { v: 1, words: 12 } }), /words/],
    ["a sitting of another build", mark({ sittingId: "nowhere" }), /not in this workshop/],
    ["a span that ends before it begins", mark({ at: 5, until: 2 }), /ends before it begins/],
    ["a label of a million letters", { ...mark({}), label: "x".repeat(1e6) }, /label/],
    [
      "a still with a path for a hash",
      { ...mark({}), puts: [{ table: "still", id: "x", rev: 0, set: { sha256: "../../etc/passwd" } }] },
      /still/,
    ],
  ];
  test.each(cases)("%s is refused, and says where", async (_, body, words) => {
    const text = typeof body === "string" ? body : JSON.stringify(body);
    await refused(await post("/commands", text, { "content-type": "application/json" }), words);
  });
});

describe("names of films", () => {
  const names: [string, string][] = [
    ["a way out of the folder", "../../outside.mp4"],
    ["a way out, as Windows writes it", "..\\..\\outside.mp4"],
    ["a whole path", "/etc/cron.d/film.mp4"],
    ["quotes and a semicolon", `"; rm -rf ~; '.mp4`],
    ["line breaks", "first\r\nsecond: line.mp4"],
    ["a right-to-left mark that hides the ending", "film\u202e4pm.exe.mp4"],
    ["255 bytes of two-byte letters", `${"é".repeat(125)}.mp4`],
    ["a word reserved by Windows", "CON.mp4"],
    ["dots at its end", "film.mp4..."],
    ["nothing but dots", ".."],
    ["no name", ""],
    ["markup", "<img src=x onerror=alert(1)>.mp4"],
  ];
  test.each(names)("%s: the film is kept inside the workshop, under the name it had", async (_, name) => {
    const query = new URLSearchParams({ build: "demo-build-water-pump", sitting: "demo-sitting-desk", name });
    const before_ = new Set(walk(scratch));
    const answer = await post(`/media/recordings?${query}`, film, {
      "content-type": "application/octet-stream",
    });
    expect(answer.status, answer.body).toBe(200);
    const added = walk(scratch).filter(
      (file) =>
        !before_.has(file) && !file.includes(`${path.sep}made${path.sep}`) && !/workshop\.db/.test(file),
    );
    expect(added).toHaveLength(1);
    expect(path.dirname(added[0] as string)).toBe(path.join(scratch, "workshop", "recordings"));
    expect(fs.readFileSync(added[0] as string).equals(film)).toBe(true);
    const recording = (await documentNow()).recordings.at(-1);
    if (name !== "") expect((await documentNow()).recordings.some((one) => one.name === name)).toBe(true);
    expect(recording?.probe?.frameCount ?? 300).toBe(300);
    expect(await marksNow()).toBe(before);
  });
});

describe("films that are none", () => {
  const bodies: [string, Buffer, RegExp][] = [
    ["a text", Buffer.from("Dear diary, today the pump came apart.\n".repeat(50)), /./],
    ["nothing at all", Buffer.alloc(0), /./],
    ["one cut off in the middle", film.subarray(0, film.length >> 1), /./],
    ["one whose index is missing", Buffer.concat([film.subarray(0, 64), Buffer.alloc(4096, 7)]), /./],
    ["noise", Buffer.from(Array.from({ length: 20_000 }, (_, index) => (index * 7919) % 251)), /./],
  ];
  test.each(bodies)("%s stays listed, with words for it", async (name, body, words) => {
    const query = new URLSearchParams({
      build: "demo-build-water-pump",
      sitting: "demo-sitting-desk",
      name: `${name}.mp4`,
    });
    const answer = await post(`/media/recordings?${query}`, body, { "content-length": String(body.length) });
    expect(answer.status, answer.body).toBe(200);
    const row = (await documentNow()).recordings.find((one) => one.name === `${name}.mp4`);
    expect(row?.trouble?.found).toMatch(words);
    expect(row?.trouble?.todo).toMatch(words);
    expect(await marksNow()).toBe(before);
  });

  test("one for a sitting there is not is refused, and nothing of it is kept", async () => {
    const files = walk(path.join(scratch, "workshop", "recordings"));
    await refused(
      await post("/media/recordings?build=nowhere&sitting=nowhere&name=a.mp4", film),
      /no such build/i,
    );
    expect(walk(path.join(scratch, "workshop", "recordings"))).toEqual(files);
  });
});

describe("pictures", () => {
  const crc = (bytes: Buffer) => {
    let value = ~0;
    for (const byte of bytes) {
      value ^= byte;
      for (let bit = 0; bit < 8; bit++) value = (value >>> 1) ^ (value & 1 ? 0xedb88320 : 0);
    }
    return ~value >>> 0;
  };
  const chunk = (type: string, content: Buffer) => {
    const head = Buffer.alloc(8);
    head.writeUInt32BE(content.length);
    head.write(type, 4, "latin1");
    const tail = Buffer.alloc(4);
    tail.writeUInt32BE(crc(Buffer.concat([head.subarray(4), content])));
    return Buffer.concat([head, content, tail]);
  };
  /** A PNG that claims to be 30,000 by 30,000 (PNG, third edition, 11.2.1). */
  const enormous = () => {
    const header = Buffer.alloc(13);
    header.writeUInt32BE(30_000, 0);
    header.writeUInt32BE(30_000, 4);
    header.set([8, 0, 0, 0, 0], 8);
    const sign = Buffer.from([137, 80, 78, 71, 13, 10, 26, 10]);
    return Buffer.concat([
      sign,
      chunk("IHDR", header),
      chunk("IDAT", deflateSync(Buffer.alloc(30_001))),
      chunk("IEND", Buffer.alloc(0)),
    ]);
  };

  test.each([
    ["a text", () => Buffer.from("no picture")],
    ["nothing", () => Buffer.alloc(0)],
    [
      "a drawing that can hold scripts",
      () => Buffer.from('<svg xmlns="http://www.w3.org/2000/svg"><script>alert(1)</script></svg>'),
    ],
    ["one of 30,000 by 30,000", enormous],
    [
      "half a photograph",
      () =>
        fs
          .readFileSync(path.join(demo, "stills", fs.readdirSync(path.join(demo, "stills"))[0] as string))
          .subarray(0, 400),
    ],
  ] as [string, () => Buffer][])("%s is refused in words", async (_, make) => {
    await refused(await post("/media/stills", make()), /./);
  });

  test("a photograph with a page hidden behind it is kept as a photograph alone", async () => {
    const picture = await sharp({ create: { width: 64, height: 48, channels: 3, background: "#888" } })
      .jpeg()
      .toBuffer();
    const answer = await post(
      "/media/stills",
      Buffer.concat([picture, Buffer.from("<script>alert('behind')</script>PK\u0003\u0004")]),
    );
    if (answer.status === 200) {
      const kept = await ask("GET", `/media/stills/${answer.json.sha256}`);
      expect(kept.body).not.toContain("behind");
    } else await refused(answer, /./);
  });
});

describe("addresses", () => {
  test.each([
    "/media/stills/../../workshop.db",
    "/media/stills/%2e%2e%2f%2e%2e%2fworkshop.db",
    "/media/recordings/%2e%2e%2fworkshop.db",
    "/media/recordings/nowhere",
    "/media/recordings/%ff%fe",
    "/print/nowhere/pdf",
    "/print/demo-build-water-pump/exe",
    "/builds/nowhere/document",
  ])("%s gives nothing away", async (address) => {
    const answer = await ask("GET", address);
    expect(answer.status).toBeGreaterThanOrEqual(400);
    expect(answer.status).toBeLessThan(500);
    expect(answer.body).not.toContain("SQLite format");
  });
});

describe("folders", () => {
  const folder = (
    name: string,
    // biome-ignore lint/suspicious/noExplicitAny: it is spoilt on purpose
    change: (json: any) => unknown,
  ) => {
    const place = path.join(scratch, name);
    fs.cpSync(demo, place, { recursive: true, filter: (from) => !from.includes("recordings") });
    const file = path.join(place, "build.json");
    const json = JSON.parse(fs.readFileSync(file, "utf8"));
    const changed = change(json);
    fs.writeFileSync(file, typeof changed === "string" ? changed : JSON.stringify(json));
    return place;
  };
  const cases: [string, () => string, RegExp][] = [
    ["one that is not there", () => path.join(scratch, "nowhere"), /no readable build\.json/],
    ["half a build.json", () => folder("half", () => '{"form": "witness-mark-build"'), /not JSON/],
    [
      "one of a later version",
      () => folder("later", (json) => Object.assign(json, { version: 2 })),
      /version/,
    ],
    [
      "one with an unknown kind of mark",
      () => folder("unknown", (json) => Object.assign(json.marks[0], { kind: "sermon" })),
      /marks\.0/,
    ],
    [
      "one with a number beyond numbers",
      () => folder("huge", (json) => JSON.stringify(json).replace(/"rank":0/, '"rank":1e999')),
      /rank/,
    ],
    [
      "one that leads out of itself",
      () => folder("out", (json) => Object.assign(json.files, { x: "../../x" })),
      /inside the build folder/,
    ],
    ["a path that is none", () => "not/a/whole/path", /whole path/],
    ["a path with a NUL", () => `/tmp/a\u0000b`, /./],
  ];
  test.each(cases)("%s is refused in words", async (_, make, words) => {
    const body = JSON.stringify({ folder: make(), choice: "replace" });
    await refused(await post("/folders/in", body), words);
  });

  test("one whose assemblies go in a circle is brought in, or refused, and the program goes on", async () => {
    const place = folder("circle", (json) => {
      const fresh = {
        machineId: json.machine.id,
        rank: 0,
        gone: null,
        rev: 1,
      };
      Object.assign(json, {
        assemblies: [
          ...json.assemblies,
          { id: "circle-a", parentId: "circle-b", name: "A", ...fresh },
          { id: "circle-b", parentId: "circle-a", name: "B", ...fresh },
        ],
      });
    });
    const answer = await post("/folders/in", JSON.stringify({ folder: place, choice: "keep both" }));
    expect(answer.status).toBeLessThan(500);
    expect(await marksNow()).toBe(before);
  });

  test.each([
    ["a relative path", "films", /where on this computer/],
    ["a folder that is not there", path.join(scratch, "no such drive"), /cannot be re/],
  ])("films are not listed from %s", async (_, place, words) => {
    const body = JSON.stringify({
      build: "demo-build-water-pump",
      sitting: "demo-sitting-desk",
      folder: place,
    });
    await refused(await post("/media/folders", body), words);
  });
});

describe("words that are markup", () => {
  test("stay words in every output, and an address of another kind is no link", async () => {
    const { recordings } = await documentNow();
    const recording = recordings.find((one) => one.publishedAt !== "");
    const hostile = `<script>alert(1)</script> [click](javascript:alert(1)) ![x](http://evil.example/x.png)`;
    const command = {
      id: `hostile-${crypto.randomUUID()}`,
      buildId: "demo-build-water-pump",
      label: "hostile words",
      puts: [
        {
          table: "recording",
          id: recording?.id,
          rev: recording?.rev,
          set: { publishedAt: "javascript:alert({seconds})//" },
        },
        {
          table: "mark",
          id: "hostile-words",
          rev: 0,
          set: {
            buildId: "demo-build-water-pump",
            sittingId: "demo-sitting-bench",
            recordingId: null,
            at: null,
            until: null,
            rank: 99,
            kind: "action",
            fields: { v: 1, words: hostile, detail: hostile },
          },
        },
      ],
    };
    expect(
      (await post("/commands", JSON.stringify(command), { "content-type": "application/json" })).status,
    ).toBe(200);
    const html = (await ask("GET", "/print/demo-build-water-pump/html")).body;
    expect(html).toContain("&#x3C;script>");
    // The file's own two blocks, which its policy names, are the only ones.
    expect(html.match(/<script/g)).toHaveLength(2);
    expect(html).not.toMatch(/<script>alert|href="javascript:|src="http/);
    const markdown = (await ask("GET", "/print/demo-build-water-pump/markdown")).body;
    expect(markdown).not.toMatch(/^<script/m);
    expect(markdown).not.toMatch(/[^\\]\]\(javascript:/);
    const undo = JSON.stringify({
      id: `hostile-${crypto.randomUUID()}`,
      buildId: "demo-build-water-pump",
      step: "undo",
    });
    await post("/commands", undo, { "content-type": "application/json" });
  });
});

function walk(folder: string): string[] {
  return (fs.readdirSync(folder, { recursive: true, withFileTypes: true }) as fs.Dirent[])
    .filter((entry) => entry.isFile())
    .map((entry) => path.join(entry.parentPath, entry.name))
    .sort();
}
