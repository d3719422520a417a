import { type Drill, drillsNear, fraction, tapDrillFor } from "../drills/index.ts";
import { gaugesNear } from "../gauges/index.ts";
import { sourceNamed } from "../source.ts";
import { allThreads } from "../threads/index.ts";
import {
  bothWays,
  columnInches,
  columnMm,
  distinct,
  type Entry,
  inMillimetres,
  type SideBySide,
  signed,
} from "./reply.ts";
import { spannerEntry } from "./spanner.ts";
import { likeEntries } from "./thread.ts";

function drillTable(mm: number, caption: string): SideBySide {
  const near = drillsNear(mm, 10).toSorted((a, b) => a.mm - b.mm);
  return {
    caption,
    columns: ["mm", "in", "larger by"],
    rows: near.map((drill) => ({
      label: drill.name,
      cells: [columnMm(drill.mm), columnInches(drill.mm), signed(drill.mm - mm)],
    })),
    sources: distinct(near.map(({ source }) => source)),
  };
}

/** A drill: its size, its neighbours, and what it taps. */
export function drillEntry(drill: Drill): Entry {
  const taps = allThreads.filter(
    (thread) => Math.abs((tapDrillFor(thread)?.drill.mm ?? 0) - drill.mm) < 0.03,
  );
  return {
    title: `Drill ${drill.name}`,
    about: "drill",
    says:
      taps.length > 0
        ? `It is the usual tapping drill, or within 0.03 mm of it, for ${taps.map(({ name }) => name).join(", ")}.`
        : undefined,
    figures: [{ label: "diameter", mm: drill.mm, source: drill.source }],
    beside: drillTable(drill.mm, `Drills near ${drill.name}`),
    notes: [],
  };
}

/** What a bare length can be: a fraction, a drill, a gauge, a spanner, a thread. */
export function lengthEntries(mm: number, text: string): Entry[] {
  const sixtyFourths = Math.round((mm / 25.4) * 64);
  const nearest = (sixtyFourths / 64) * 25.4;
  const plain: Entry = {
    title: bothWays(mm),
    about: "length",
    figures: [
      { label: "length", mm, source: sourceNamed("inchDefinition") },
      ...(sixtyFourths > 0
        ? [
            {
              label: `nearest sixty-fourth, ${fraction(sixtyFourths, 64)} in, ${signed(nearest - mm)}`,
              mm: nearest,
              source: sourceNamed("fractionStep"),
            },
          ]
        : []),
    ],
    notes: [],
  };
  const entries: Entry[] = [plain];
  const asksDrill = /\bdrill|\bhole|\bbit\b/i.test(text);
  const asksGauge = /\bwire|\bsheet|\bgauge|\bthick/i.test(text);
  const asksThread = /\bthread|\bscrew|\bbolt|\bstud|\bOD\b/i.test(text);
  const all = !asksDrill && !asksGauge && !asksThread;
  if ((asksDrill || all) && mm >= 0.3 && mm <= 52)
    entries.push({
      title: "Drills",
      about: "drills near it",
      figures: [],
      beside: drillTable(mm, `Drills near ${inMillimetres(mm)}`),
      notes: [],
    });
  if (asksGauge || (all && mm < 12)) entries.push(gaugeTable(mm));
  if (asksThread || (all && mm >= 0.7 && mm <= 60))
    entries.push(...likeEntries({ diameter: mm }).slice(0, 1));
  if (all && mm >= 3 && mm <= 60) entries.push(spannerEntry(mm, inMillimetres(mm)));
  return entries;
}

function gaugeTable(mm: number): Entry {
  const near = gaugesNear(mm, ["SWG", "AWG", "MSG"]).slice(0, 7);
  return {
    title: "Gauges",
    about: "wire and sheet near it",
    figures: [],
    beside: {
      caption: `Gauges near ${inMillimetres(mm)}`,
      columns: ["mm", "in", "larger by"],
      rows: near.map((gauge) => ({
        label: gauge.name,
        cells: [columnMm(gauge.mm), columnInches(gauge.mm), signed(gauge.mm - mm)],
      })),
      sources: distinct(near.map(({ source }) => source)),
    },
    notes: [],
  };
}
