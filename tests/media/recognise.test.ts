import {
  appendFileSync,
  mkdirSync,
  mkdtempSync,
  readFileSync,
  rmSync,
  statSync,
  truncateSync,
  utimesSync,
  writeFileSync,
} from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import fc from "fast-check";
import { afterAll, describe, expect, test } from "vitest";
import {
  beginAlike,
  type Disk,
  fingerprint,
  hashFile,
  type KnownFile,
  type ListedFile,
  MediaError,
  openInside,
  probe,
  type Recognised,
  recognise,
  whyAway,
} from "#lib/media/index.ts";

const base = mkdtempSync(join(tmpdir(), "known-"));
afterAll(() => rmSync(base, { recursive: true }));

/** A film in a folder of the mind: what it holds is one letter. */
interface Film {
  path: string;
  holds: string;
  size: number;
  mtimeMs: number;
}

/** What recognising gives when the films that were `before` now are `after`. */
async function recogniseFilms(before: readonly Film[], after: readonly Film[]): Promise<Recognised[]> {
  const print = (film: Film) => (film.size === 0 ? "" : `${film.holds}.${film.holds}`);
  const known: KnownFile[] = before.map((film, index) => ({
    placeId: `place-${index}`,
    recordingId: `recording-${index}`,
    rootId: "root",
    path: film.path,
    size: film.size,
    modifiedAt: film.mtimeMs,
    fingerprint: print(film),
    bare: false,
  }));
  const at = (path: string) => after.find((film) => film.path === path);
  const disk: Disk = {
    fingerprint: async (file) => print(at(file.path) as Film),
    isThere: async (place) => {
      const film = at(place.path);
      return film !== undefined && print(film) === place.fingerprint && film.size === place.size;
    },
    isSame: async () => false,
  };
  return recognise(after, known, "root", disk);
}

const letters = "abcdefgh".split("");
/** Films of one letter are copies of each other, times and all; of two letters they differ in their times at least. */
const filmOf = (path: string, letter: string): Film => {
  const number = letters.indexOf(letter);
  return {
    path,
    holds: letter,
    size: letter === "a" ? 0 : 1000 * (1 + (number % 3)),
    mtimeMs: 1e12 + number * 60_000,
  };
};

