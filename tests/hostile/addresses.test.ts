import fs from "node:fs";
import net from "node:net";
import os from "node:os";
import path from "node:path";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { type Running, startProgram, stopProgram } from "../e2e/program.ts";

/*
 * Addresses and bodies as no browser writes them, sent to the running program letter by letter. After each of them the
 * program answers the next.
 */
const scratch = fs.mkdtempSync(path.join(os.tmpdir(), "addresses-"));
let program: Running;
let port: number;

beforeAll(async () => {
  program = await startProgram(path.join(scratch, "workshop"));
  port = Number(new URL(program.address).port);
}, 180_000);

afterAll(async () => {
  await stopProgram(program);
  fs.rmSync(scratch, { recursive: true, force: true });
});

interface Answer {
  status: number;
  body: string;
}

/** Sends a request as it is written, and waits for the program to close the connection. */
function send(method: string, address: string, { headers = "", body = "" } = {}): Promise<Answer> {
  const length = /content-length|transfer-encoding/i.test(headers)
    ? ""
    : `Content-Length: ${Buffer.byteLength(body)}\r\n`;
  const own = `Host: 127.0.0.1:${port}\r\nOrigin: http://127.0.0.1:${port}\r\nConnection: close\r\n`;
  return new Promise((resolve, reject) => {
    const chunks: Buffer[] = [];
    const socket = net.connect(port, "127.0.0.1");
    socket.on("data", (chunk) => chunks.push(chunk));
    socket.on("error", reject);
    socket.on("close", () => {
      const [head = "", ...rest] = Buffer.concat(chunks).toString("utf8").split("\r\n\r\n");
      resolve({ status: Number(/^HTTP\/1\.1 (\d+)/.exec(head)?.[1] ?? 0), body: rest.join("\r\n\r\n") });
    });
    socket.write(`${method} ${address} HTTP/1.1\r\n${own}${length}${headers}\r\n${body}`);
  });
}

const post = (address: string, body: string) =>
  send("POST", address, { body, headers: "Content-Type: application/json\r\n" });

async function answersStill(): Promise<void> {
  expect((await send("GET", "/due/soaks")).status).toBe(200);
}

describe("an address that names no place here", () => {
  test.each(["//", "///x", "/\\x", "//elsewhere.example/media/x", "http://[", "http://elsewhere.example/"])(
    "%s is turned away, and the program goes on",
    async (address) => {
      const answer = await send("GET", address);
      expect(answer.status).toBe(400);
      expect(answer.body).toMatch(/is no address of this program.*one slash/);
      await answersStill();
    },
  );

  test.each(["/print/%E0%A4%A/pdf", "/builds/%E0%A4%A", "/release/%ff/x"])(
    "%s holds half a letter",
    async (address) => {
      expect((await send("GET", address)).status).toBe(400);
      await answersStill();
    },
  );
});

test("what a fault of the program's own says is not shown to who asks", async () => {
  const answer = await send("POST", "/media/recordings/of-nobody/copy");
  expect(answer.status).toBe(400);
  expect(answer.body).not.toMatch(/prisma|invocation|\.ts:/i);
});

describe("a path that no folder has", () => {
  test.each([
    ["/folders/in", { choice: null }, "folder"],
    ["/folders/out", { build: "b", films: false }, "folder"],
    ["/keep/backup", {}, "folder"],
    ["/media/recordings/r/file", {}, "file"],
    ["/media/folders", { build: "b", sitting: "s" }, "folder"],
  ])("%s says so of a NUL, of half a letter, and of one that says nowhere", async (address, rest, name) => {
    for (const place of ["/tmp/a\0b", "/tmp/a\ud800", "somewhere"]) {
      const answer = await post(address, JSON.stringify({ ...rest, [name]: place }));
      expect(answer.status).toBe(400);
      expect(answer.body).toMatch(/no path can have|where on this computer/);
      expect(answer.body).toContain("Copy the path");
    }
    await answersStill();
  });

  // Node's own mkdir, asked for several folders at once, never comes back from /proc.
  test.runIf(process.platform === "linux")("a place that takes no folders is told of, and soon", async () => {
    await post("/folders/demo", "{}");
    const out = { folder: "/proc/x/y", build: "demo-build-water-pump", films: false };
    const answer = await post("/folders/out", JSON.stringify(out));
    expect(answer.status).toBe(503);
    expect(answer.body).toContain("There is no such place");
  });
});

describe("a body that a page never sends", () => {
  test("is refused by its length, before it is read", async () => {
    const headers = "Content-Length: 999999999999\r\n";
    const answer = await send("POST", "/commands", { headers });
    expect(answer.status).toBe(413);
    expect(answer.body).toContain("At most 150 MB");
  });

  test("is refused when it does not say its length", async () => {
    const headers = "Transfer-Encoding: chunked\r\n";
    expect((await send("POST", "/commands", { headers, body: "2\r\n{}\r\n0\r\n\r\n" })).status).toBe(411);
    await answersStill();
  });
});
