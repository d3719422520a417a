import { near, plain } from "../figures.ts";
import { nominalOf } from "../nominal.ts";
import { productNames } from "../product-names.ts";
import type { EntryRule } from "../rule.ts";
import type { Sight } from "../sight.ts";

/** Diameter and length of a bolt against its thread. */
export const boltSize: EntryRule = {
  id: "bolt-size",
  title: "A bolt's diameter and length",
  explanation:
    "A bolt is called after its diameter, then its length. Where the thread is known, the diameter is the thread's; if it is the length that fits the thread, the two changed places.",
  source: "the thread tables",
  check: (sight) => {
    const { reading, named, entry } = sight;
    if (reading.kind !== "product" || reading.quantities.length !== 2) return [];
    const names = productNames(sight);
    if (!names) return [];
    const [a, b] = reading.quantities;
    const first = (names[0] ?? "").toLowerCase();
    const thread = named.find((one) => one.from === "fastener" || one.from === "spec");
    const mm = thread ? nominalOf(thread.designation) : null;
    if (!a || !b || mm === null || !isBolt(sight)) return [];
    const [dia, length] = /\b(?:length|long)\b/.test(first) ? [b, a] : [a, b];
    if (near(dia.si * 1000, mm, 0.03) || !near(length.si * 1000, mm, 0.03)) return [];
    return [
      {
        severity: "wrong" as const,
        found: `“${entry.text}” for ${thread?.designation.name}.`,
        expected: `A diameter of ${plain(mm, 4)} mm.`,
        meant: "the two changed places?",
      },
    ];
  },
  examples: [
    {
      says: "two and a half inches thick",
      entry: {
        text: "2-1/2 x 3/8 in (dia x length)",
        what: "holding-down bolt",
        context: { fastener: "3/8 BSW" },
      },
      finds: 1,
    },
    {
      says: "two and a half inches long",
      entry: {
        text: "3/8 x 2-1/2 in (dia x length)",
        what: "holding-down bolt",
        context: { fastener: "3/8 BSW" },
      },
      finds: 0,
    },
    {
      says: "length by diameter, if it says so",
      entry: { text: "40 x 8 mm (length x dia)", what: "stud", context: { fastener: "M8" } },
      finds: 0,
    },
  ],
};

const isBolt = ({ what, part }: Sight): boolean =>
  /\b(?:bolt|screw|stud|set ?screw|rod|coach)s?\b/.test(`${what} ${part}`) &&
  !/\b(?:head|plate|washer|slot|keyway|hole)\b/.test(what);
