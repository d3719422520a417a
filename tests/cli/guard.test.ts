import type { IncomingMessage } from "node:http";
import { describe, expect, test } from "vitest";
import { contentPolicy, turnAway } from "#lib/cli/doors/guard.ts";

const ask = (method: string, headers: Record<string, string>) =>
  turnAway({ method, headers } as unknown as IncomingMessage, 4718)?.status ?? 200;

// Host: RFC 9110 section 7.2; Origin: RFC 6454 section 7 and the Fetch standard.
describe("who may ask", () => {
  test.each([
    ["GET", { host: "127.0.0.1:4718" }, 200],
    ["GET", { host: "localhost:4718" }, 200],
    ["GET", { host: "[::1]:4718" }, 200],
    ["GET", { host: "workshop.example:4718" }, 421],
    ["GET", { host: "127.0.0.1:9999" }, 421],
    ["GET", {}, 421],
    ["GET", { host: "127.0.0.1:4718", "sec-fetch-site": "cross-site", "sec-fetch-mode": "no-cors" }, 403],
    ["GET", { host: "127.0.0.1:4718", "sec-fetch-site": "cross-site", "sec-fetch-mode": "navigate" }, 200],
    ["POST", { host: "127.0.0.1:4718", origin: "http://127.0.0.1:4718" }, 200],
    ["POST", { host: "127.0.0.1:4718" }, 403],
    ["POST", { host: "127.0.0.1:4718", origin: "null" }, 403],
    ["POST", { host: "127.0.0.1:4718", origin: "http://localhost:4718" }, 403],
    ["POST", { host: "127.0.0.1:4718", origin: "https://127.0.0.1:4718" }, 403],
    ["DELETE", { host: "127.0.0.1:4718", origin: "http://evil.example" }, 403],
  ] as [string, Record<string, string>, number][])("%s %j is answered %i", (method, headers, status) => {
    expect(ask(method, headers)).toBe(status);
  });

  test("a page may run scripts of its own nonce and reach nothing elsewhere", () => {
    const policy = contentPolicy("abc", false);
    expect(policy).toContain("script-src 'self' 'nonce-abc'");
    expect(policy).not.toMatch(/https?:|\*|unsafe-eval/);
    expect(policy.replace("style-src-attr 'unsafe-inline'", "")).not.toContain("unsafe-inline");
  });
});
