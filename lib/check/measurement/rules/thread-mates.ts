import { compareThreads } from "#lib/reference/index.ts";
import type { EntryRule, Remark } from "../rule.ts";
import type { Named, Sight } from "../sight.ts";
import { threadsOf } from "../threads-of.ts";
import { affirmed } from "../words.ts";
import { isThread, type NamedThread, subject, threadWords } from "./threads.ts";

/** The thread of a nut, a hole or a plug against that of its mate. */
export const threadMates: EntryRule = {
  id: "mate-mismatch",
  title: "Nut and bolt",
  explanation:
    "A nut of another series strips, or starts and jams. The tables say whether two threads go together.",
  source: "ISO 261, ASME B1.1, BS 84, BS 93, BS 811, ISO 228-1, as in the reference tables",
  check: (sight) => mates(sight),
  examples: [
    {
      says: "a Whitworth nut on a BSF stud",
      entry: {
        text: "3/8 BSF",
        what: "stud thread",
        context: { related: [{ what: "nut", text: "3/8 BSW" }] },
      },
      finds: 1,
    },
    {
      says: "UNC and BSW of 1/4 in start in one another, and are not meant to",
      entry: {
        text: "1/4-20 UNC",
        what: "stud thread",
        context: { related: [{ what: "nut", text: "1/4 BSW" }] },
      },
      finds: 1,
    },
    {
      says: "two of one kind",
      entry: {
        text: "M6",
        what: "stud thread",
        context: { related: [{ what: "nut", text: "M6" }] },
      },
      finds: 0,
    },
  ],
};

const mateName =
  /\b(?:nuts?|mat(?:e|es|ing)|tapped|hole|stud|bolt|screw|body|boss|fitting|union|cap|adaptor|adapter|socket|tank|head|block|plug|thread|female|male|insert|casting|port|nipple|cone|spindle|elbow|tee|cock|pipe|hub|axle|shaft|collar|ring|tap|die|cylinder|bush|carrier|flange|crankcase|lid|cover)\b/;

const otherPurpose =
  /\b(?:next|instead|was|old|previous|original|adjacent|similar|wrong|confus\w*|nearest|not|other end|opposite end|lock|elsewhere|before|after|spanner|clearance|option|alternative|second)\b/;

const dealtWith =
  /\b(?:reject\w*|re-?tap\w*|helicoil|insert|does not fit|will not start|wrong|replace\w*|adapt\w*|re-?cut|chase\w*|mismatch\w*|doesn't|won't|returned|odd)\b/;

const adapters = /\badapt(?:o|e)r\b|\breducer\b|\breducing\b|\bstepped\b|\btwo[- ]thread/;

/** The thread of a nut, a hole or a plug against that of its mate. */
function mates(sight: Sight): Remark[] {
  const own = subject(sight);
  if (!own || affirmed(sight.remarks, dealtWith)) return [];
  if (affirmed(sight.all, adapters)) return [];
  for (const other of sight.named.filter(isThread)) {
    const [hand, mateHand] = [handOf(own), handOf(other)];
    if (other !== own && other.from === "related" && hand && mateHand && hand !== mateHand)
      return [
        {
          severity: "wrong",
          found: `${own.raw}, and ${other.label} ${other.raw}.`,
          expected: "One hand for both.",
        },
      ];
    if (
      other === own ||
      (other.from === "text" && !/\b(?:in|into|with|on|and|to|nut|hole)\b/.test(other.raw))
    )
      continue;
    if (other.from === "related" && (!mateName.test(other.label) || otherPurpose.test(other.label))) continue;
    if (other.from === "limit" || (other.from === "fastener" && !threadWords.test(sight.what))) continue;
    if (other.from === "text" && otherPurpose.test(other.raw.toLowerCase())) continue;
    const remark = apart(own, other);
    if (remark) return [remark];
  }
  return [];
}

const handOf = ({ raw, label }: Named): string | undefined =>
  /\b(left|right)[- ]?hand/.exec(`${raw} ${label}`.toLowerCase())?.[1];

function apart({ designation: own, raw }: NamedThread, other: NamedThread): Remark | null {
  const mate = other.designation;
  const [a, b] = [threadsOf(own), threadsOf(mate)];
  if (a.length === 0 || b.length === 0 || own.size === "" || mate.size === "") return null;
  const pairs = a.flatMap((x) => b.map((y) => compareThreads(x, y)));
  if (pairs.some((pair) => pair.interchangeable)) return null;
  const best =
    pairs.find((pair) => pair.same.includes("diameter") && pair.same.includes("pitch")) ?? pairs[0];
  if (!best) return null;
  const formOnly = best.same.includes("diameter") && best.same.includes("pitch");
  return {
    severity: formOnly ? "doubtful" : "wrong",
    found: `${raw}, and ${other.from === "related" ? other.label : other.from} ${other.raw}: ${best.differ.join(", ")}.`,
    expected: "One thread for both.",
    ...(formOnly ? { meant: "they start in one another, and are not meant for each other" } : {}),
  };
}
