import { execFileSync } from "node:child_process";
import { linkSync, mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from "node:fs";
import { open } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, describe, expect, test } from "vitest";
import { listFolder, MediaError, openInside } from "#lib/media/index.ts";

const posix = process.platform !== "win32";
const base = mkdtempSync(join(tmpdir(), "place-"));
const root = join(base, "films");
mkdirSync(join(root, "day 1", "camera"), { recursive: true });
mkdirSync(join(base, "films-private"));
writeFileSync(join(root, "clip.mp4"), "clip");
writeFileSync(join(root, "day 1", "camera", "Größe „5“.MOV"), "inside");
writeFileSync(join(base, "films-private", "secret.mp4"), "secret");
writeFileSync(join(base, "outside.mp4"), "outside");
symlinkSync(join(base, "outside.mp4"), join(root, "link-out.mp4"));
symlinkSync(join(root, "clip.mp4"), join(root, "link-in.mp4"));
symlinkSync(join(base, "films-private"), join(root, "folder-out"), "junction");
symlinkSync(join(root, "day 1"), join(root, "folder-in"), "junction");
symlinkSync(join(root, "day 1"), join(root, "day 1", "round"), "junction");
afterAll(() => rmSync(base, { recursive: true }));

async function contentOf(path: string, from = root): Promise<string> {
  const { handle } = await openInside(from, path);
  try {
    return await handle.readFile("utf8");
  } finally {
    await handle.close();
  }
}

async function refusal(path: string, from = root): Promise<MediaError> {
  const error = await openInside(from, path).then(
    ({ handle }) => handle.close().then(() => null),
    (error) => error,
  );
  expect(error).toBeInstanceOf(MediaError);
  return error;
}

describe("opening a file where it lies", () => {
  test("in the folder, and in a folder of it, with any name", async () => {
    expect(await contentOf("clip.mp4")).toBe("clip");
    expect(await contentOf("day 1/camera/Größe „5“.MOV")).toBe("inside");
  });

  test("through a folder link that stays inside", async () => {
    expect(await contentOf("folder-in/camera/Größe „5“.MOV")).toBe("inside");
  });

  test("the root itself may be reached by a link", async () => {
    symlinkSync(root, join(base, "root-link"), "junction");
    expect(await contentOf("clip.mp4", join(base, "root-link"))).toBe("clip");
  });

  test("says its size, and that it has a second name", async () => {
    linkSync(join(root, "clip.mp4"), join(base, "second-name.mp4"));
    const { handle, size, names } = await openInside(root, "clip.mp4");
    await handle.close();
    expect([size, names]).toEqual([4, 2]);
  });

  test("never changes the file: it cannot be written through", async () => {
    const { handle } = await openInside(root, "clip.mp4");
    await expect(handle.write("x")).rejects.toThrow();
    await handle.close();
  });
});

describe("what is refused", () => {
  test.each([
    ["a step up", "../outside.mp4"],
    ["a step up further down", "day 1/../../outside.mp4"],
    ["a step up that comes back", "../films/clip.mp4"],
    ["only a step up", ".."],
    ["a path from the top", "/etc/passwd"],
    ["a path from the top, of the file itself", join(root, "clip.mp4")],
    ["NUL", "clip.mp4\0.txt"],
    ["an empty path", ""],
    ["an empty step", "day 1//camera"],
    ["a dot", "./clip.mp4"],
    ["a slash at the end", "clip.mp4/"],
  ])("%s", async (_what, path) => {
    expect((await refusal(path)).kind).toBe("bad-path");
  });

  test.each([
    ["a link to a file outside", "link-out.mp4"],
    ["a link to a file inside", "link-in.mp4"],
    ["a folder that is a link to outside, a sibling with the same beginning", "folder-out/secret.mp4"],
  ])("%s", async (_what, path) => {
    expect((await refusal(path)).kind).toBe("outside");
  });

  test("a folder, a file that is not there, a step through a file, a root that is not there", async () => {
    expect((await refusal("day 1")).kind).toBe("not-a-file");
    expect((await refusal("gone.mp4")).kind).toBe("file-missing");
    expect((await refusal("clip.mp4/x")).kind).toBe("file-missing");
    expect((await refusal("clip.mp4", join(base, "gone"))).kind).toBe("root-missing");
  });

  test.runIf(posix)("a pipe, without waiting for somebody to write", async () => {
    execFileSync("mkfifo", [join(root, "pipe.mp4")]);
    expect((await refusal("pipe.mp4")).kind).toBe("not-a-file");
    rmSync(join(root, "pipe.mp4"));
  });

  test.runIf(posix)("a device below a root that holds one", async () => {
    expect((await refusal("null", "/dev")).kind).toBe("not-a-file");
  });

  test("each says what was found, what was expected and what to do", async () => {
    const error = await refusal("../\u202egp4.\nmp4");
    for (const words of [error.found, error.expected, error.todo]) expect(words).toMatch(/^[A-Z].*\.$/);
    expect(error.message).toContain("\\u{202e}");
    expect(error.message).not.toMatch(/[\n\u202e]/);
  });
});

