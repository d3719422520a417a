import { finding } from "#lib/finding/index.ts";
import { fastenersOf } from "#lib/procedure/index.ts";
import type { Rule } from "../rule.ts";
import { assembly, atMoment, off, on } from "./words.ts";

/** A fastener that has a torque, is on, and was never torqued. */
export const notTorqued: Rule = {
  id: "not-torqued",
  title: "Fitted, not torqued",
  explanation:
    "Fitted is one fact and torqued is another. A nut that was run on with the fingers looks the same on the film an hour later.",
  source: "common practice, no source",
  check: ({ ledger, document }) =>
    fastenersOf(ledger, document).flatMap(({ item, name, fitted, on, torqued, figure }) => {
      if (!fitted || torqued >= on) return [];
      return finding({
        rule: "not-torqued",
        severity: "wrong",
        place: { mark: fitted.mark, field: "tightness" },
        evidence: `${item}\n${on}\n${torqued}\n${figure}`,
        found: `${name}: ${on} on${atMoment(fitted)}, ${torqued === 0 ? "none" : torqued} torqued${figure ? ` to ${figure}` : ""}.`,
        expected: "A mark that says it was torqued, after it was fitted.",
        todo: "Mark the moment when it was torqued. If that was not filmed, torque it again and mark it.",
        source: notTorqued.source,
      });
    }),
  examples: [
    {
      says: "run on with the fingers",
      sketch: { marks: [assembly(5), on(6, "Nut", { count: "4", tightness: "finger-tight" })] },
      finds: 1,
    },
    {
      says: "a torque is specified for it",
      sketch: {
        marks: [
          assembly(5),
          on(6, "Nut"),
          [7, "measurement", { words: "Torque", item: "Nut", specified: { typed: "12 lbf ft" } }],
        ],
      },
      finds: 1,
    },
    {
      says: "torqued afterwards",
      sketch: {
        marks: [
          assembly(5),
          on(6, "Nut", { count: "4", torque: { typed: "12 lbf ft" } }),
          [8, "part", { item: "Nut", event: "torqued" }],
        ],
      },
      finds: 0,
    },
    {
      says: "three of four",
      sketch: {
        marks: [
          assembly(5),
          on(6, "Nut", { count: "4", torque: { typed: "12 lbf ft" } }),
          [8, "part", { item: "Nut", event: "torqued", count: "3" }],
        ],
      },
      finds: 1,
    },
    {
      says: "torqued, then off and on again",
      sketch: {
        marks: [assembly(5), on(6, "Nut", { tightness: "torqued" }), off(7, "Nut"), on(8, "Nut")],
      },
      finds: 1,
    },
    { says: "no torque is known for it", sketch: { marks: [assembly(5), on(6, "Cover")] }, finds: 0 },
  ],
};
