import fs from "node:fs";
import path from "node:path";
import { describe, expect, test } from "vitest";
import { audit } from "#lib/store/audit/index.ts";
import { find, openWorkshop, Refused, workshopAt } from "#lib/store/index.ts";
import {
  allFiles,
  allRows,
  freshFolder,
  type KeptWorkshop,
  programRoot,
  tamper,
  workshopWithEverything,
} from "./kept.ts";

const options = { programRoot };

/** A way in which a workshop is spoiled, and what an audit must say of it. */
interface Spoiling {
  name: string;
  rule: string;
  severity: "wrong" | "doubtful" | "advice";
  /** Something that the finding must name. */
  names: RegExp;
  spoil: (opened: KeptWorkshop) => void;
}

const film = ({ workshop }: KeptWorkshop) => path.join(workshop.recordings, "first.mp4");
const still = ({ workshop, sha256 }: KeptWorkshop) => path.join(workshop.stills, `${sha256}.jpg`);
const sql = (text: string) => (opened: KeptWorkshop) => tamper(opened.workshop.database, text);

const spoilings: Spoiling[] = [
  {
    name: "a film that rots",
    rule: "recording-changed",
    severity: "wrong",
    names: /first\.mp4/,
    spoil: (opened) => {
      const { atime, mtime } = fs.statSync(film(opened));
      fs.writeFileSync(film(opened), fs.readFileSync(film(opened)).fill(0, 100, 101));
      fs.utimesSync(film(opened), atime, mtime);
    },
  },
  {
    name: "a release whose files are gone",
    rule: "release-missing",
    severity: "wrong",
    names: /releases\/release-1/,
    spoil: sql(
      `INSERT INTO "Release" VALUES ('release-1','build-1','A','2026-05-03','','','${"0".repeat(64)}',NULL,1)`,
    ),
  },
  {
    name: "a film cut short",
    rule: "recording-changed",
    severity: "wrong",
    names: /first\.mp4.*100 bytes|100 bytes.*first\.mp4/,
    spoil: (opened) => fs.truncateSync(film(opened), 100),
  },
  {
    name: "a film that is gone",
    rule: "recording-missing",
    severity: "wrong",
    names: /first\.mp4/,
    spoil: (opened) => fs.rmSync(film(opened)),
  },
  {
    name: "a listed film that is gone",
    rule: "recording-missing",
    severity: "doubtful",
    names: /second\.mp4/,
    spoil: (opened) => fs.rmSync(opened.elsewhere),
  },
  {
    name: "a listed film of another size",
    rule: "recording-changed",
    severity: "doubtful",
    names: /second\.mp4/,
    spoil: (opened) => fs.appendFileSync(opened.elsewhere, "more"),
  },
  {
    name: "a listed film of another time",
    rule: "recording-touched",
    severity: "doubtful",
    names: /second\.mp4.*2020-01-01|2020-01-01.*second\.mp4/,
    spoil: (opened) => fs.utimesSync(opened.elsewhere, 1_577_880_000, 1_577_880_000),
  },
  {
    name: "a drive that is not plugged in",
    rule: "folder-away",
    severity: "doubtful",
    names: /second\.mp4/,
    spoil: (opened) => fs.rmSync(path.dirname(opened.elsewhere), { recursive: true }),
  },
  {
    name: "a still with other bytes",
    rule: "still-hash",
    severity: "wrong",
    names: /stills\//,
    spoil: (opened) => fs.appendFileSync(still(opened), "x"),
  },
  {
    name: "a still whose picture is gone",
    rule: "still-missing",
    severity: "wrong",
    names: /stills\//,
    spoil: (opened) => fs.rmSync(still(opened)),
  },
  {
    name: "a picture that no still names",
    rule: "still-orphan",
    severity: "advice",
    names: /stills\//,
    spoil: (opened) => {
      // "test" in SHA-256: FIPS 180-4, worked by any implementation.
      const name = "9f86d081884c7d659a2feaa0c55ad015a3bf4f1b2b0b822cd15d6c15b0f00a08";
      fs.writeFileSync(path.join(opened.workshop.stills, `${name}.jpg`), "test");
    },
  },
  {
    name: "a film that no recording names",
    rule: "recording-orphan",
    severity: "advice",
    names: /stray\.mp4/,
    spoil: (opened) => fs.writeFileSync(path.join(opened.workshop.recordings, "stray.mp4"), "x"),
  },
  {
    name: "a file that is not the program's",
    rule: "file-unknown",
    severity: "advice",
    names: /letter\.txt/,
    spoil: (opened) => fs.writeFileSync(path.join(opened.workshop.folder, "letter.txt"), "x"),
  },
  {
    name: "a file that was cut short while it grew",
    rule: "file-unfinished",
    severity: "advice",
    names: /\.receiving-/,
    spoil: (opened) =>
      fs.writeFileSync(path.join(opened.workshop.recordings, ".receiving-0123456789abcdef.part"), "x"),
  },
  {
    name: "a mark without its sitting",
    rule: "reference-dangling",
    severity: "wrong",
    names: /part-12.*Sitting|Sitting.*part-12/,
    spoil: sql("UPDATE Mark SET sittingId = 'gone' WHERE id = 'part-12'"),
  },
  {
    name: "a mark written past the program",
    rule: "log-differs",
    severity: "wrong",
    names: /mark action-10 \(revision 7, in the log 1\)/,
    spoil: sql("UPDATE Mark SET rev = 7 WHERE id = 'action-10'"),
  },
  {
    name: "a mark that was lost",
    rule: "log-differs",
    severity: "wrong",
    names: /mark action-10 \(revision 1 in the log, not there\)/,
    spoil: sql("DELETE FROM Mark WHERE id = 'action-10'; DELETE FROM search_entry WHERE row = 'action-10'"),
  },
  {
    name: "fields that are no JSON",
    rule: "row-form",
    severity: "wrong",
    names: /mark action-10/,
    spoil: sql(
      `UPDATE Mark SET fieldsJson = '{"v":1' WHERE id = 'action-10'; DELETE FROM search_entry WHERE row = 'action-10'`,
    ),
  },
  {
    name: "a value that no field may have",
    rule: "row-form",
    severity: "wrong",
    names: /sitting-1.*stage/,
    spoil: sql("UPDATE Sitting SET stage = 'polish' WHERE id = 'sitting-1'"),
  },
  {
    name: "a search table that lacks a mark",
    rule: "search-differs",
    severity: "wrong",
    names: /action-10 \(missing\)/,
    spoil: sql("DELETE FROM search_entry WHERE row = 'action-10'"),
  },
  {
    name: "a search table with too much in it",
    rule: "search-differs",
    severity: "wrong",
    names: /gotcha-11 \(too much\)/,
    spoil: sql(
      "INSERT INTO search_entry (source, row, part, kind, text, head, body, facets) VALUES ('mark', 'gotcha-11', 0, 'gotcha', 'x', '', 'x', '')",
    ),
  },
  {
    name: "no search table",
    rule: "search-differs",
    severity: "wrong",
    names: /action-10/,
    spoil: sql("DROP TABLE search_entry"),
  },
  {
    name: "a database from a later version",
    rule: "database-later",
    severity: "wrong",
    names: /99990101000000_later/,
    spoil: sql(
      "INSERT INTO _prisma_migrations (id, checksum, migration_name, started_at, finished_at) VALUES ('x', 'x', '99990101000000_later', 1, 1)",
    ),
  },
];