describe("what is known again", () => {
  const folder = fc
    .uniqueArray(
      fc.tuple(fc.constantFrom("1.mp4", "2.mp4", "3.mp4", "x/1.mp4", "x/4.mp4"), fc.constantFrom(...letters)),
      {
        selector: ([path]) => path,
        maxLength: 5,
      },
    )
    .map((films) => films.map(([path, letter]) => filmOf(path, letter)));

  test("whatever is renamed, moved, swapped, copied or deleted: no recording is given another film, or two", async () => {
    await fc.assert(
      fc.asyncProperty(folder, folder, async (before, after) => {
        const all = await recogniseFilms(before, after);
        expect(all.map((one) => one.file.path).sort()).toEqual(after.map((film) => film.path).sort());
        const taken = all.flatMap((one) => ("place" in one ? [one.place.placeId] : []));
        expect(new Set(taken).size).toBe(taken.length);
        for (const one of all) {
          if (!("place" in one)) continue;
          const was = before[Number(one.place.placeId.split("-")[1])] as Film;
          const now = after.find((film) => film.path === one.file.path) as Film;
          // An empty film is known by its path alone, and what has filled it is looked at anew.
          if (now.size === 0 || was.size === 0) expect(now.path).toBe(was.path);
          const filled = was.size === 0 && one.kind === "known" && one.renew === "bytes";
          if (!filled) expect(now.holds).toBe(was.holds);
        }
      }),
      { numRuns: 1000 },
    );
  });

  test("a film that is nowhere twice is always found where it now lies", async () => {
    await fc.assert(
      fc.asyncProperty(folder, folder, async (before, after) => {
        const once = (films: readonly Film[], letter: string) =>
          films.filter((film) => film.holds === letter).length === 1;
        const all = await recogniseFilms(before, after);
        for (const film of after) {
          if (film.size === 0 || !once(before, film.holds) || !once(after, film.holds)) continue;
          expect(all.find((one) => one.file.path === film.path)?.kind).not.toBe("new");
        }
      }),
      { numRuns: 1000 },
    );
  });

  const kindOf = async (before: Film[], after: Film[]) =>
    (await recogniseFilms(before, after)).map((one) => [
      one.file.path,
      one.kind,
      "place" in one ? one.place.path : "",
    ]);

  test("two that have changed names are told apart", async () => {
    expect(
      await kindOf(
        [filmOf("1.mp4", "b"), filmOf("2.mp4", "e")],
        [filmOf("1.mp4", "e"), filmOf("2.mp4", "b")],
      ),
    ).toEqual([
      ["1.mp4", "moved", "2.mp4"],
      ["2.mp4", "moved", "1.mp4"],
    ]);
  });

  test("of two equal copies that have both moved each is known by its name; renamed, neither is taken for either", async () => {
    const copies = [filmOf("1.mp4", "b"), filmOf("2.mp4", "b")];
    expect(await kindOf(copies, [filmOf("x/2.mp4", "b"), filmOf("x/1.mp4", "b")])).toEqual([
      ["x/2.mp4", "moved", "2.mp4"],
      ["x/1.mp4", "moved", "1.mp4"],
    ]);
    const renamed = await recogniseFilms(copies, [filmOf("7.mp4", "b"), filmOf("8.mp4", "b")]);
    expect(renamed.map((one) => one.kind)).toEqual(["new", "new"]);
  });

  test("a copy beside a film that is still there is a film of its own until it has been read whole", async () => {
    const [, copy] = await recogniseFilms(
      [filmOf("1.mp4", "b")],
      [filmOf("1.mp4", "b"), filmOf("2.mp4", "b")],
    );
    expect(copy).toMatchObject({ kind: "new" });
  });

  test("another time of change alone is asked about: same bytes at the same path are the same film", async () => {
    const touched = { ...filmOf("1.mp4", "b"), mtimeMs: 5 };
    expect(await recogniseFilms([filmOf("1.mp4", "b")], [touched])).toMatchObject([
      { kind: "known", renew: "time" },
    ]);
    // Elsewhere, with another time, it may be a film of its own.
    expect(await recogniseFilms([filmOf("1.mp4", "b")], [{ ...touched, path: "9.mp4" }])).toMatchObject([
      { kind: "new" },
    ]);
  });
});

describe("what a file is known again by", () => {
  const write = (name: string, bytes: Buffer) => {
    writeFileSync(join(base, name), bytes);
    return fingerprint(base, name);
  };

  test("its first and last megabyte, and nothing of the middle", async () => {
    const bytes = Buffer.alloc(3_500_000, 7);
    const whole = await write("whole.mp4", bytes);
    expect(whole).toMatch(/^[0-9a-f]{64}\.[0-9a-f]{64}$/);
    const changed = (at: number) => {
      const other = Buffer.from(bytes);
      other[at] = 8;
      return write("other.mp4", other);
    };
    expect(await changed(1_048_576)).toBe(whole);
    expect(await changed(3_500_000 - 1_048_577)).toBe(whole);
    for (const at of [0, 1_048_575, 3_500_000 - 1_048_576, 3_499_999])
      expect(await changed(at)).not.toBe(whole);
    expect(beginAlike(whole, await changed(3_499_999))).toBe(true);
    expect(beginAlike(whole, await changed(0))).toBe(false);
  });

  test("FIPS 180-4: a short file's ends are both the hash of its published example", async () => {
    // "abc", from the examples that NIST publishes with the standard.
    const abc = "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad";
    expect(await write("abc.mp4", Buffer.from("abc"))).toBe(`${abc}.${abc}`);
    expect((await hashFile(base, "abc.mp4")).sha256).toBe(abc);
  });

  test("an empty file by nothing", async () => {
    const empty = await write("empty.mp4", Buffer.alloc(0));
    expect(empty).toBe("");
    expect(beginAlike(empty, empty)).toBe(false);
  });
});

