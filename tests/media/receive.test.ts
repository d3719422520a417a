import { execFileSync } from "node:child_process";
import { createHash } from "node:crypto";
import {
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  utimesSync,
  writeFileSync,
} from "node:fs";
import { createServer, request } from "node:http";
import type { AddressInfo } from "node:net";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { Readable } from "node:stream";
import { fileURLToPath } from "node:url";
import fc from "fast-check";
import { afterAll, describe, expect, test } from "vitest";
import { diskName, MediaError, type ReceivedFile, receiveFile, sweepUnfinished } from "#lib/media/index.ts";

const base = mkdtempSync(join(tmpdir(), "receive-"));
afterAll(() => rmSync(base, { recursive: true }));
const newFolder = () => mkdtempSync(join(base, "to-"));
const bodyOf = (...pieces: (string | Buffer)[]) => Readable.from(pieces.map((piece) => Buffer.from(piece)));

describe("an upload", () => {
  test("is on disk whole, with its length and hash", async () => {
    const folder = newFolder();
    const pieces = Array.from({ length: 300 }, (_, index) => Buffer.alloc(10_007, index));
    const received = await receiveFile(bodyOf(...pieces), {
      folder,
      name: "Strip down.MP4",
      expectedBytes: 3_002_100,
    });
    const bytes = readFileSync(received.path);
    expect(bytes.equals(Buffer.concat(pieces))).toBe(true);
    expect(received).toEqual({
      path: join(folder, "Strip down.mp4"),
      diskName: "Strip down.mp4",
      bytes: 3_002_100,
      sha256: createHash("sha256").update(bytes).digest("hex"),
    });
    expect(readdirSync(folder)).toEqual(["Strip down.mp4"]);
  });

  test("FIPS 180-4: the hash of the published example", async () => {
    // "abc" from the examples published by NIST with FIPS 180-4.
    const { sha256 } = await receiveFile(bodyOf("a", "bc"), { folder: newFolder(), name: "abc" });
    expect(sha256).toBe("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
  });

  test("never takes the place of another file", async () => {
    const folder = newFolder();
    const all = await Promise.all(
      ["one", "two", "three"].map((text) => receiveFile(bodyOf(text), { folder, name: "clip.mp4" })),
    );
    expect(readdirSync(folder).sort()).toEqual(["clip (2).mp4", "clip (3).mp4", "clip.mp4"]);
    expect(all.map(({ path }) => readFileSync(path, "utf8"))).toEqual(["one", "two", "three"]);
  });

  test("makes its folder", async () => {
    const folder = join(newFolder(), "a", "b");
    const received = await receiveFile(bodyOf("x"), { folder, name: "../../../clip.mp4" });
    expect(received.path).toBe(join(folder, "clip.mp4"));
  });

  test("may be empty; that it is no film is for others to say", async () => {
    expect(
      (await receiveFile(bodyOf(), { folder: newFolder(), name: "a.mp4", expectedBytes: 0 })).bytes,
    ).toBe(0);
  });
});

describe("an upload that fails leaves nothing", () => {
  test.each([
    ["too few bytes", 10],
    ["too many bytes", 2],
  ])("%s", async (_what, expectedBytes) => {
    const folder = newFolder();
    const error = await receiveFile(bodyOf("four"), { folder, name: "a.mp4", expectedBytes }).catch(
      (error) => error,
    );
    expect(error).toBeInstanceOf(MediaError);
    expect(error).toMatchObject({
      kind: "upload-broken",
      found: expect.stringContaining("4 bytes had arrived"),
    });
    expect(readdirSync(folder)).toEqual([]);
  });

  test("a browser that leaves half-way", async () => {
    const folder = newFolder();
    const outcome = await upload(folder, (req) => req.write("x".repeat(5000), () => req.destroy()));
    expect(outcome).toMatchObject({ kind: "upload-broken" });
    expect(readdirSync(folder)).toEqual([]);
  });

  test("a source that fails", async () => {
    const folder = newFolder();
    const body = Readable.from(
      (async function* () {
        yield Buffer.from("half");
        throw Object.assign(new Error("reset"), { code: "ECONNRESET" });
      })(),
    );
    await expect(receiveFile(body, { folder, name: "a.mp4" })).rejects.toMatchObject({
      kind: "upload-broken",
    });
    expect(readdirSync(folder)).toEqual([]);
  });

  test("a folder that cannot be made, and the answer can still be sent", async () => {
    const file = join(newFolder(), "file");
    writeFileSync(file, "a file, no folder");
    const outcome = await upload(join(file, "below"), (req) => req.end("x".repeat(5000)), 5000);
    expect(outcome).toMatchObject({ kind: "cannot-write" });
    expect(outcome).toHaveProperty("answered", 507);
    expect(readFileSync(file, "utf8")).toBe("a file, no folder");
  });

  test("a full disk", () => {
    const script = fileURLToPath(new URL("./full-disk.ts", import.meta.url));
    const disk = mkdtempSync(join(base, "disk-"));
    const mount = `mount -t tmpfs -o size=256k none "$1" && exec "$0" --import tsx "$2" "$1"`;
    const args = ["-rm", "sh", "-c", mount, process.execPath, disk, script];
    let said: string;
    try {
      execFileSync("unshare", ["-rm", "mount", "-t", "tmpfs", "none", disk], { stdio: "ignore" });
      said = execFileSync("unshare", args, { encoding: "utf8" });
    } catch (error) {
      if ((error as { stdout?: string }).stdout) throw error;
      console.log("not tried: this system lets no test mount a small disk of its own");
      return;
    }
    expect(JSON.parse(said)).toEqual({ kind: "disk-full", left: ["already there.mp4"], kept: "kept" });
  });
});

describe("what an ended process left", () => {
  test("is swept after an hour, and nothing else is", async () => {
    const folder = newFolder();
    const names = [
      ".receiving-0123456789abcdef.part",
      ".receiving-fedcba9876543210.part",
      "film.part",
      "film.mp4",
    ];
    for (const name of names) writeFileSync(join(folder, name), "x");
    const old = new Date(Date.now() - 2 * 3_600_000);
    for (const name of [names[0], names[2], names[3]]) utimesSync(join(folder, name as string), old, old);
    mkdirSync(join(folder, "sub"));
    expect(await sweepUnfinished(folder)).toBe(1);
    expect(readdirSync(folder).sort()).toEqual([names[1], "film.mp4", "film.part", "sub"]);
    expect(await sweepUnfinished(join(folder, "gone"))).toBe(0);
  });
});

// Rules: Microsoft Learn, "Naming Files, Paths, and Namespaces".
describe("names for the disk", () => {
  test.each([
    ["clip.mp4", "clip.mp4"],
    ["Größe 5.MOV", "Größe 5.mov"],
    ["../../etc/passwd", "passwd"],
    ["C:\\Users\\x\\film.mp4", "film.mp4"],
    ["..", "recording"],
    ["", "recording"],
    [".hidden.mp4", "hidden.mp4"],
    ["trailing dots... .mp4", "trailing dots.mp4"],
    ["ends in a dot.", "ends in a dot"],
    ['a<b>c:d"e|f?g*h.mp4', "a_b_c_d_e_f_g_h.mp4"],
    ["line\nbreak\ttab\0nul.mp4", "line_break_tab_nul.mp4"],
    ["\u202efdp.\u2066mp4", "fdp.mp4"],
    ["zero\u200bwidth\ufeff.mp4", "zerowidth.mp4"],
    ["CON.mp4", "_CON.mp4"],
    ["nul.tar.mp4", "_nul.tar.mp4"],
    ["com1", "_com1"],
    ["LPT¹.mp4", "_LPT¹.mp4"],
    ["CONtact.mp4", "CONtact.mp4"],
    ["COM10.mp4", "COM10.mp4"],
    ["A\u030a.mp4", "Å.mp4"],
    ["half \ud83d pair.mp4", "half _ pair.mp4"],
  ])("%j becomes %j", (name, expected) => {
    expect(diskName(name)).toBe(expected);
  });

  test("whatever comes, the name is harmless and the same when cleaned again", () => {
    const hostile = fc.stringMatching(/^[\s\S]{0,300}$/);
    fc.assert(
      fc.property(fc.oneof(hostile, fc.string({ unit: "grapheme", maxLength: 300 })), (name) => {
        const clean = diskName(name);
        expect(Buffer.byteLength(clean)).toBeLessThanOrEqual(121);
        expect(clean).not.toMatch(/[/\\<>:"|?*]|\p{C}|^\.|[. ]$|^$/u);
        expect(clean).not.toMatch(/^(con|prn|aux|nul|com[1-9¹²³]|lpt[1-9¹²³]) *(\.|$)/i);
        expect(diskName(clean)).toBe(clean);
      }),
      { seed: 1904, numRuns: 1000 },
    );
  });
});

/** Sends a request to a server that receives it into a folder, and says how that went there. */
async function upload(folder: string, send: (req: ReturnType<typeof request>) => void, length = 1_000_000) {
  let outcome: (value: object) => void;
  const result = new Promise<object>((resolve) => {
    outcome = resolve;
  });
  const server = createServer((req, res) => {
    receiveFile(req, { folder, name: "clip.mp4", expectedBytes: length }).then(
      (received: ReceivedFile) => outcome(received),
      (error: MediaError) => {
        res.writeHead(507, { Connection: "close" }).end();
        outcome({ kind: error.kind });
      },
    );
  });
  await new Promise<void>((resolve) => server.listen(0, "127.0.0.1", resolve));
  const { port } = server.address() as AddressInfo;
  const options = {
    host: "127.0.0.1",
    port,
    method: "POST",
    headers: { "Content-Length": length },
    agent: false as const,
  };
  const answered = new Promise<number | null>((resolve) => {
    const req = request(options, (res) => resolve(res.resume().statusCode ?? null));
    req.on("error", () => resolve(null));
    send(req);
  });
  const all = { ...(await result), answered: await answered };
  server.closeAllConnections();
  await new Promise((resolve) => server.close(resolve));
  return all;
}