describe("an audit", () => {
  test("of a whole workshop finds nothing, and changes nothing", async () => {
    const { client, workshop } = await workshopWithEverything();
    await client.$disconnect();
    const before = allFiles(workshop.folder);
    const made = await audit(workshop, options);
    expect(made.findings).toEqual([]);
    expect(made.looked).toMatchObject({ stills: 1, recordings: 1, elsewhere: 1 });
    // An edit and an answer whose mark is gone are kept on purpose, and are no fault.
    expect(made.looked.rows).toBeGreaterThan(10);
    const after = allFiles(workshop.folder);
    for (const [name, bytes] of before)
      if (!/-(shm|wal)$/.test(name)) expect(after.get(name), name).toEqual(bytes);
  });

  test.each(spoilings)(
    "finds $name, names it, and says what to do",
    async ({ rule, severity, names, spoil }) => {
      const opened = await workshopWithEverything();
      await opened.client.$disconnect();
      spoil(opened);
      const { findings } = await audit(opened.workshop, options);
      const finding = findings.find((one) => one.rule === rule);
      expect(findings.map((one) => one.rule)).toContain(rule);
      expect(finding).toMatchObject({ severity });
      expect(`${finding?.found} ${finding?.place.field}`).toMatch(names);
      for (const words of [finding?.expected, finding?.todo, finding?.source]) expect(words).toBeTruthy();
    },
  );

  test("finds a damaged database, and looks at the files all the same", async () => {
    const opened = await workshopWithEverything();
    const { client, workshop } = opened;
    await client.$disconnect();
    tamper(workshop.database, "PRAGMA wal_checkpoint(TRUNCATE)");
    const bytes = fs.readFileSync(workshop.database);
    bytes.fill(0x5a, 4096 * 3, 4096 * 20);
    fs.writeFileSync(workshop.database, bytes);
    fs.appendFileSync(still(opened), "x");
    const { findings } = await audit(workshop, { ...options, rebuild: true });
    expect(findings.map((one) => one.rule)).toEqual(
      expect.arrayContaining(["database-damaged", "still-hash"]),
    );
    expect(fs.readFileSync(workshop.database).equals(bytes)).toBe(true);
  });

  test("keeps quiet about a picture that undoing would bring back", async () => {
    const { client, workshop } = await workshopWithEverything();
    const { apply } = await import("#lib/store/index.ts");
    const puts = [{ table: "still" as const, id: "still-1", rev: 1, set: { sha256: "" } }];
    await apply(client, { id: crypto.randomUUID(), buildId: "build-1", label: "taken away", puts });
    expect((await audit(workshop, options)).findings).toEqual([]);
  });

  test("makes the search table anew when that is asked for, and nothing else", async () => {
    const opened = await workshopWithEverything();
    const { client, workshop } = opened;
    const before = allRows(workshop.database);
    await client.$disconnect();
    tamper(workshop.database, "DELETE FROM search_entry");
    fs.rmSync(film(opened));
    const made = await audit(workshop, { ...options, rebuild: true });
    expect(made.rebuilt).toEqual(["search_entry"]);
    expect(made.findings.map((one) => one.rule)).toEqual(["recording-missing"]);
    expect(allRows(workshop.database)).toEqual(before);
    const again = openWorkshop(workshop.folder, programRoot);
    expect(
      find(again.workshop, { text: "cover", kinds: ["action", "part"] })
        .found.map((one) => one.row)
        .sort(),
    ).toEqual(["action-10", "part-12"]);
    await again.client.$disconnect();
  });

  test("reads films that stay where they lie to their end when that is asked for", async () => {
    const { client, workshop, elsewhere } = await workshopWithEverything();
    const sha256 = "0".repeat(64);
    tamper(workshop.database, `UPDATE Recording SET sha256 = '${sha256}' WHERE id = 'recording-2'`);
    await client.$disconnect();
    expect((await audit(workshop, options)).findings).toEqual([]);
    const { findings } = await audit(workshop, { ...options, films: true });
    expect(findings).toMatchObject([{ rule: "recording-changed", place: { field: elsewhere } }]);
  });

  test("of a folder without a workshop is refused", async () => {
    const folder = freshFolder();
    await expect(audit(workshopAt(folder), options)).rejects.toBeInstanceOf(Refused);
    expect(fs.readdirSync(folder)).toEqual([]);
  });
});
