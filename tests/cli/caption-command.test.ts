import fs from "node:fs";
import os from "node:os";
import path from "node:path";
import { afterAll, describe, expect, test } from "vitest";
import { type CaptionProgress, type CaptionWork, captionsFromSound } from "#lib/cli/caption-command.ts";
import { fillIn, splitCommand } from "#lib/cli/split-command.ts";

const folder = fs.mkdtempSync(path.join(os.tmpdir(), "a folder with 'spaces' "));
afterAll(() => fs.rmSync(folder, { recursive: true, force: true }));
const film = path.join(folder, "film $(touch bad).mp4");
fs.writeFileSync(film, "not read here");

/** A program of the restorer's own, as a script; gives the command that runs it with the given arguments. */
function program(name: string, script: string, args = "{sound} {captions}"): string {
  const file = path.join(folder, name);
  fs.writeFileSync(file, script);
  return `"${process.execPath}" "${file}" ${args}`;
}

const cues = "WEBVTT\\n\\n00:01.000 --> 00:02.000\\nIt has 18 thou of backlash.\\n";

function work(command: string, given: Partial<CaptionWork> = {}) {
  const told: CaptionProgress[] = [];
  const all: CaptionWork = {
    command,
    film,
    duration: 10,
    ffmpeg: null,
    within: folder,
    limit: 60_000,
    signal: new AbortController().signal,
    onProgress: (progress) => told.push(progress),
    ...given,
  };
  return { told, text: captionsFromSound(all) };
}

describe("a command", () => {
  test("is split at spaces and not at those inside quotation marks; nothing else means anything", () => {
    expect(splitCommand(`"C:\\my tools\\words.exe" -m 'big one' --out={captions}  {sound}`)).toEqual([
      "C:\\my tools\\words.exe",
      "-m",
      "big one",
      "--out={captions}",
      "{sound}",
    ]);
    expect(splitCommand("a; rm -rf $HOME | b > c `d`")).toEqual([
      "a;",
      "rm",
      "-rf",
      "$HOME",
      "|",
      "b",
      ">",
      "c",
      "`d`",
    ]);
    expect(splitCommand("")).toEqual([]);
  });
  test("takes a file of any name as one argument", () => {
    const sound = `a b"; rm -rf ~ {captions} $(x).wav`;
    expect(fillIn(["-i={sound}", "{captions}", "{other}"], { sound, captions: "c" })).toEqual([
      `-i=${sound}`,
      "c",
      "{other}",
    ]);
  });
});

describe("captions from sound", () => {
  test("come from the file that the command writes, or from what it prints", async () => {
    const writes = program(
      "writes.mjs",
      `import fs from "node:fs"; fs.writeFileSync(process.argv[3], "${cues}");`,
    );
    expect(await work(writes).text).toContain("18 thou");
    const prints = program("prints.mjs", `process.stdout.write("${cues}");`, "{sound}");
    expect(await work(prints).text).toContain("18 thou");
  });
  test("are told of while they are made: what the command says, and how far it is where it says so", async () => {
    const script = `process.stderr.write("loading\\n\\u001b[32m 42 % done\\r"); process.stdout.write("${cues}");`;
    const { told, text } = work(program("tells.mjs", script, "{sound}"));
    await text;
    expect(told.at(-1)).toEqual({ doing: "words", fraction: 0.42, line: "42 % done" });
  });
  test("get the film's name to the letter, and no shell sees it", async () => {
    const script = `process.stdout.write("WEBVTT\\n\\n00:01.000 --> 00:02.000\\n" + process.argv[2]);`;
    expect(await work(program("name.mjs", script, "{sound}")).text).toContain("$(touch bad)");
    expect(fs.existsSync("bad")).toBe(false);
  });
  const wrong: [string, () => string, RegExp][] = [
    ["has no place for the sound", () => "words {captions}", /where the sound file goes/],
    ["is not there", () => "no-such-program-here {sound}", /could not be run/],
    [
      "fails",
      () => program("fails.mjs", `console.error("no model"); process.exit(3);`),
      /ended with 3: no model/,
    ],
    ["gives no captions", () => program("none.mjs", `console.log("well");`, "{sound}"), /gave no captions/],
  ];
  test.each(wrong)("a command that %s is refused in plain words", async (_, command, words) => {
    await expect(work(command()).text).rejects.toThrow(words);
  });
  test("end when they are stopped and when they take too long, with what they started", async () => {
    const beat = path.join(folder, "beat");
    const child = `setInterval(() => require("fs").appendFileSync(process.argv[1], "."), 20)`;
    const script = `import { spawn } from "node:child_process";
      spawn(process.execPath, ["-e", ${JSON.stringify(child)}, ${JSON.stringify(beat)}], { stdio: "ignore" });
      setInterval(() => console.error("working"), 20);`;
    const command = program("long.mjs", script);
    const stop = new AbortController();
    const begun = () => fs.existsSync(beat) && stop.abort(new Error("stopped"));
    const stopped = work(command, { signal: stop.signal, onProgress: begun }).text;
    await expect(stopped).rejects.toThrow("stopped");
    const size = fs.statSync(beat).size;
    await new Promise((resolve) => setTimeout(resolve, 300));
    expect(fs.statSync(beat).size, "what the command started goes on").toBe(size);
    await expect(work(command, { limit: 200 }).text).rejects.toThrow(/was stopped/);
  });
  test("leave nothing of their work behind", () => {
    expect(fs.readdirSync(folder).filter((name) => name.startsWith("captions-"))).toEqual([]);
  });
});
