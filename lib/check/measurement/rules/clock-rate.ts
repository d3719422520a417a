import type { EntryRule, Remark } from "../rule.ts";
import type { Sight } from "../sight.ts";

/** Gaining and losing, against what the clock showed. */
export const clockRate: EntryRule = {
  id: "clock-rate",
  title: "Gaining or losing",
  explanation:
    "A clock that shows more than the true time has gained, one that shows less has lost. The two are easily said the wrong way about, and the regulator is then turned the wrong way.",
  source: "arithmetic",
  check: (sight) => rate(sight),
  examples: [
    {
      says: "three minutes ahead after a day is no loss",
      entry: {
        text: "losing 3 min a day",
        what: "rate of clock",
        context: { related: [{ what: "clock at 12:00 Tuesday", text: "12:03" }] },
      },
      finds: 1,
    },
    {
      says: "three minutes ahead is a gain",
      entry: {
        text: "gaining 3 min a day",
        what: "rate of clock",
        context: { related: [{ what: "clock at 12:00 Tuesday", text: "12:03" }] },
      },
      finds: 0,
    },
    {
      says: "behind, over the turn of the hour",
      entry: {
        text: "gains 5 min a day",
        what: "rate",
        context: { part: "wall clock", related: [{ what: "clock shows at 9:00", text: "8:55" }] },
      },
      finds: 1,
    },
  ],
};

const time = /\b(\d{1,2})[:.](\d\d)(?:[:.](\d\d))?\b/;

/** Seconds since twelve of a time of day in a text; null where there is none. */
function secondsIn(text: string): number | null {
  const found = time.exec(text);
  if (!found) return null;
  const [, hours = "0", minutes = "0", seconds = "0"] = found;
  return ((Number(hours) % 12) * 60 + Number(minutes)) * 60 + Number(seconds);
}

function rate({ entry }: Sight): Remark[] {
  const said = /\b(gain(?:s|ing|ed)?|fast)\b|\b(los(?:es|ing|t)|slow)\b/i.exec(entry.text);
  if (!said) return [];
  for (const { what, text } of entry.context.related ?? []) {
    if (!/\b(?:clock|watch|dial|hands?|movement)\b/i.test(what) || /\bset\b|\btrue\b/i.test(text)) continue;
    const [due, shown] = [secondsIn(what), secondsIn(text)];
    if (due === null || shown === null) continue;
    // Half the dial at most: nobody tells a gain of seven hours from a loss of five.
    const ahead = ((shown - due + 64_800) % 43_200) - 21_600;
    if (ahead === 0 || ahead > 0 === Boolean(said[1])) continue;
    return [
      {
        severity: "wrong",
        found: `“${entry.text}”, and ${what}: ${text}.`,
        expected: ahead > 0 ? "A clock that is ahead has gained." : "A clock that is behind has lost.",
        meant: ahead > 0 ? "gaining?" : "losing?",
      },
    ];
  }
  return [];
}
