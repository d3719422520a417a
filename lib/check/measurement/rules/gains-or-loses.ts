import type { EntryRule } from "../rule.ts";
import type { Sight } from "../sight.ts";

/** A clock said to lose that is ahead, and the other way about. */
export const gainsOrLoses: EntryRule = {
  id: "gains-or-loses",
  title: "Gaining or losing",
  explanation:
    "A clock that was set right and shows more than the time is ahead: it gains. One that shows less loses. The two are easily taken for one another, and the rating nut is then turned the wrong way.",
  source: "arithmetic",
  check: (sight) => {
    const said = saidOf(sight);
    const shown = said && shownOf(sight);
    if (!said || !shown || shown === said) return [];
    return [
      {
        severity: "wrong" as const,
        found: `“${sight.entry.text}”, and the clock was ${shown === "gains" ? "ahead" : "behind"}.`,
        expected: `It ${shown}.`,
        meant: shown === "gains" ? "gaining?" : "losing?",
      },
    ];
  },
  examples: [
    {
      says: "ahead after a day",
      entry: {
        text: "losing 3 min a day",
        what: "rate of clock",
        context: {
          related: [
            { what: "set to true time", text: "12:00 Monday" },
            { what: "clock at 12:00 Tuesday", text: "12:03" },
          ],
        },
      },
      finds: 1,
    },
    {
      says: "behind after a day",
      entry: {
        text: "losing 3 min a day",
        what: "rate of clock",
        context: {
          related: [
            { what: "set to true time", text: "12:00 Monday" },
            { what: "clock at 12:00 Tuesday", text: "11:57" },
          ],
        },
      },
      finds: 0,
    },
  ],
};

type Rate = "gains" | "loses";

function saidOf({ entry, what }: Sight): Rate | null {
  const text = entry.text.toLowerCase();
  if (!/\b(?:rate|clock|watch|going|timekeep\w*|error)\b/.test(what)) return null;
  const [gains, loses] = [
    /\b(?:gain(?:s|ed|ing)?|fast)\b|^\+/.test(text),
    /\b(?:los(?:es|t|ing)|lose|slow)\b|^-/.test(text),
  ];
  return gains === loses ? null : gains ? "gains" : "loses";
}

const time = /\b([01]?\d|2[0-3])[:.]([0-5]\d)(?:[:.]([0-5]\d))?\b/;

/** What the clock showed at a time that is told. */
function shownOf({ entry }: Sight): Rate | null {
  for (const { what, text } of entry.context.related ?? []) {
    const [at, showed] = [secondsIn(what), secondsIn(text)];
    if (
      at === null ||
      showed === null ||
      !/\b(?:clock|watch|shows?|showed|reads?|reading|dial|hands)\b/i.test(what)
    )
      continue;
    const ahead = ((showed - at + 64_800) % 43_200) - 21_600;
    if (ahead !== 0) return ahead > 0 ? "gains" : "loses";
  }
  return null;
}

/** Seconds since midnight. */
function secondsIn(text: string): number | null {
  const hit = time.exec(text);
  return hit ? Number(hit[1]) * 3600 + Number(hit[2]) * 60 + Number(hit[3] ?? 0) : null;
}
