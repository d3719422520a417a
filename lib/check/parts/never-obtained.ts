import { finding } from "#lib/finding/index.ts";
import type { Rule } from "../rule.ts";
import { assembly, atMoment, off, on } from "./words.ts";

/** A part that went on and was never met before. */
export const neverObtained: Rule = {
  id: "never-obtained",
  title: "On, and never obtained",
  explanation:
    "A part that goes on has come off before, was made, was obtained, or lies in a kit. One that was never met has no number, no source and no old one to compare it with, and a stranger cannot get it. It is asked where a strip-down is known.",
  source: "common practice, no source",
  check: ({ ledger }) =>
    !ledger.stripped
      ? []
      : ledger.accounts.flatMap(({ item, name, lines }) => {
          const first = lines.find((line) => line.gained.unexplained > 0);
          if (!first || lines.some((line) => line !== first && line.event.order < first.event.order))
            return [];
          return finding({
            rule: "never-obtained",
            severity: "doubtful",
            place: { mark: first.event.mark, field: "source" },
            evidence: `${item}\n${first.gained.unexplained}`,
            found: `${name} went on${atMoment(first.event)}, and no mark says where it came from.`,
            expected:
              "A mark of it coming off, being made or obtained; a kit that holds it; or where it is from.",
            todo: "Say where it came from in the mark, or look whether it is the same part under another name.",
            source: neverObtained.source,
          });
        }),
  examples: [
    {
      says: "from nowhere",
      sketch: { marks: [off(1, "Nut"), assembly(5), on(6, "Nut"), on(7, "Washer")] },
      finds: 1,
    },
    {
      says: "it says where from",
      sketch: {
        marks: [off(1, "Nut"), assembly(5), on(6, "Nut"), on(7, "Washer", { source: "the supplier" })],
      },
      finds: 0,
    },
    {
      says: "a kit holds it",
      sketch: {
        marks: [off(1, "Nut"), assembly(5), on(6, "Nut"), on(7, "Washer")],
        kits: [{ text: "1 x Washer" }],
      },
      finds: 0,
    },
    { says: "only the assembly was filmed", sketch: { marks: [assembly(5), on(6, "Nut")] }, finds: 0 },
  ],
};
