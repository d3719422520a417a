import fs from "node:fs";
import os from "node:os";
import path from "node:path";
import { afterAll, describe, expect, test } from "vitest";
import { compileCommand } from "#lib/cli/commands/compile.ts";

const demo = path.resolve(import.meta.dirname, "../../content-demo/ostrey-pump");
const folder = fs.mkdtempSync(path.join(os.tmpdir(), "cut-"));
afterAll(() => fs.rmSync(folder, { recursive: true, force: true }));

const list = [
  "001 AX V C 00:00:02:00 00:00:42:00 01:00:00:00 01:00:40:00",
  "* FROM CLIP NAME: water-pump.mp4",
  "002 AX V C 00:00:44:00 00:01:34:00 01:00:40:00 01:01:30:00",
  "* FROM CLIP NAME: water-pump.mp4",
].join("\n");

function write(name: string, text: string): string {
  const file = path.join(folder, name);
  fs.writeFileSync(file, text);
  return file;
}

describe("witness compile with the film's edit list", () => {
  test("writes every output, with links into the film", async () => {
    const cut = write("pump.edl", list);
    const out = path.join(folder, "out");
    const film = "https://video.example.org/pump";
    const args = [demo, "--out", out, "--date", "2026-05-03", "--cut", cut, "--rate", "25", "--film", film];
    expect(await compileCommand.run(args)).toBe(0);
    const names = fs.readdirSync(out);
    for (const name of [
      "procedure.pdf",
      "procedure.html",
      "procedure.md",
      "parts.csv",
      "measurements.csv",
      "howto.jsonld",
      "marks.jsonld",
      "marks.otio",
      "chapters.txt",
      "chapters.vtt",
      "captions.vtt",
      "findings.json",
    ])
      expect(names).toContain(name);
    expect(fs.readFileSync(path.join(out, "procedure.html"), "utf8")).toMatch(
      /href="https:\/\/video\.example\.org\/pump#t=\d+"/,
    );
    expect(fs.readFileSync(path.join(out, "chapters.txt"), "utf8")).toMatch(/^0:00 /);
  }, 60_000);

  test("asks for the rate of a CMX3600 list, and refuses one that shows nothing, saying where", async () => {
    const out = path.join(folder, "none");
    const cut = write("pump.edl", list);
    await expect(compileCommand.run([demo, "--out", out, "--cut", cut])).rejects.toThrow(
      /--rate R was expected/,
    );
    const bad = write(
      "bad.edl",
      list.replaceAll("01:00:40:00", "01:00:40:30").replaceAll("01:00:00:00", "x"),
    );
    await expect(compileCommand.run([demo, "--out", out, "--cut", bad, "--rate", "25"])).rejects.toThrow(
      /line \d/,
    );
    const otio = write("empty.otio", '{"OTIO_SCHEMA":"Timeline.1"}');
    await expect(compileCommand.run([demo, "--out", out, "--cut", otio])).rejects.toThrow(
      /tracks: No picture/,
    );
    await expect(compileCommand.run([demo, "--out", out, "--rate", "25"])).rejects.toThrow(/--cut FILE/);
    expect(fs.existsSync(out)).toBe(false);
  });
});