describe("listing a folder", () => {
  test("recordings by their endings, whatever their case, with / in every path; links are not followed", async () => {
    writeFileSync(join(root, "notes.txt"), "x");
    writeFileSync(join(root, "._clip.mp4"), "x");
    const listing = await listFolder(root);
    expect(listing.files.map((file) => file.path)).toEqual(["clip.mp4", "day 1/camera/Größe „5“.MOV"]);
    expect(listing.files.map((file) => file.size)).toEqual([4, 6]);
    expect([listing.ignored, listing.links, listing.stoppedAt]).toEqual([2, 5, null]);
  });

  test("what is listed can be opened", async () => {
    for (const { path, size } of (await listFolder(root)).files)
      expect((await contentOf(path)).length).toBe(size);
  });

  test.each(["mov", "mp4", "m4v", "mkv", "webm", "avi", "mts", "ts", "mpg", "3gp"])(
    "a .%s may be a recording",
    async (ending) => {
      const folder = mkdtempSync(join(base, "ending-"));
      writeFileSync(join(folder, `a.${ending}`), "");
      writeFileSync(join(folder, `${ending}`), "");
      expect((await listFolder(folder)).files.map((file) => file.path)).toEqual([`a.${ending}`]);
    },
  );

  test.runIf(posix)("hostile names are only names", async () => {
    const folder = mkdtempSync(join(base, "names-"));
    const names = [
      "-rf.mp4",
      "a\nb.mp4",
      "“'$(x)`;.mp4",
      "\u202e4pm.mp4",
      "back\\slash.mp4",
      `${"ä".repeat(125)}.mp4`,
    ];
    for (const name of names) writeFileSync(join(folder, name), "x");
    mkdirSync(join(folder, "folder.mp4"));
    const listing = await listFolder(folder);
    expect(listing.files.map((file) => file.path)).toEqual([...names].sort());
    for (const name of names) expect(await contentOf(name, folder)).toBe("x");
  });

  test.runIf(process.platform === "linux")("a name that is no text is said to be so", async () => {
    const folder = mkdtempSync(join(base, "bytes-"));
    writeFileSync(
      Buffer.concat([Buffer.from(`${folder}/a`), Buffer.from([0xff, 0xfe]), Buffer.from(".mp4")]),
      "x",
    );
    const listing = await listFolder(folder);
    expect(listing.files).toEqual([]);
    expect(listing.unreadable.map((place) => place.why)).toEqual(["its name is not valid text; rename it"]);
  });

  test("limits end the walk and are said", async () => {
    const folder = mkdtempSync(join(base, "deep-"));
    mkdirSync(join(folder, "1/2/3"), { recursive: true });
    for (const path of ["a.mp4", "1/b.mp4", "1/2/c.mp4", "1/2/3/d.mp4"])
      writeFileSync(join(folder, path), "");
    const shallow = await listFolder(folder, { maxDepth: 2 });
    expect([shallow.files.map((file) => file.path), shallow.stoppedAt]).toEqual([
      ["1/2/c.mp4", "1/b.mp4", "a.mp4"],
      "depth",
    ]);
    const few = await listFolder(folder, { maxEntries: 3 });
    expect([few.files.length <= 3, few.stoppedAt]).toEqual([true, "entries"]);
    expect((await listFolder(folder, { maxEntries: 7 })).stoppedAt).toBeNull();
  });

  test("can be stopped", async () => {
    await expect(listFolder(root, { signal: AbortSignal.abort(new Error("stop")) })).rejects.toThrow("stop");
  });

  test("a folder that is not there, and a file that is no folder", async () => {
    await expect(listFolder(join(base, "gone"))).rejects.toMatchObject({ kind: "root-missing" });
    await expect(listFolder(join(root, "clip.mp4"))).rejects.toMatchObject({ kind: "root-missing" });
  });

  test("nothing is opened that is not asked for: a file may be taken away at once", async () => {
    const folder = mkdtempSync(join(base, "gone-"));
    const handle = await open(join(folder, "a.mp4"), "w");
    await handle.close();
    await listFolder(folder);
    rmSync(folder, { recursive: true });
    await expect(listFolder(folder)).rejects.toBeInstanceOf(MediaError);
  });
});
