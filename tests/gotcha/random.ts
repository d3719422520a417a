/** Chance that gives the same each time, by its seed (mulberry32, a generator in the public domain). */
export function random(seed: number) {
  let state = seed >>> 0;
  const next = () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = state;
    t = Math.imul(t ^ (t >>> 15), t | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
  const whole = (from: number, to: number) => from + Math.floor(next() * (to - from + 1));
  const pick = <T>(all: readonly T[]): T => all[whole(0, all.length - 1)] as T;
  return {
    next,
    whole,
    pick,
    chance: (of: number) => next() < of,
    /** That many of them, each once. */
    some: <T>(all: readonly T[], count: number): T[] => {
      const left = [...all];
      return Array.from(
        { length: Math.min(count, all.length) },
        () => left.splice(whole(0, left.length - 1), 1)[0] as T,
      );
    },
    /** One of them, by the weight that stands first in it. */
    weighted: <T extends readonly [number, ...unknown[]]>(all: readonly T[]): T => {
      let at = next() * all.reduce((sum, [weight]) => sum + weight, 0);
      for (const one of all) {
        at -= one[0];
        if (at < 0) return one;
      }
      return all[all.length - 1] as T;
    },
  };
}
