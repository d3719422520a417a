import { saySource, tapDrillSuits } from "#lib/reference/index.ts";
import { plain } from "../figures.ts";
import { nominalOf } from "../nominal.ts";
import type { EntryRule, Remark } from "../rule.ts";
import type { Sight } from "../sight.ts";
import { threadsOf } from "../threads-of.ts";
import { isThread, type NamedThread } from "./threads.ts";

/** A tapping or clearing drill that does not suit its thread. */
export const threadDrills: EntryRule = {
  id: "drill-mismatch",
  title: "Drills for threads",
  explanation:
    "A tapping drill lies between the core of its thread and the crests; a clearing drill is a little larger than the screw.",
  source: "ISO 261, ASME B1.1, BS 84, BS 93, BS 811, ISO 228-1, as in the reference tables",
  check: (sight) => drills(sight),
  examples: [
    {
      says: "a tapping drill as large as the thread",
      entry: { text: "6.0 mm", what: "tapping drill", context: { fastener: "M6" } },
      finds: 1,
    },
    {
      says: "5 mm taps M6",
      entry: { text: "5.0 mm", what: "tapping drill", context: { fastener: "M6" } },
      finds: 0,
    },
  ],
};

/** Tapping and clearing drills. */
function drills(sight: Sight): Remark[] {
  const { what, main } = sight;
  if (!sight.named.some(isThread)) return [];
  const [named] = sight.named
    .filter(isThread)
    .filter((one) => one.from !== "text" || /\bfor\b/.test(sight.entry.text));
  const own = sight.facts.find((fact) => fact.dimension === "length" && /\bdrill\b/.test(fact.label));
  const drill = own ? own.si * 1000 : main?.dimension === "length" ? main.si * 1000 : drillSize(sight);
  const thread =
    (named ?? sight.named.find(isThread)) &&
    threadsOf((named ?? (sight.named.find(isThread) as NamedThread)).designation)[0];
  const words = `${what} ${own?.label ?? ""}`;
  if (!thread || drill === null || !/\b(?:drill|hole|reamer|bored?|core)\b/.test(words)) return [];
  const clears = /\b(?:clear(?:ance|ing)?|through|pass|free)\b/.test(words);
  if (clears) {
    if (drill >= thread.major * 0.998 && drill <= thread.major * 1.35 + 1) return [];
    return [
      {
        severity: "wrong",
        found: `${sight.entry.text} to clear ${thread.name}.`,
        expected: `More than ${plain(thread.major)} mm, the diameter of the screw, by a little.`,
        source: saySource(thread.source),
      },
    ];
  }
  if (!/\btap|\bcore|\bthread/.test(words)) return [];
  const suit = tapDrillSuits(thread, drill);
  if (suit.suits || (suit.percent !== undefined && suit.percent > 48 && suit.percent < 100)) return [];
  return [
    {
      severity: "wrong",
      found: `${sight.entry.text} for ${thread.name}: ${suit.why}.`,
      expected: suit.expected
        ? `${suit.expected.drill.name} (${plain(suit.expected.drill.mm)} mm).`
        : "A drill between core and crest.",
      ...(suit.expected
        ? { meant: `${suit.expected.drill.name}?`, source: saySource(suit.expected.source) }
        : {}),
    },
  ];
}

function drillSize({ named }: Sight): number | null {
  const drill = named.find((one) => one.from === "text" && one.designation.type === "drill");
  return drill ? nominalOf(drill.designation) : null;
}
