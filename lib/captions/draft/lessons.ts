import { type Context, nounAfter, nounBefore, sentenceAt } from "./context.ts";
import { quoteOf, spanOf } from "./stream.ts";
import type { DraftOf, LessonFields, Sureness } from "./types.ts";

/** Most words that a summary repeats. */
const longestSummary = 30;

/** Makes a caution, gotcha or deferred of a stretch of words. */
export function lessonOf(
  context: Context,
  kind: "caution" | "gotcha" | "deferred",
  { from, to }: { from: number; to: number },
  how: {
    reason: string;
    sureness: Sureness;
    because?: { from: number; to: number };
    harms?: "person" | "thing";
    order?: boolean;
  },
): DraftOf<"caution" | "gotcha" | "deferred", LessonFields> {
  const { stream } = context;
  const { start, end } = spanOf(stream, from, to);
  const because = how.because ? quoteOf(stream, how.because.from, how.because.to) : "";
  return {
    kind,
    start,
    end,
    quote: quoteOf(stream, from, to),
    fields: {
      summary: quoteOf(stream, from, Math.min(to, from + longestSummary)),
      about: aboutOf(context, from, to),
      ...(because === "" ? {} : { because }),
      ...(how.harms ? { harms: how.harms } : {}),
      ...(how.order ? { order: true as const } : {}),
    },
    reason: how.reason,
    sureness: how.sureness,
    from,
    to,
  };
}

/** The part a stretch of words is about: one it names, else the last one named. */
export function aboutOf(context: Context, from: number, to: number): string {
  return nounAfter(context, from, to)?.name ?? nounBefore(context, from, 40)?.name ?? "";
}

/** The sentence behind the one in which a word stands; empty at the end. */
export function nextSentence(context: Context, place: number): { from: number; to: number } {
  const here = sentenceAt(context, place);
  return here.to < context.tokens.length ? sentenceAt(context, here.to) : { from: here.to, to: here.to };
}

/** Puts overlapping and touching stretches together, the reasons of the first kept. */
export function merged<T extends { from: number; to: number }>(spans: T[], gap: number): T[] {
  const result: T[] = [];
  for (const span of [...spans].sort((a, b) => a.from - b.from)) {
    const last = result.at(-1);
    if (last && span.from - last.to <= gap) last.to = Math.max(last.to, span.to);
    else result.push({ ...span });
  }
  return result;
}
