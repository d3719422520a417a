import { colourBands } from "#lib/reference/index.ts";
import { near } from "../figures.ts";
import type { EntryRule, Remark } from "../rule.ts";
import type { Sight } from "../sight.ts";
import { decisionIn, isMeasured } from "../words.ts";

/** A resistor's value against its coloured bands. */
export const colourCode: EntryRule = {
  id: "colour-bands-mismatch",
  title: "Colour bands",
  explanation:
    "The bands of a resistor say one value and how far the real one may lie from it. A nominal value that they do not say was misread.",
  source: "IEC 60062",
  check: (sight) => bands(sight),
  examples: [
    {
      says: "brown, black, orange is 10 kΩ",
      entry: { text: "1 kΩ", what: "bias resistor", context: { spec: "bands brown, black, orange" } },
      finds: 1,
    },
    {
      says: "brown, black, green is 1 MΩ",
      entry: { text: "1 MΩ", what: "grid leak", context: { spec: "bands brown, black, green" } },
      finds: 0,
    },
  ],
};

const allBands =
  /\b(?:black|brown|red|orange|yellow|green|blue|violet|purple|gr[ae]y|white)\b[\s,/-]+(?:and )?\b(?:black|brown|red|orange|yellow|green|blue|violet|purple|gr[ae]y|white)\b[\s,/-]+(?:and )?\b(?:black|brown|red|orange|yellow|green|blue|violet|purple|gr[ae]y|white|gold|silver)\b/;

function bands({ main, entry }: Sight): Remark[] {
  if (main?.dimension !== "resistance") return [];
  const { spec, related = [], part } = entry.context;
  const told = [spec, part, entry.what, ...related.flatMap((one) => [one.text, one.what]), entry.text].find(
    (text) => text !== undefined && allBands.test(text.toLowerCase()),
  );
  if (!told) return [];
  const own =
    told === entry.text && /[(=]/.test(entry.text)
      ? entry.text.slice(
          entry.text.search(/[a-z]*(?:black|brown|red|orange|yellow|green|blue|violet|gr[ae]y|white)/i),
        )
      : told;
  const code = colourBands(own.replace(/\([^)]*\d[^)]*\)/g, ""));
  if (!code) return [];
  const nominal = !isMeasured(`${entry.what} ${entry.context.instrument ?? ""}`.toLowerCase());
  const room = nominal ? 0.01 : Math.max(code.tolerance / 100, 0.2) * 1.6;
  if (near(main.si, code.ohms, room)) return [];
  const decided = decisionIn((entry.context.verdict ?? "").toLowerCase());
  if (!nominal && decided === "rejected") return [];
  const should = sayOhms(code.ohms);
  return [
    {
      severity: nominal || main.si / code.ohms > 5 || main.si / code.ohms < 0.2 ? "wrong" : "doubtful",
      found: `${main.raw}; the bands are ${own.trim()}.`,
      expected: should,
      meant: `${should}?`,
      source: "IEC 60062",
    },
  ];
}

const sayOhms = (ohms: number): string =>
  ohms >= 1e6 ? `${ohms / 1e6} MΩ` : ohms >= 1e3 ? `${ohms / 1e3} kΩ` : `${ohms} Ω`;
