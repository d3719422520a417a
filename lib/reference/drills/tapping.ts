import { type Source, sourceNamed } from "../source.ts";
import type { Thread } from "../threads/thread.ts";
import { type Drill, drillNamed, drillsNear } from "./drill.ts";
import { tappingRows } from "./tapping-table.ts";

/** A hole for a tap. */
export interface TapDrill {
  thread: Thread;
  drill: Drill;
  /** How much of a full thread is left standing, in per cent; not given for a taper thread. */
  percent?: number;
  /** Where the drill was seen; worked out, where no table has it. */
  source: Source;
}

/** Depth of a full thread on both sides, in pitches, from which the per cent is reckoned. */
const fullDepth = (thread: Thread): number | undefined => {
  if (thread.minor === undefined) return undefined;
  return thread.form === "60° flat (ISO)" ? 1.299038 : (thread.major - thread.minor) / thread.pitch;
};

/**
 * Per cent of a full thread in a drilled hole: (D - drill) / (1.299038 P) for ISO and unified threads (Machinery's
 * Handbook), over the full depth of its own form for others. All in mm.
 */
export function threadPercent(thread: Thread, drill: number): number | undefined {
  const depth = fullDepth(thread);
  return depth === undefined ? undefined : (100 * (thread.major - drill)) / (depth * thread.pitch);
}

/** The same from plain figures, for a 60° thread. */
export const threadPercentOf = (major: number, drill: number, pitch: number): number =>
  (100 * (major - drill)) / (1.299038 * pitch);

/** The diameter in mm that leaves a per cent of full thread standing. */
export function drillForPercent(thread: Thread, percent: number): number | undefined {
  const depth = fullDepth(thread);
  return depth === undefined ? undefined : thread.major - (percent / 100) * depth * thread.pitch;
}

/**
 * The tapping drill of a thread: from a table where one has it, else the drill
 * nearest to 75 per cent of full thread. None where no twist drill is so large.
 */
export function tapDrillFor(thread: Thread): TapDrill | undefined {
  const published = publishedDrill(thread) ?? fineRule(thread);
  if (published) return withPercent(thread, published.drill, published.source);
  const aim = drillForPercent(thread, thread.form === "60° flat (ISO)" ? 75 : 80);
  const [drill] = aim === undefined ? [] : drillsNear(aim, 1, ["metric"]);
  if (aim === undefined || drill === undefined || Math.abs(drill.mm - aim) > 0.3) return undefined;
  return withPercent(thread, drill, sourceNamed("threadPercent"));
}

/** Other drills near the tapping drill, with the per cent of thread that each leaves: 50 to 90. */
export function tapDrillsAround(thread: Thread): TapDrill[] {
  const aim = tapDrillFor(thread)?.drill.mm;
  if (aim === undefined) return [];
  return drillsNear(aim, 14)
    .map((drill) => withPercent(thread, drill, sourceNamed("threadPercent")))
    .filter(({ percent }) => percent !== undefined && percent >= 50 && percent <= 92)
    .sort((a, b) => a.drill.mm - b.drill.mm);
}

const keyOf = (thread: Thread): string => thread.name.replaceAll(" ", "_");
const published = new Map(tappingRows.map((row) => [row.thread, row]));

function publishedDrill(thread: Thread): { drill: Drill; source: Source } | undefined {
  const row = published.get(keyOf(thread));
  if (!row) return undefined;
  const name = row.unit === "mm" || row.unit === "in" ? `${row.size} ${row.unit}` : `${row.unit} ${row.size}`;
  const drill = drillNamed(name);
  return drill && { drill, source: row.source };
}

/** Fine metric threads: diameter less pitch. */
function fineRule(thread: Thread): { drill: Drill; source: Source } | undefined {
  if (thread.system !== "ISO metric") return undefined;
  const drill = drillNamed(`${Number((thread.major - thread.pitch).toFixed(2))} mm`);
  return drill && { drill, source: sourceNamed("metricFineHole") };
}

function withPercent(thread: Thread, drill: Drill, source: Source): TapDrill {
  const percent = threadPercent(thread, drill.mm);
  return { thread, drill, ...(percent !== undefined && { percent }), source };
}

/** Whether a drill can make a hole for a thread, and which thread of its diameter it would suit better. */
export function tapDrillSuits(
  thread: Thread,
  drill: number,
): { suits: boolean; percent?: number; expected?: TapDrill; why: string } {
  const percent = threadPercent(thread, drill);
  const expected = tapDrillFor(thread);
  const shown = expected && `${expected.drill.name} is the usual drill`;
  const verdict = (suits: boolean, why: string) => ({
    suits,
    ...(percent !== undefined && { percent }),
    ...(expected && { expected }),
    why: [why, shown].filter(Boolean).join("; "),
  });
  if (drill >= thread.major) return verdict(false, "the drill is as large as the thread: no thread is left");
  if (thread.minor !== undefined && drill < thread.minor - 0.03 * thread.pitch)
    return verdict(false, "the drill is smaller than the core of the thread: the tap will jam");
  if (percent !== undefined && percent < 60)
    return verdict(false, `only ${Math.round(percent)} % of a full thread is left`);
  return verdict(
    true,
    percent === undefined ? "a taper thread" : `${Math.round(percent)} % of a full thread`,
  );
}