describe("reading a film whole", () => {
  test("a file that grows meanwhile is not given a hash", async () => {
    writeFileSync(join(base, "growing.mp4"), Buffer.alloc(3_000_000));
    const onBytes = () => appendFileSync(join(base, "growing.mp4"), "more");
    const error = await hashFile(base, "growing.mp4", { onBytes }).catch((error) => error);
    expect(error).toBeInstanceOf(MediaError);
    expect(error).toMatchObject({ kind: "changed-meanwhile" });
  });

  test("it can be given up between two pieces", async () => {
    writeFileSync(join(base, "long.mp4"), "");
    truncateSync(join(base, "long.mp4"), 50_000_000);
    const stop = new AbortController();
    let pieces = 0;
    const onBytes = () => ++pieces === 2 && stop.abort(new Error("enough"));
    await expect(hashFile(base, "long.mp4", { signal: stop.signal, onBytes })).rejects.toThrow("enough");
    expect(pieces).toBe(2);
  });

  test("no reading of a film changes its time of last access, where the system can leave that out", async () => {
    const folder = join(base, "times");
    mkdirSync(folder);
    const film = readFileSync(new URL("../fixtures/video/data/constant-25.mp4", import.meta.url));
    for (const name of ["film.mp4", "control.mp4"]) writeFileSync(join(folder, name), film);
    const past = { atime: new Date("2001-02-03T04:05:06Z"), mtime: new Date("2002-03-04T05:06:07Z") };
    for (const name of ["film.mp4", "control.mp4"]) utimesSync(join(folder, name), past.atime, past.mtime);
    readFileSync(join(folder, "control.mp4"));
    if (statSync(join(folder, "control.mp4")).atimeMs === past.atime.getTime()) {
      console.log("not tried: this mount keeps no times of access");
      return;
    }
    if (process.platform !== "linux") return;
    await fingerprint(folder, "film.mp4");
    await hashFile(folder, "film.mp4");
    expect(await probe(join(folder, "film.mp4"))).toMatchObject({ ok: true });
    const { handle } = await openInside(folder, "film.mp4");
    await handle.readFile();
    await handle.close();
    const now = statSync(join(folder, "film.mp4"));
    expect([now.atimeMs, now.mtimeMs]).toEqual([past.atime.getTime(), past.mtime.getTime()]);
  });
});

describe("a film that is not where it was", () => {
  const file: ListedFile & { root: string } = {
    root: join(base, "drive"),
    path: "a.mp4",
    size: 3,
    mtimeMs: 0,
  };

  test("is said to be so: the drive, the file, another file in its place; and nothing is said when it is there", async () => {
    const asked = new Map<string, boolean>();
    expect(await whyAway(file, asked)).toMatchObject({
      kind: "root-missing",
      found: expect.stringContaining(file.root),
    });
    expect(asked.get(file.root)).toBe(true);
    mkdirSync(file.root);
    expect(await whyAway(file)).toMatchObject({ kind: "file-missing" });
    writeFileSync(join(file.root, "a.mp4"), "four");
    expect(await whyAway(file)).toMatchObject({
      kind: "other-file",
      found: expect.stringContaining("4 bytes"),
    });
    writeFileSync(join(file.root, "a.mp4"), "abc");
    expect(await whyAway(file)).toBeNull();
    rmSync(join(file.root, "a.mp4"));
    mkdirSync(join(file.root, "a.mp4"));
    expect(await whyAway(file)).toMatchObject({ kind: "other-file" });
  });
});
