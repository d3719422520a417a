import { finding } from "#lib/finding/index.ts";
import type { Rule, Sketch } from "../rule.ts";

/** Two lines of the parts list that are one part. */
export const onePartTwoNames: Rule = {
  id: "one-part-two-names",
  title: "One part under two names",
  explanation:
    "“Cover nut” and “cover-nuts” get a number each, and the count of each is half. What was taken off under one name seems never to come back.",
  source: "ISO 6433, from public summaries: identical parts share one number",
  check: ({ procedure }) => {
    const first = new Map<string, (typeof procedure.parts)[number]>();
    return procedure.parts.flatMap((line) => {
      const folded = fold(line.name);
      const known = first.get(folded);
      if (!known) {
        first.set(folded, line);
        return [];
      }
      return finding({
        rule: "one-part-two-names",
        severity: "doubtful",
        place: { mark: line.marks[0] as string, field: "item" },
        evidence: `${known.name}\n${line.name}`,
        found: `Parts ${known.balloon} and ${line.balloon} are “${known.name}” and “${line.name}”.`,
        expected: "One name for one part.",
        todo: "Give both the same name; if they are two parts, say in the name how they differ.",
        source: onePartTwoNames.source,
      });
    });
  },
  examples: [
    { says: "one and several", sketch: named("Cover nut", "Cover nuts"), finds: 1 },
    { says: "with a hyphen", sketch: named("Needle bar", "needle-bar"), finds: 1 },
    { says: "in one word", sketch: named("Hand wheel", "Handwheel"), finds: 1 },
    { says: "with an article", sketch: named("the escape wheel", "Escape wheel"), finds: 1 },
    { says: "two parts", sketch: named("Upper bush", "Lower bush"), finds: 0 },
    { says: "numbered", sketch: named("Bush 1", "Bush 2"), finds: 0 },
    { says: "glass and glasses are not told apart by their end", sketch: named("Brass", "Bras"), finds: 0 },
    { says: "the same name", sketch: named("Dial", "Dial"), finds: 0 },
  ],
};

function named(...names: string[]): Sketch {
  return {
    marks: names.map((item, index) => [index + 1, "part", { item, event: "removed", count: "1" }] as const),
  };
}

/** A name without article, hyphens, spaces and the s of several. */
function fold(name: string): string {
  return name
    .toLowerCase()
    .replace(/^(?:the|a|an)\s+/, "")
    .replace(/[\s-]+/g, "")
    .replace(/([^s])s$/, "$1");
}
