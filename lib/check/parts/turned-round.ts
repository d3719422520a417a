import { finding } from "#lib/finding/index.ts";
import { oneSaid, seatingsOf } from "#lib/procedure/index.ts";
import type { Rule } from "../rule.ts";
import { assembly, atMoment, off, on } from "./words.ts";

/** A part that went back another way round than it came off. */
export const turnedRound: Rule = {
  id: "turned-round",
  title: "Another way round",
  explanation:
    "The marks say which way round a part was when it came off, and another way when it went back. One of them is wrong, or it was wrong as found and that has not been said.",
  source: "the restorer's own words, compared",
  check: ({ ledger }) =>
    seatingsOf(ledger).flatMap(({ name, stamped, item, off, on, foundWrong }) => {
      const [was, is] = [oneSaid(off, "wayRound"), oneSaid(on, "wayRound")];
      if (was === null || is === null || was === is || foundWrong) return [];
      const [from, to] = [off.find((one) => one.says.wayRound), on.find((one) => one.says.wayRound)];
      return finding({
        rule: "turned-round",
        severity: "doubtful",
        place: { mark: to?.mark, field: "wayRound" },
        evidence: `${item}\n${stamped}\n${was}\n${is}`,
        found: `${name} came off “${from?.says.wayRound}”${atMoment(from)} and went on “${to?.says.wayRound}”${atMoment(to)}.`,
        expected: "The same way round, or a word that it was wrong as found.",
        todo: "Look at both moments. Turn the part, correct the words, or write in “Wrong as found” what was wrong.",
        source: turnedRound.source,
      });
    }),
  examples: [
    {
      says: "turned",
      sketch: {
        marks: [off(1, "Seal", { wayRound: "lip in" }), assembly(5), on(6, "Seal", { wayRound: "lip out" })],
      },
      finds: 1,
    },
    {
      says: "as it was",
      sketch: {
        marks: [off(1, "Seal", { wayRound: "lip in" }), assembly(5), on(6, "Seal", { wayRound: "Lip in." })],
      },
      finds: 0,
    },
    {
      says: "it was in the wrong way round",
      sketch: {
        marks: [
          off(1, "Seal", { wayRound: "lip out", foundWrong: "lip pointed out" }),
          assembly(5),
          on(6, "Seal", { wayRound: "lip in" }),
        ],
      },
      finds: 0,
    },
  ],
};
