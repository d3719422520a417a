import { near, plain, sayIn, slipWords } from "../figures.ts";
import type { EntryRule } from "../rule.ts";
import type { Fact, Sight } from "../sight.ts";

/** The packing under a sine bar. */
export const sineBar: EntryRule = {
  id: "sine-bar",
  title: "Packing under a sine bar",
  explanation:
    "A sine bar stands at the angle whose sine is the packing by the bar's length between its rollers. A packing that the angle does not give was looked up or set wrongly.",
  source: "trigonometry: packing is length by the sine of the angle",
  check: (sight) => {
    if (!/\bsine[- ](?:bar|table|plate|vice|centre)\b/.test(sight.all)) return [];
    const { main } = sight;
    const lengths = sight.facts.filter((fact) => fact.dimension === "length" && fact.from !== "limit");
    const angle = sight.facts.find(
      (fact) => fact.dimension === "angle" && fact.si > 0 && fact.si < Math.PI / 2,
    );
    const bar = lengths.find((fact) => isBar.test(fact.name) && !isPacking.test(fact.name)) ?? named(sight);
    const packing =
      lengths.find((fact) => fact !== bar && isPacking.test(fact.name)) ??
      lengths.find((fact) => fact === main && fact !== bar);
    if (!main || !angle || !bar || !packing || (main.dimension !== "length" && main !== angle)) return [];
    const should = bar.si * Math.sin(angle.si);
    if (near(should, packing.si, 0.004)) return [];
    return [
      {
        severity: "wrong" as const,
        found: `${packing.raw} under ${bar.raw} for ${angle.raw}.`,
        expected: `${sayIn(should, packing.quantity, 5)} (${plain((Math.asin(Math.min(1, packing.si / bar.si)) * 180) / Math.PI, 4)}° with ${packing.raw}).`,
        meant:
          `${sayIn(should, packing.quantity, 5)}? ${slipWords(packing.si, should, "length") ?? ""}`.trim(),
      },
    ];
  },
  examples: [
    {
      says: "ten degrees on five inches",
      entry: {
        text: "0.8682 in",
        what: "packing under the sine bar",
        context: {
          related: [
            { what: "sine bar", text: "5 in" },
            { what: "angle wanted", text: "10°" },
          ],
        },
      },
      finds: 0,
    },
    {
      says: "a tenth of it",
      entry: {
        text: "0.0868 in",
        what: "packing under the sine bar",
        context: {
          related: [
            { what: "sine bar", text: "5 in" },
            { what: "angle wanted", text: "10°" },
          ],
        },
      },
      finds: 1,
    },
  ],
};

const isBar = /\bsine[- ](?:bar|table|plate|vice)\b|\bbetween (?:the )?rollers\b|\broller centres\b/;
const isPacking = /\b(?:packing|slips?|stack|blocks?|height|under|gauges?)\b/;

/** "100 mm sine bar" in words alone. */
function named({ all, facts }: Sight): Fact | undefined {
  const said = /\b(\d{1,3}) ?(mm|in|inch)[- ]sine\b|\bsine bar,? (\d{1,3}) ?(mm|in|inch)\b/.exec(all);
  const like = facts.find((fact) => fact.dimension === "length");
  if (!said || !like) return undefined;
  const si = Number(said[1] ?? said[3]) * ((said[2] ?? said[4]) === "mm" ? 0.001 : 0.0254);
  return {
    ...like,
    name: "sine bar",
    label: "sine bar",
    raw: `${said[1] ?? said[3]} ${said[2] ?? said[4]}`,
    si,
  };
}
