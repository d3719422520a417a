import { sayIn, stepOf } from "../figures.ts";
import type { EntryRule, Remark } from "../rule.ts";
import { relatedFacts, type Sight } from "../sight.ts";

/** A size before and after something was done to it, and the wrong way about. */
export const workedSize: EntryRule = {
  id: "worked-the-wrong-way",
  title: "What a process does to a size",
  explanation:
    "Honing, boring and reaming make a hole larger; turning, grinding, skimming and filing make what is left smaller; plating and building up make it larger. A size that went the other way was misread, or the two changed places.",
  source: "common practice, no source",
  check: (sight) => worked(sight),
  examples: [
    {
      says: "a bore does not shrink by honing",
      entry: {
        text: "12.40 mm",
        what: "bore after honing",
        context: { related: [{ what: "bore before honing", text: "12.45 mm" }] },
      },
      finds: 1,
    },
    {
      says: "a journal is smaller when it has been ground",
      entry: {
        text: "24.75 mm",
        what: "journal diameter after grinding",
        context: { related: [{ what: "journal diameter before grinding", text: "25.00 mm" }] },
      },
      finds: 0,
    },
    {
      says: "a skimmed head is not thicker",
      entry: {
        text: "31.2 mm",
        what: "head thickness, skimmed",
        context: { related: [{ what: "head thickness before skimming", text: "31.0 mm" }] },
      },
      finds: 1,
    },
  ],
};

const opening =
  /\b(?:hon(?:ed|ing)|(?:re-?)?bor(?:ed|ing)|ream(?:ed|ing)|drill(?:ed|ing)|counterbor\w+|broach\w*)\b/;
const taking =
  /\b(?:turn(?:ed|ing)|(?:re-?)?gr(?:ou|i)nd(?:ing)?|skim(?:med|ming)?|fil(?:ed|ing)|(?:sur)?fac(?:ed|ing)|mill(?:ed|ing)|lapp?(?:ed|ing)|linish\w*|trim(?:med|ming)?|cut(?:ting)? (?:down|back|to length)|machin(?:ed|ing)|dress(?:ed|ing)|polish(?:ed|ing)|sand(?:ed|ing)|plan(?:ed|ing)|scrap(?:ed|ing)|tru(?:ed|ing))\b/;
const adding =
  /\b(?:plat(?:ed|ing)|chromed|built up|build(?:ing)? up|metal spray\w*|weld(?:ed|ing)|knurl(?:ed|ing)|shim(?:med|ming)|re-?lin(?:ed|ing)|sleev(?:ed|ing)|bush(?:ed|ing))\b/;
const hole =
  /\b(?:bores?|holes?|inside|i\.?d\.?|cylinder|barrel|guide|slot|keyway|groove|recess|socket|eye)\b/;
const solid =
  /\b(?:diameter|dia|o\.?d\.?|outside|journal|shaft|pin|spindle|thickness|thick|length|height|width|stem|rod|face|depth of (?:head|flange))\b/;
const after = /\b(?:after|now|finished|final|new size|once|when)\b|ed\b/;

function worked(sight: Sight): Remark[] {
  const { main, what, all } = sight;
  if (main?.dimension !== "length" || adding.test(all) || !after.test(what) || /\bbefore\b/.test(what))
    return [];
  const first = relatedFacts(sight).find(
    (fact) =>
      fact.dimension === "length" &&
      /\b(?:before|as found|original(?:ly)?|was|previous(?:ly)?|old)\b/.test(fact.name),
  );
  if (!first || !sameThing(first.name, what)) return [];
  const larger = hole.test(what) && (opening.test(what) || opening.test(first.name) || taking.test(what));
  const smaller = !hole.test(what) && solid.test(what) && (taking.test(what) || taking.test(first.name));
  const room = Math.max(stepOf(main), stepOf(first)) * 0.5;
  if (larger ? main.si >= first.si - room : !smaller || main.si <= first.si + room) return [];
  return [
    {
      severity: "doubtful",
      found: `${what} ${main.raw}, ${first.name} ${first.raw}.`,
      expected: `${larger ? "More" : "Less"} than ${sayIn(first.si, first.quantity)}.`,
      meant: "the two changed places?",
    },
  ];
}

/** Whether two labels name one size: a word of what is measured stands in both. */
function sameThing(one: string, other: string): boolean {
  const words = (text: string) =>
    text.match(/[a-z]{3,}/g)?.filter((word) => hole.test(word) || solid.test(word)) ?? [];
  const named = words(one);
  return named.length === 0 || words(other).some((word) => named.includes(word));
}
