import fs from "node:fs";
import os from "node:os";
import path from "node:path";
import Database from "better-sqlite3";
import { newItem } from "#lib/build/index.ts";
import { openWorkshop, projectionsIn, rebuildSearch } from "#lib/store/index.ts";
import { findWith, type Reader } from "#lib/store/search/find.ts";
import { SearchReader } from "#lib/store/sqlite/search.ts";
import { random } from "../gotcha/random.ts";
import { sampleDocument, sampleMark } from "../sample.ts";
import { type BenchLine, median, ms } from "./measure.ts";

const ENTRIES = 100_000;

/** Words by how often they occur: few are common, most are rare (Zipf's law; Zipf 1949, from memory). */
function speaker(seed: number) {
  const dice = random(seed);
  const syllables = [
    "ba",
    "ko",
    "ri",
    "tu",
    "mel",
    "san",
    "dor",
    "vik",
    "pel",
    "gra",
    "hon",
    "lis",
    "quo",
    "zet",
  ];
  const vocabulary = Array.from({ length: 20_000 }, () =>
    Array.from({ length: dice.whole(2, 4) }, () => dice.pick(syllables)).join(""),
  );
  vocabulary.splice(
    0,
    12,
    ..."the cover nut gasket spring washer shaft bearing seal clean tight oil".split(" "),
  );
  const word = () => vocabulary[Math.floor(vocabulary.length ** dice.next()) - 1] as string;
  const number = () => `${dice.pick(["AB", "KL", "OS"])}-${dice.whole(1000, 9999)}/${dice.whole(1, 9)}`;
  const sentence = (length: number) =>
    Array.from({ length }, (_, at) =>
      at === 3 && dice.chance(0.02) ? dice.pick(["M6", "2BA", "M8x1"]) : word(),
    ).join(" ");
  return { dice, word, number, sentence };
}

/** A workshop with that many marks, gotchas, parts and cues, written past the change log, which nobody searches. */
function fill(file: string): void {
  const { dice, number, sentence } = speaker(1);
  const database = new Database(file);
  const insert = (table: string, row: Record<string, unknown>) => {
    const names = Object.keys(row);
    database
      .prepare(
        `INSERT INTO "${table}" (${names.map((name) => `"${name}"`).join()}) VALUES (${names.map(() => "?").join()})`,
      )
      .run(Object.values(row));
  };
  const { machine, build, sittings, recordings } = sampleDocument();
  database.transaction(() => {
    insert("Machine", machine);
    insert("Build", build);
    insert("Sitting", sittings[0] as never);
    const { probe: _p, trouble: _t, ...recording } = recordings[0] as never as Record<string, unknown>;
    insert("Recording", { ...recording, probeJson: "null", troubleJson: "null" });
    const kinds = ["action", "part", "measurement", "caution", "gotcha"] as const;
    for (let index = 0; index < ENTRIES * 0.5; index++) {
      const kind = dice.pick(kinds);
      const words = {
        words: sentence(9),
        item: kind === "part" ? sentence(2) : undefined,
        partNumber: kind === "part" ? number() : undefined,
      };
      const { fields, ...mark } = sampleMark(index, kind, words, { id: `mark-${index}` });
      insert("Mark", { ...mark, fieldsJson: JSON.stringify(fields) });
    }
    for (let index = 0; index < ENTRIES * 0.05; index++) {
      insert(
        "Item",
        newItem({ id: `item-${index}`, machineId: machine.id, name: sentence(2), partNumber: number() }),
      );
    }
    for (let track = 0; track < 45; track++) {
      const cues = Array.from({ length: ENTRIES * 0.01 }, (_, cue) => {
        const minutes = String(Math.floor(cue / 20)).padStart(2, "0");
        return `${minutes}:${String((cue % 20) * 3).padStart(2, "0")}.000 --> ${minutes}:59.999\n${sentence(11)}`;
      });
      const row = {
        id: `track-${track}`,
        buildId: build.id,
        recordingId: "recording-1",
        name: "a",
        clock: "recording",
      };
      insert("CaptionTrack", { ...row, text: `WEBVTT\n\n${cues.join("\n\n")}`, gone: null, rev: 0 });
    }
  })();
  database.close();
}

/** Questions as they grow under the hand, by what they are. */
function questions(): Record<string, string[]> {
  const { word, number, dice } = speaker(2);
  const typed = (text: string) => [text.slice(0, Math.max(2, text.length - 2)), text];
  const many = (of: () => string) => Array.from({ length: 60 }, of).flatMap(typed);
  const rare = () => {
    for (;;) {
      const one = word();
      if (one.length > 6) return one;
    }
  };
  return {
    "rare words": many(rare),
    "part numbers": many(number),
    "two words": many(() => `${rare()} ${word()}`),
    "four words that never stand together": many(() => `${rare()} ${rare()} ${word()} ${rare()}`),
    "a mistyped word": many(() => {
      const one = rare();
      const at = dice.whole(1, one.length - 2);
      return one.slice(0, at) + one.slice(at + 1);
    }),
    "short tokens": ["M6", "2BA", "2 BA", "M8x1"],
    "the commonest word": ["the", "cover", "nut"],
  };
}

export const searchLine: BenchLine = {
  name: `search as you type over ${ENTRIES} entries, and the same query straight in SQLite`,
  measure: async () => {
    const folder = fs.mkdtempSync(path.join(os.tmpdir(), "bench-"));
    const { client, workshop } = openWorkshop(folder, process.cwd());
    fill(workshop.database);
    const start = performance.now();
    rebuildSearch(workshop.database, projectionsIn(process.cwd()));
    const said = [`making the search tables anew: ${((performance.now() - start) / 1000).toFixed(1)} s`];
    const reader = new SearchReader(workshop.database);
    for (const [name, texts] of Object.entries(questions())) {
      const [ours, straight]: [number[], number[]] = [[], []];
      for (const text of [...texts, ...texts]) {
        const { asking, queries } = noting(reader);
        findWith(asking, { text });
        ours.push(timeOf(() => findWith(reader, { text })));
        straight.push(timeOf(() => queries.map((query) => query())));
      }
      const half = (times: number[]) => times.slice(texts.length);
      const ratio = median(half(ours)) / median(half(straight));
      said.push(
        `${name}: 95th percentile ${ms(percentile(half(ours)))}, straight ${ms(percentile(half(straight)))}; medians ${ms(median(half(ours)))} and ${ms(median(half(straight)))}, ${ratio.toFixed(2)} times`,
      );
    }
    reader.close();
    await client.$disconnect();
    fs.rmSync(folder, { recursive: true, force: true });
    return said;
  },
};

/** A reader that notes what is asked of it, so that the same can be asked again with nothing about it. */
function noting(reader: SearchReader): { asking: Reader; queries: (() => unknown)[] } {
  const queries: (() => unknown)[] = [];
  const note = <T>(query: () => T): T => {
    queries.push(query);
    return query();
  };
  const asking: Reader = {
    find: (...of) => note(() => reader.find(...of)),
    begins: (...of) => note(() => reader.begins(...of)),
    within: (...of) => note(() => reader.within(...of)),
    near: (...of) => note(() => reader.near(...of)),
  };
  return { asking, queries };
}

function timeOf(work: () => unknown): number {
  const start = performance.now();
  work();
  return performance.now() - start;
}

function percentile(times: readonly number[]): number {
  return [...times].sort((a, b) => a - b)[Math.floor(times.length * 0.95)] ?? Number.NaN;
}
