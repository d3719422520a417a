import type { ThreadDesignation } from "#lib/quantity/index.ts";
import { type Thread, threadOf, unlistedNearest } from "#lib/reference/index.ts";

const known = new Map<string, Thread[]>();

/** The threads of the tables that a designation can be; looked up once. */
export function threadsOf(designation: ThreadDesignation): Thread[] {
  const key = keyOf(designation);
  const found = known.get(key);
  if (found) return found;
  if (known.size > 2000) known.clear();
  const threads = threadOf(designation);
  known.set(key, threads);
  return threads;
}

const neighbours = new Map<string, Thread[]>();

/** Where no table has it: the threads that are nearest, looked up once. */
export function nearestThreads(designation: ThreadDesignation): Thread[] {
  const key = keyOf(designation);
  const found = neighbours.get(key) ?? unlistedNearest(designation);
  if (neighbours.size > 2000) neighbours.clear();
  neighbours.set(key, found);
  return found;
}

const keyOf = ({ system, series, size, tpi, pitch }: ThreadDesignation): string =>
  [system, series, size, tpi, pitch].join("|");
