import { hexagonsOf, saySource } from "#lib/reference/index.ts";
import { plain } from "../figures.ts";
import type { EntryRule } from "../rule.ts";
import { threadOfJoint } from "./torque.ts";

/** A spanner far from the hexagon of its bolt. */
export const spanner: EntryRule = {
  id: "spanner-mismatch",
  title: "Spanner and bolt",
  explanation:
    "A Whitworth spanner is marked by the bolt and not by its width, so that odd sizes across flats are right. Heads one size down are common too. A width far from every hexagon of a bolt is asked about.",
  source: "BS 1083, ISO 272, ASME B18.2.1, as in the reference tables",
  check: (sight) => {
    const { main, what } = sight;
    if (
      main?.dimension !== "length" ||
      !/\b(?:spanner|wrench|across (?:the )?flats|a\/f|af|hexagon|socket size)\b/.test(
        `${what} ${sight.entry.text.toLowerCase()}`,
      )
    )
      return [];
    const thread = threadOfJoint(sight);
    const hexagons = thread ? hexagonsOf(thread) : [];
    const mm = main.si * 1000;
    if (!thread || hexagons.length === 0 || hexagons.some((jaw) => Math.abs(jaw.mm - mm) < 0.16 * jaw.mm))
      return [];
    const [usual] = hexagons;
    return [
      {
        severity: "doubtful",
        found: `${main.raw} across flats for ${thread.name}.`,
        expected: `${plain(usual?.mm ?? 0)} mm (${usual?.name ?? ""}).`,
        ...(usual ? { source: saySource(usual.source) } : {}),
      },
    ];
  },
  examples: [
    {
      says: "a Whitworth hexagon",
      entry: { text: "0.445 in A/F", what: "spanner for the screw", context: { fastener: "3/16 BSW" } },
      finds: 0,
    },
    {
      says: "a head as for M8",
      entry: { text: "19 mm", what: "spanner for the nut", context: { fastener: "M6" } },
      finds: 1,
    },
  ],
};
