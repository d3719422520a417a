/** One line of the bench: what is measured, and how it is said. */
export interface BenchLine {
  name: string;
  measure: () => Promise<string[]>;
}

export function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.floor(sorted.length / 2)] ?? Number.NaN;
}

/** Median time of several turns, in milliseconds, after one to warm up. */
export async function time(turns: number, work: () => unknown): Promise<number> {
  const times: number[] = [];
  for (let turn = 0; turn <= turns; turn++) {
    const start = performance.now();
    await work();
    if (turn > 0) times.push(performance.now() - start);
  }
  return median(times);
}

export const ms = (value: number) => `${value.toFixed(value < 10 ? 2 : 0)} ms`;
