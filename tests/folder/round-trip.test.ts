import { execFileSync } from "node:child_process";
import fs from "node:fs";
import os from "node:os";
import path from "node:path";
import { afterAll, describe, expect, test } from "vitest";
import { newCut } from "#lib/build/index.ts";
import { check } from "#lib/check/index.ts";
import { bringBuild, sendBuild } from "#lib/cli/bring-build.ts";
import { FolderError, readFolder, readInside } from "#lib/folder/index.ts";
import { compile, stepsOf } from "#lib/procedure/index.ts";
import { toMarkdown } from "#lib/publish/index.ts";
import { apply, loadBuild } from "#lib/store/index.ts";
import { readPdf } from "../pdf.ts";
import { commandOf, freshWorkshop } from "../store/fresh.ts";

const demo = path.resolve("content-demo/ostrey-pump");
const scratch = fs.mkdtempSync(path.join(os.tmpdir(), "folders-"));
afterAll(() => fs.rmSync(scratch, { recursive: true, force: true }));

async function markdownOf(document: NonNullable<Awaited<ReturnType<typeof loadBuild>>>): Promise<string> {
  const checked = check(compile(document), document);
  const output = await toMarkdown(checked, { stills: async () => null, printedOn: "2026-05-03" });
  return Buffer.from(output.files[0]?.bytes ?? []).toString("utf8");
}

describe("a build folder", () => {
  test("written and brought into an empty workshop compiles to the same procedure, byte for byte", async () => {
    const first = freshWorkshop();
    const second = freshWorkshop();
    await bringBuild(first, demo, null);
    const id = (await readFolder(demo)).document.build.id;
    const folder = path.join(scratch, "out");
    await sendBuild(first, id, folder, true);
    await bringBuild(second, folder, null);

    const [one, two] = [await loadBuild(first.client, id), await loadBuild(second.client, id)];
    if (!one || !two) throw new Error("a build is not there");
    expect(stepsOf(compile(one)).length).toBeGreaterThan(10);
    const markdown = await markdownOf(one);
    expect(await markdownOf(two)).toBe(markdown);
    // And the folder itself says the same, without any database.
    expect(await markdownOf((await readFolder(folder)).document)).toBe(markdown);
    expect(await markdownOf((await readFolder(demo)).document)).toBe(markdown);
    // The film came along, whole.
    const { document, files } = await readFolder(folder);
    const film = files.get(document.recordings[0]?.id ?? "") ?? "";
    const original = (await readFolder(demo)).files.get(document.recordings[0]?.id ?? "") ?? "";
    const [sent, kept] = [await readInside(folder, film, 1e9), await readInside(demo, original, 1e9)];
    expect(sent.equals(kept)).toBe(true);
  });

  test("carries the film's edit list as a file of its own, to the letter, and its reels follow a second copy", async () => {
    const workshop = freshWorkshop();
    await bringBuild(workshop, demo, null);
    const { build, recordings } = (await readFolder(demo)).document;
    const recordingId = recordings[0]?.id ?? "";
    const text = "001 CAM V C 00:00:02:00 00:00:42:00 01:00:00:00 01:00:40:00\r\n";
    const reels = [{ reel: "CAM", recordingId, startsAt: "" }];
    const row = newCut({
      id: "cut-1",
      buildId: build.id,
      form: "cmx3600",
      name: "The film",
      rate: "25",
      text,
      reels,
    });
    const { rev: _, ...set } = row;
    await apply(workshop.client, commandOf([{ table: "cut", id: row.id, rev: 0, set }], "test", build.id));
    const folder = path.join(scratch, "with-cut");
    await sendBuild(workshop, build.id, folder, false);
    expect(fs.readFileSync(path.join(folder, "cuts", "The film.edl"), "utf8")).toBe(text);
    expect(fs.readFileSync(path.join(folder, "build.json"), "utf8")).not.toContain("00:00:42:00");
    const read = await readFolder(folder);
    expect(read.document.cuts).toMatchObject([{ id: "cut-1", text, reels }]);

    const both = await bringBuild(workshop, folder, "keep both");
    if (both.kind !== "imported") throw new Error("it was not brought in");
    const [copy] = both.document.cuts;
    expect(copy?.reels[0]?.recordingId).toBe(both.document.recordings[0]?.id);
    expect(copy?.reels[0]?.recordingId).not.toBe(recordingId);
    expect(compile(both.document).film?.segments).toHaveLength(1);
  });

  test("where the build is there already it is asked what to do, and nothing is merged", async () => {
    const workshop = freshWorkshop();
    await bringBuild(workshop, demo, null);
    expect(await bringBuild(workshop, demo, null)).toMatchObject({ kind: "exists" });
    const both = await bringBuild(workshop, demo, "keep both");
    if (both.kind !== "imported") throw new Error("it was not brought in");
    const original = await readFolder(demo);
    expect(both.document.build.id).not.toBe(original.document.build.id);
    expect(await workshop.client.build.count()).toBe(2);
    // The second copy stands on its own: the same steps, under other ids.
    const titles = (document: typeof both.document) => stepsOf(compile(document)).map((step) => step.title);
    expect(titles(both.document)).toEqual(titles(original.document));
    const ids = new Set(original.document.marks.map((mark) => mark.id));
    expect(both.document.marks.filter((mark) => ids.has(mark.id))).toEqual([]);
    // Replacing strikes out what was added since, and keeps it in the history.
    const added = { ...original.document.marks[0], id: "added-since", rev: 1 };
    await workshop.client.mark.create({
      data: { ...withoutFields(added), fieldsJson: JSON.stringify(added.fields) },
    });
    await bringBuild(workshop, demo, "replace");
    const now = await loadBuild(workshop.client, original.document.build.id);
    expect(now?.marks.find((mark) => mark.id === "added-since")?.gone).not.toBeNull();
  });

  test("hostile paths are refused, a damaged picture is said to be damaged, and the rest is read", async () => {
    const folder = path.join(scratch, "hostile");
    fs.cpSync(demo, folder, { recursive: true });
    const json = JSON.parse(fs.readFileSync(path.join(folder, "build.json"), "utf8"));
    const [still] = json.stills;
    fs.appendFileSync(path.join(folder, json.files[still.id]), "x");
    fs.writeFileSync(path.join(folder, "build.json"), JSON.stringify(json));
    const read = await readFolder(folder);
    expect(read.missing.map((one) => one.id)).toEqual([still.id]);
    expect(read.document.stills.find((one) => one.id === still.id)?.sha256).toBe("");

    for (const hostile of ["../../etc/passwd", "/etc/passwd", "C:\\secret", "a/../../b"]) {
      json.files[still.id] = hostile;
      fs.writeFileSync(path.join(folder, "build.json"), JSON.stringify(json));
      await expect(readFolder(folder)).rejects.toThrow(/inside the build folder/);
    }
    fs.writeFileSync(path.join(folder, "build.json"), '{"form": "witness-mark-build", ');
    await expect(readFolder(folder)).rejects.toThrow(FolderError);
    await expect(readFolder(scratch)).rejects.toThrow(/no readable build.json/);
  });
});

