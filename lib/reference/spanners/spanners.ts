import { fraction } from "../drills/drill.ts";
import { sourceNamed } from "../source.ts";
import { inch, sizeOf, type Thread } from "../threads/thread.ts";
import { baJaws, inchRows, type Jaw, metricRows, whitworthJaws, whitworthRows } from "./jaws.ts";

/** Metric spanners by whole mm from 4 to 36, and the larger ones that bolts have; smaller and half sizes as bolts have them. */
const metricSizes = [...new Set([3.2, 5.5, ...range(4, 36), ...metricRows.map(({ mm }) => mm)])].sort(
  (a, b) => a - b,
);

const metricJaws: Jaw[] = metricSizes.map((mm) => {
  const rows = metricRows.filter((row) => row.mm === mm);
  const old = (row: (typeof rows)[number]): string =>
    row.source === sourceNamed("din931") ? `${row.thread} (old DIN head)` : row.thread;
  return {
    name: `${mm} mm`,
    scale: "metric",
    mm,
    heads: rows.map(old),
    source: rows[0]?.source ?? sourceNamed("jawList"),
  };
});

/** AF spanners by 1/32 in to 1 in, then by 1/16 in. */
const afParts = [...range(6, 32), ...range(17, 36).map((sixteenths) => sixteenths * 2)];
const afJaws: Jaw[] = afParts.map((parts) => {
  const size = fraction(parts, 32);
  const rows = inchRows.filter((row) => row.size === size);
  return {
    name: `${size} AF`,
    scale: "AF",
    mm: (parts / 32) * inch,
    heads: rows.map(({ thread }) => `${thread.replace("_", " ")} unified`),
    source: rows[0]?.source ?? sourceNamed("jawList"),
  };
});

/** Every spanner, smallest first. */
export const allJaws: readonly Jaw[] = [...whitworthJaws, ...baJaws, ...metricJaws, ...afJaws].sort(
  (a, b) => a.mm - b.mm,
);

/** A spanner beside a hexagon: how much larger its jaw is, in mm. */
export interface JawNear {
  jaw: Jaw;
  /** Jaw less hexagon, in mm: below zero it does not go on. */
  play: number;
  /**
   * "fits" up to 0.15 mm of play or the same size, "loose" up to 3 per cent of the size: it will round the corners
   * under load, "too small" where it does not go on. Limits of common practice, no source.
   */
  verdict: "fits" | "loose" | "too small";
}

/** Spanners near a size across flats (mm), nearest first. */
export function spannersNear(mm: number, count = 8): JawNear[] {
  return allJaws
    .map((jaw) => ({ jaw, play: jaw.mm - mm, verdict: verdictOf(jaw.mm - mm, mm) }))
    .filter(({ play }) => Math.abs(play) <= Math.max(0.9, 0.05 * mm))
    .sort((a, b) => Math.abs(a.play) - Math.abs(b.play))
    .slice(0, count);
}

function verdictOf(play: number, mm: number): JawNear["verdict"] {
  if (play < -0.05) return "too small";
  return play <= Math.max(0.15, 0.012 * mm) ? "fits" : "loose";
}

/** The hexagons that a thread's bolt may have, the usual first. None for pipe and cycle threads, whose nuts vary. */
export function hexagonsOf(thread: Thread): Jaw[] {
  const whitworth = (size: string, column: "w" | "bs"): Jaw[] =>
    whitworthRows.flatMap((row, index) => (row[column] === size ? (whitworthJaws[index] ?? []) : []));
  if (thread.series === "BSW") return [...whitworth(thread.size, "w"), ...whitworth(thread.size, "bs")];
  if (thread.series === "BSF") return whitworth(thread.size, "bs");
  if (thread.series === "BA") return baJaws.filter((jaw) => jaw.name === thread.name);
  if (thread.system === "ISO metric")
    return metricRows
      .filter((row) => row.thread === `M${thread.size}`)
      .map((row) => ({ ...jawOf("metric", row.mm), source: row.source }));
  if (thread.system === "UN")
    return inchRows
      .filter((row) => row.thread.replace("_nut", "") === thread.size)
      .map((row) => ({ ...jawOf("AF", sizeOf(row.size) * inch), source: row.source }));
  return [];
}

/**
 * The spanner with a mark: "3/8 W", "7/16 BSF", "2 BA", "10 mm", "7/16 AF". A size in inches without letters is
 * taken as across flats. Nothing for a mark that no table has.
 */
export function jawMarked(mark: string): Jaw | undefined {
  const [, size = "", letters = ""] =
    /^\s*([\d./-]+)\s*(mm|in|AF|A\/F|BA|BSW?F?|W|Whit(?:worth)?|)\s*$/i.exec(mark) ?? [];
  const scale = letters.toUpperCase();
  if (scale === "BA") return baJaws.find((jaw) => jaw.name === `${size} BA`);
  if (scale === "BS" || scale === "BSF")
    return whitworthJaws[whitworthRows.findIndex((row) => row.bs === size)];
  if (scale.startsWith("W") || scale === "BSW")
    return whitworthJaws[whitworthRows.findIndex((row) => row.w === size)];
  if (scale === "MM") return allJaws.find((jaw) => jaw.scale === "metric" && jaw.mm === Number(size));
  return allJaws.find((jaw) => jaw.scale === "AF" && jaw.name === `${size} AF`);
}

function jawOf(scale: Jaw["scale"], mm: number): Jaw {
  const found = allJaws.find((jaw) => jaw.scale === scale && Math.abs(jaw.mm - mm) < 0.001);
  if (!found) throw new Error(`no ${scale} spanner of ${mm} mm`);
  return found;
}

function range(from: number, to: number): number[] {
  return Array.from({ length: to - from + 1 }, (_, index) => from + index);
}
