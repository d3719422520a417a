import fs from "node:fs";
import path from "node:path";
import { describe, expect, test } from "vitest";
import { type Draft, draft, readCaptionText } from "#lib/captions/index.ts";

/**
 * Ways to say a thing. Each was written down before the rules had seen it, in the manner of people at a bench, and
 * stays, whether it is found or not: a change of the rules is judged by how many are. Common practice, no source.
 */
const linesOf = (name: string) =>
  fs
    .readFileSync(path.join(import.meta.dirname, "ways", `${name}.txt`), "utf8")
    .trim()
    .split("\n");

/** What is proposed from a sentence that stands among others, with what was said just before it. */
function proposed(said: string, english: "GB" | "US", before = ""): Draft[] {
  const texts = ["Here we go then.", before, said, "The next thing."];
  const cues = texts
    .map((text, i) => `00:0${i}:00.000 --> 00:0${i}:20.000\n${text}`)
    .filter((_, i) => texts[i]);
  const { cues: read } = readCaptionText(`WEBVTT\n\n${cues.join("\n\n")}`);
  return draft(read, { english }).filter((one) => one.start === 120);
}

describe.each(["caution", "gotcha", "deferred", "part"])("%s", (kind) => {
  const lines = linesOf(kind);
  const drafted = (sign: string) =>
    lines
      .filter((line) => line.startsWith(sign))
      .map((line) => ({ line, found: proposed(line.slice(2), "GB").some((one) => one.kind === kind) }));
  test("nine in ten ways to say it are found", () => {
    const all = drafted("+");
    const missed = all.filter((one) => !one.found).map((one) => one.line);
    expect(missed.length, missed.join("\n")).toBeLessThanOrEqual(all.length / 10);
  });
  test("one in fifteen of what is none is proposed, at most", () => {
    const all = drafted("-");
    const wrong = all.filter((one) => one.found).map((one) => one.line);
    expect(wrong.length, wrong.join("\n")).toBeLessThanOrEqual(all.length / 15);
  });
});

describe("measurement", () => {
  test("nineteen in twenty sentences give the values they state, and no others", () => {
    const all = linesOf("measurement").map((line) => {
      const [english, said = "", values = "", before = ""] = line.split("|").map((part) => part.trim());
      const got = proposed(said, english === "US" ? "US" : "GB", before)
        .flatMap((one) => (one.kind === "measurement" ? [one.fields.typed] : []))
        .join(";");
      return { line, got, right: got === values };
    });
    const wrong = all.filter((one) => !one.right).map(({ line, got }) => `${line} => ${got}`);
    expect(wrong.length, wrong.join("\n")).toBeLessThanOrEqual(all.length / 20);
  });
});
