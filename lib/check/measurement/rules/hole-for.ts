import { near, sayIn, stepOf } from "../figures.ts";
import type { EntryRule, Remark } from "../rule.ts";
import { relatedFacts, type Sight } from "../sight.ts";
import { decisionIn } from "../words.ts";

/** A hole that is called after what goes through it. */
export const holeFor: EntryRule = {
  id: "hole-too-small",
  title: "A hole smaller than what goes through it",
  explanation:
    "A rivet hole takes its rivet and a spoke hole its spoke. Where the hole is called after what goes through it and is the smaller of the two, one of them was misread, unless it is tapped or the fit is a press fit.",
  source: "arithmetic",
  check: (sight) => {
    const { main, what } = sight;
    if (main?.dimension !== "length" || !/\b(?:hole|slot|eye)\b/.test(what)) return [];
    if (
      /\b(?:tapp(?:ed|ing)|thread(?:ed)?|core|press|drive|driven|pilot|force|depth|pitch|cent(?:re|er)s?)\b/.test(
        sight.all,
      )
    )
      return [];
    if (decisionIn(`${sight.verdict} ${sight.remarks}`) === "rejected") return [];
    const through = relatedFacts(sight).find(
      (fact) => fact.dimension === "length" && isCalledAfter(what, fact.name),
    );
    return through && main.si < through.si - stepOf(main) * 0.3
      ? said(sight, main.raw, through.raw, through.si)
      : [];
  },
  examples: [
    {
      says: "a rivet of 5 mm",
      entry: { text: "4.8 mm", what: "rivet hole", context: { related: [{ what: "rivet", text: "5 mm" }] } },
      finds: 1,
    },
    {
      says: "goes through 5.1 mm",
      entry: { text: "5.1 mm", what: "rivet hole", context: { related: [{ what: "rivet", text: "5 mm" }] } },
      finds: 0,
    },
  ],
};

const isCalledAfter = (what: string, name: string): boolean => {
  const thing = name.replace(/\b(?:diameter|dia|size|of|the|thickness)\b/g, "").trim();
  return (
    /^[a-z][a-z -]{2,20}$/.test(thing) &&
    (what.includes(`${thing} hole`) ||
      what.includes(`hole for ${thing}`) ||
      what.includes(`hole for the ${thing}`))
  );
};

function said({ main, what }: Sight, hole: string, thing: string, si: number): Remark[] {
  const factor = main ? [10, 25.4].find((one) => near(main.si * one, si, 0.2)) : undefined;
  return [
    {
      severity: "wrong",
      found: `${what} ${hole}, for ${thing}.`,
      expected: `More than ${thing}.`,
      ...(main && factor ? { meant: `${sayIn(main.si * factor, main.quantity, 3)}?` } : {}),
    },
  ];
}
