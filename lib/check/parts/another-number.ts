import { finding } from "#lib/finding/index.ts";
import { fold } from "#lib/procedure/index.ts";
import type { Rule } from "../rule.ts";
import { assembly, atMoment, off, on } from "./words.ts";

/** A part that went on under another number than it came off, with no word of how the two belong together. */
export const anotherNumber: Rule = {
  id: "another-number",
  title: "Another number fitted",
  explanation:
    "A later number may supersede the earlier one, be a reproduction, or be another part that looks like it. A reader who orders by the number wants to know which.",
  source: "common practice, no source",
  check: ({ ledger }) =>
    ledger.accounts.flatMap(({ item, name, lines }) => {
      const events = lines.map((line) => line.event);
      const fitted = events.findLast((event) => event.says.fittedNumber !== "");
      const found = events.findLast((event) => event.says.partNumber !== "");
      const explained = events.some(({ says }) => says.supersedes !== "" || says.origin !== "");
      if (!fitted || !found || explained) return [];
      const [was, is] = [found.says.partNumber, fitted.says.fittedNumber];
      if (fold(was) === fold(is)) return [];
      return finding({
        rule: "another-number",
        severity: "advice",
        place: { mark: fitted.mark, field: "fittedNumber" },
        evidence: `${item}\n${was}\n${is}`,
        found: `${name}: ${was} as found, ${is} as fitted${atMoment(fitted)}.`,
        expected: "Which number it supersedes, or whether it is a reproduction.",
        todo: "Say it in the mark, as far as you know it.",
        source: anotherNumber.source,
      });
    }),
  examples: [
    {
      says: "two numbers",
      sketch: {
        marks: [off(1, "Seal", { partNumber: "A-12" }), assembly(5), on(6, "Seal", { fittedNumber: "B-7" })],
      },
      finds: 1,
    },
    {
      says: "the later supersedes the earlier",
      sketch: {
        marks: [
          off(1, "Seal", { partNumber: "A-12" }),
          assembly(5),
          on(6, "Seal", { fittedNumber: "B-7", supersedes: "A-12" }),
        ],
      },
      finds: 0,
    },
  ],
};
