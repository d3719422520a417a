import { compareThreads, type Thread, type ThreadComparison } from "#lib/reference/index.ts";
import { first, threads } from "../read/figures.ts";
import type { Adapter } from "../row.ts";

const close = (a: number | undefined, b: number): boolean =>
  a !== undefined && Math.abs(a - b) <= 0.006 * Math.max(a, b);

/** Whether what the row says the two have in common is what the comparison says. */
function inCommon({ first, second, same }: ThreadComparison, item: string): boolean {
  if (item === "name only")
    return first.size === second.size && !same.includes("diameter") && !same.includes("pitch");
  if (/^near /.test(item)) return same.some((one) => item.includes(one));
  const tpi = /^tpi ([\d.]+)$/.exec(item)?.[1];
  if (tpi) return first.tpi === Number(tpi) && second.tpi === Number(tpi);
  const word = item.split(" ")[0] ?? "";
  const figure = Number(item.split(" ")[1]);
  const agrees = Number.isNaN(figure) || close(word === "pitch" ? first.pitch : first.major, figure);
  return same.includes(word) && agrees;
}

/** Whether a difference that the row names ("tpi 13 / 12", "0.1875 / 0.190 in", "rounded / flat") is one. */
function different({ first, second, differ }: ThreadComparison, item: string): boolean {
  const pair = /(-?[\d.]+) \/ (-?[\d.]+)/.exec(item);
  if (!pair) return first.form !== second.form && differ.some((one) => one.startsWith("form"));
  const [a, b] = [Number(pair[1]), Number(pair[2])];
  const scale = / in$/.test(item) ? 25.4 : 1;
  const figures = (thread: Thread): (number | undefined)[] =>
    /^angle/.test(item)
      ? [thread.angle]
      : /^tpi/.test(item)
        ? [thread.tpi]
        : /^pitch/.test(item)
          ? [thread.pitch]
          : [thread.major, thread.pitch];
  return figures(first).some(
    (figure, index) => close(figure, a * scale) && close(figures(second)[index], b * scale),
  );
}

export const adapter: Adapter = ({ input, expected }) => {
  const [one, other] = [input.first, input.second].map((text) =>
    first(threads(`${text}`), `the thread “${text}”`),
  ) as [Thread, Thread];
  const comparison = compareThreads(one, other);
  return {
    same: (expected.same as string[]).filter((item) => inCommon(comparison, item)),
    differ: (expected.differ as string[]).filter((item) => different(comparison, item)),
    interchangeable: comparison.interchangeable,
    will_start: comparison.willStart,
  };
};
