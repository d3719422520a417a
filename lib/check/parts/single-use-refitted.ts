import { finding } from "#lib/finding/index.ts";
import type { Rule } from "../rule.ts";
import { assembly, atMoment, off, on } from "./words.ts";

/** A part that may be fitted once went back on after it had come off. */
export const singleUseRefitted: Rule = {
  id: "single-use-refitted",
  title: "Fitted a second time",
  explanation:
    "Tab washers, crush gaskets, split pins and stretch bolts are good for one fitting. Where the marks call a part single-use, the one that came off must not go back.",
  source: "the restorer's own word that it may be fitted once",
  check: ({ ledger }) =>
    ledger.accounts
      .filter(({ lines }) => lines.some(({ event }) => event.says.once === "once"))
      .flatMap(({ item, name, lines }) =>
        lines
          .filter(
            ({ act, from, event }) => act === "on" && event.stage !== "trial fit" && (from.cameOff ?? 0) > 0,
          )
          .map((line) =>
            finding({
              rule: "single-use-refitted",
              severity: "wrong",
              place: { mark: line.event.mark, field: "event" },
              evidence: `${item}\n${line.from.cameOff}`,
              found: `${name} may be fitted once, and the one that had come off went back on${atMoment(line.event)}.`,
              expected: "A new one.",
              todo: "Fit a new one and mark where it came from. If a new one was fitted, mark it as obtained or replaced.",
              source: singleUseRefitted.source,
            }),
          ),
      ),
  examples: [
    {
      says: "the old tab washer again",
      sketch: { marks: [off(1, "Tab washer", { once: "once" }), assembly(5), on(6, "Tab washer")] },
      finds: 1,
    },
    {
      says: "a new one, the old one thrown away",
      sketch: {
        marks: [
          off(1, "Tab washer", { once: "once" }),
          [2, "part", { item: "Tab washer", event: "scrapped" }],
          [3, "part", { item: "Tab washer", event: "obtained" }],
          assembly(5),
          on(6, "Tab washer"),
        ],
      },
      finds: 0,
    },
    {
      says: "a washer that may be used again",
      sketch: { marks: [off(1, "Washer"), assembly(5), on(6, "Washer")] },
      finds: 0,
    },
  ],
};
