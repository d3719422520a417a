import fs from "node:fs";
import path from "node:path";
import { describe, expect, test } from "vitest";
import { misses } from "./compare.ts";
import type { Adapter, Row } from "./row.ts";

/**
 * Published values against the program's own reading and look-ups. REFERENCE_DIR names a directory with other values
 * of the same form; each row names its source. A topic without an adapter fails; a file that is absent is skipped.
 */
const here = import.meta.dirname;
const directory = path.resolve(process.env.REFERENCE_DIR ?? path.join(here, "data"));
const files = ["check-values.json", "time-values.json", "hazards.json"];

const adapters = new Map(
  await Promise.all(
    fs
      .readdirSync(path.join(here, "adapters"))
      .filter((file) => file.endsWith(".ts"))
      .map(async (file): Promise<[string, Adapter]> => {
        const module = (await import(path.join(here, "adapters", file))) as { adapter: Adapter };
        return [path.basename(file, ".ts"), module.adapter];
      }),
  ),
);

/** Topics whose reading is on its way; each is named as skipped, not passed over in silence. */
const awaited = new Set(["webvtt-timestamp", "webvtt-cue"].filter((topic) => !adapters.has(topic)));

for (const file of files) {
  const place = path.join(directory, file);
  if (!fs.existsSync(place)) {
    test.skip(`${file} is not in ${directory}`, () => {});
    continue;
  }
  const rows = JSON.parse(fs.readFileSync(place, "utf8")) as Row[];
  const topics = new Map<string, Row[]>();
  for (const row of rows) {
    const topic = row.topic ?? row.category ?? "no topic";
    topics.set(topic, [...(topics.get(topic) ?? []), row]);
  }
  for (const [topic, group] of topics) {
    if (awaited.has(topic)) {
      test.skip(`${file}, ${topic}: ${group.length} values, no adapter yet`, () => {});
      continue;
    }
    describe(`${file}, ${topic}`, () => {
      test.each(group.map((row) => [row.id, row] as const))("%s", (_, row) => {
        const adapter = adapters.get(topic);
        expect(adapter, `no adapter answers the topic “${topic}”`).toBeDefined();
        expect(misses(row, adapter?.(row) ?? {}), `${JSON.stringify(row.input)}; ${row.source}`).toEqual([]);
      });
    });
  }
}