function withoutFields<T extends { fields?: unknown }>({ fields: _, ...rest }: T) {
  return rest as Omit<Required<T>, "fields">;
}

describe("the command line", () => {
  const witness = (...args: string[]) =>
    execFileSync(process.execPath, ["lib/cli/witness.mjs", ...args], { encoding: "utf8", stdio: "pipe" });
  const fails = (...args: string[]) => {
    try {
      return { status: 0, said: witness(...args) };
    } catch (error) {
      const { status, stderr } = error as { status: number; stderr: string };
      return { status, said: stderr };
    }
  };

  test("compiles the demonstration: exit 0, tagged, every figure described", async () => {
    const out = path.join(scratch, "compiled");
    const said = witness("compile", demo, "--out", out, "--date", "2026-05-03");
    expect(said).toContain("nothing open");
    for (const name of ["procedure.pdf", "procedure.html", "procedure.md", "parts.csv", "findings.json"]) {
      expect(fs.existsSync(path.join(out, name)), name).toBe(true);
    }
    const pdf = await readPdf(fs.readFileSync(path.join(out, "procedure.pdf")));
    expect(pdf.tagged).toBe(true);
    const figures = pdf.nodes.filter((node) => node.role === "Figure");
    expect(figures.length).toBeGreaterThan(10);
    for (const figure of figures) expect(figure.alt ?? "").not.toBe("");
  });

  test("exits 2 for what it cannot read, saying where, and 3 for a wrong that nobody answered", () => {
    expect(fails("compile", path.join(scratch, "nowhere"), "--out", scratch)).toMatchObject({ status: 2 });
    expect(fails("compile", demo).said).toContain("--out DIR");
    const folder = path.join(scratch, "open");
    fs.cpSync(demo, folder, { recursive: true });
    const json = JSON.parse(fs.readFileSync(path.join(folder, "build.json"), "utf8"));
    for (const mark of json.marks) if (mark.fields.closes) mark.fields.closes = [];
    fs.writeFileSync(path.join(folder, "build.json"), JSON.stringify(json));
    expect(fails("compile", folder, "--out", path.join(scratch, "open-out"))).toMatchObject({ status: 3 });
    json.marks[0].fields.asFound = 12;
    json.marks[0].kind = "measurement";
    fs.writeFileSync(path.join(folder, "build.json"), JSON.stringify(json));
    const refused = fails("compile", folder, "--out", path.join(scratch, "open-out"));
    expect(refused.status).toBe(2);
    expect(refused.said).toContain("marks.0");
  });
});
