import fs from "node:fs";
import os from "node:os";
import path from "node:path";
import { afterEach, describe, expect, test, vi } from "vitest";
import { draftCommand } from "#lib/cli/commands/draft.ts";
import { known } from "./helpers.ts";

/** Runs the command as the launcher does, and gives what it printed. */
async function run(...args: string[]) {
  const out = vi.spyOn(console, "log").mockImplementation(() => {});
  const err = vi.spyOn(console, "error").mockImplementation(() => {});
  const code = await draftCommand.run(args);
  return { code, out: out.mock.calls.flat().join("\n"), err: err.mock.calls.flat().join("\n") };
}
afterEach(() => vi.restoreAllMocks());

describe("witness draft", () => {
  test("prints one JSON value with the marks, and nothing else", async () => {
    const { code, out, err } = await run(known[1]?.captions as string);
    expect(code).toBe(0);
    expect(err).toBe("");
    const { marks } = JSON.parse(out) as { marks: Record<string, unknown>[] };
    expect(marks.length).toBeGreaterThan(50);
    for (const mark of marks) {
      expect(Object.keys(mark)).toEqual(["t", "t_end", "kind", "quote", "fields"]);
      if (mark.kind === "measurement")
        expect(mark.fields).toMatchObject({
          quantity: expect.any(String),
          value: expect.any(Number),
          unit: expect.any(String),
          value_si: expect.any(Number),
          of: expect.any(String),
        });
    }
  });
  test.each([
    ["a file that is not there", () => "/no/such/captions.vtt", /cannot be read/],
    ["a folder", () => os.tmpdir(), /cannot be read/],
    ["a file without captions", () => scrap("no times in here"), /No words with a time/],
    ["an empty file", () => scrap(""), /empty/],
  ])("%s: code 2, with what was found", async (_, file, message) => {
    const { code, out, err } = await run(file());
    expect(code).toBe(2);
    expect(out).toBe("");
    expect(err).toMatch(message);
  });
  test("a bad line is told of, and the rest is drafted", async () => {
    const { code, out, err } = await run(
      scrap("WEBVTT\n\n00:01 --> x\nlost\n\n00:02.000 --> 00:04.000\nit's 12 thou of backlash\n"),
    );
    expect(code).toBe(0);
    expect(err).toMatch(/line 3/);
    expect(JSON.parse(out).marks).toHaveLength(1);
  });
});

function scrap(text: string): string {
  const file = path.join(fs.mkdtempSync(path.join(os.tmpdir(), "captions-")), "captions.vtt");
  fs.writeFileSync(file, text);
  return file;
}
