import { baThreads } from "./ba.ts";
import { cycleThreads } from "./cycle.ts";
import { metricThreads } from "./metric.ts";
import { pipeThreads } from "./pipe.ts";
import type { Thread } from "./thread.ts";
import { unifiedThreads } from "./unified.ts";
import { whitworthThreads } from "./whitworth.ts";

const of = (threads: Thread[], ...series: string[]): Thread[] =>
  threads.filter((thread) => series.includes(thread.series));

/** The thread tables by standard, in the order in which they are shown. */
export const threadTables: readonly { title: string; standard: string; threads: Thread[] }[] = [
  { title: "Whitworth (BSW)", standard: "BS 84", threads: of(whitworthThreads, "BSW") },
  { title: "British Standard Fine (BSF)", standard: "BS 84", threads: of(whitworthThreads, "BSF") },
  { title: "British Association (BA)", standard: "BS 93", threads: baThreads },
  { title: "Cycle (BSC, CEI)", standard: "BS 811", threads: cycleThreads },
  { title: "Brass (26 tpi)", standard: "common practice", threads: of(whitworthThreads, "BSB") },
  { title: "Pipe, parallel (BSP)", standard: "ISO 228-1", threads: of(pipeThreads, "BSP") },
  { title: "Pipe, taper (NPT)", standard: "ASME B1.20.1", threads: of(pipeThreads, "NPT") },
  { title: "ISO metric, coarse", standard: "ISO 261", threads: of(metricThreads, "ISO coarse") },
  { title: "ISO metric, fine", standard: "ISO 261", threads: of(metricThreads, "ISO fine") },
  { title: "Unified coarse (UNC)", standard: "ASME B1.1", threads: of(unifiedThreads, "UNC") },
  { title: "Unified fine (UNF)", standard: "ASME B1.1", threads: of(unifiedThreads, "UNF") },
  {
    title: "Unified extra fine and special",
    standard: "ASME B1.1",
    threads: of(unifiedThreads, "UNEF", "UNS"),
  },
];

/** Every thread of every table. */
export const allThreads: readonly Thread[] = threadTables.flatMap((table) => table.threads);
