import fs from "node:fs";
import { describe, expect, test } from "vitest";
import { draft, toPlainMarks } from "#lib/captions/index.ts";
import { cuesOf, known, type Recording } from "./helpers.ts";
import { type KindScore, prf, score } from "./score_captions.mjs";

/** What is asked of recordings of other trades, pooled: the harmonic mean of precision and recall. */
const asked = { measurement: 0.92, caution: 0.75, gotcha: 0.65, part: 0.65, deferred: 0.75 };
type Asked = keyof typeof asked;

function pooled(recordings: readonly Recording[]): Record<Asked, number> {
  const sums = Object.fromEntries(
    Object.keys(asked).map((kind) => [kind, { must: 0, predicted: 0, hit: 0, neutral: 0, fa: 0, trap: 0 }]),
  ) as Record<Asked, KindScore>;
  for (const recording of recordings) {
    const gold = JSON.parse(fs.readFileSync(recording.gold, "utf8")) as unknown;
    const { kinds } = score({ marks: toPlainMarks(draft(cuesOf(recording))) }, gold);
    for (const kind of Object.keys(asked) as Asked[])
      for (const name of Object.keys(sums[kind]) as (keyof KindScore)[])
        sums[kind][name] += kinds[kind]?.[name] ?? 0;
  }
  return Object.fromEntries(Object.entries(sums).map(([kind, sum]) => [kind, prf(sum).F1])) as Record<
    Asked,
    number
  >;
}

describe("scores of labelled recordings, by score_captions.mjs", () => {
  const scores = pooled(known);
  test.each(Object.keys(asked) as Asked[])("%s", (kind) => {
    expect(scores[kind]).toBeGreaterThanOrEqual(asked[kind]);
  });
});
