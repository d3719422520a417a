import type { ThreadDesignation } from "#lib/quantity/index.ts";
import { compareThreads, saySource, tapDrillSuits, threadsLike } from "#lib/reference/index.ts";
import { near, plain } from "../figures.ts";
import { nominalOf } from "../nominal.ts";
import type { EntryRule, Remark } from "../rule.ts";
import type { Fact, Named, Sight } from "../sight.ts";
import { nearestThreads, threadsOf } from "../threads-of.ts";
import { affirmed } from "../words.ts";

/** A thread whose diameter, pitch and name do not belong together, and mates that do not fit. */
export const threads: EntryRule = {
  id: "thread-mismatch",
  title: "Thread, pitch, diameter and mate",
  explanation:
    "Each series of threads gives a diameter its pitch. A pitch of another series means that one of the two was misread; a nut of another series strips, or starts and jams. The tables say which thread it may have been.",
  source: "ISO 261, ASME B1.1, BS 84, BS 93, BS 811, ISO 228-1, as in the reference tables",
  check: (sight) =>
    [...unlisted(sight), ...pitchApart(sight), ...sizeApart(sight), ...mates(sight), ...drills(sight)].slice(
      0,
      1,
    ),
  examples: [
    {
      says: "18 to the inch is Whitworth",
      entry: { text: "5/16 BSF, 18 tpi", what: "stud thread" },
      finds: 1,
    },
    { says: "M8 has no 1.5", entry: { text: "M8 x 1.5", what: "bolt thread" }, finds: 1 },
    { says: "M8 has a fine 1.0", entry: { text: "M8 x 1.0", what: "bolt thread" }, finds: 0 },
    {
      says: "a pipe size is no diameter",
      entry: { text: "3/4 BSP, 26.4 mm OD, 14 tpi", what: "outlet" },
      finds: 0,
    },
    {
      says: "1 BA measures 5.3 mm",
      entry: { text: "5.3 mm, pitch 0.90 mm", what: "grub screw thread", context: { fastener: "1BA" } },
      finds: 0,
    },
    { says: "3/8 BSF is no 8 mm", entry: { text: "3/8 BSF, 8.0 mm OD", what: "stud thread" }, finds: 1 },
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
      says: "a tapping drill as large as the thread",
      entry: { text: "6.0 mm", what: "tapping drill", context: { fastener: "M6" } },
      finds: 1,
    },
    {
      says: "5 mm taps M6",
      entry: { text: "5.0 mm", what: "tapping drill", context: { fastener: "M6" } },
      finds: 0,
    },
  ],
};

type NamedThread = Named & { designation: ThreadDesignation };
const isThread = (named: Named): named is NamedThread => named.designation.type === "thread";
const withTables = ["ISO metric", "UN", "BSW", "BSF", "BA", "BSP", "BSC", "BSB", "NPT"];

/** A pair of size and pitch that the tables of its system do not have. */
function unlisted(sight: Sight): Remark[] {
  for (const one of sight.named.filter(isThread)) {
    const thread = one.designation;
    if (
      !withTables.includes(thread.system) ||
      (thread.tpi === undefined && thread.pitch === undefined) ||
      thread.size === ""
    )
      continue;
    if (threadsOf(thread).length > 0) continue;
    const near = nearestThreads(thread).map((row) => row.name);
    if (near.length === 0) continue;
    const special =
      (thread.system === "UN" && !/UN[CF]/.test(thread.series ?? "")) ||
      thread.system === "BSC" ||
      /\bspecial|non-?standard|odd\b/.test(sight.all);
    return [
      {
        severity: special ? "doubtful" : "wrong",
        found: `${one.raw}: the tables of ${thread.series ?? thread.system} have no such pair of diameter and pitch.`,
        expected: near.join(" or "),
        meant: `${near[0]}?`,
      },
    ];
  }
  return [];
}

const threadWords =
  /\b(?:thread|threads|tpi|pitch|screw|stud|bolt|nut|union|plug|tap|tapped|die|fastener|fitting|adaptor|adapter|outlet|inlet|boss|cap|gland|connection|nipple|cock|valve|spindle nut|cone)\b/;

/** The thread that the text is about: its own, else the fastener or the specification. */
function subject(sight: Sight): NamedThread | undefined {
  const all = sight.named.filter(isThread).filter((one) => one.from !== "related");
  return all.find((one) => one.from === "text") ?? (threadWords.test(sight.what) ? all[0] : undefined);
}

function pitchApart(sight: Sight): Remark[] {
  if (!sight.named.some(isThread) && !sight.facts.some((fact) => fact.dimension === "thread pitch"))
    return [];
  const own = subject(sight);
  const pitches = sight.facts.filter(
    (fact) => (fact.from === "text" || fact.from === "related") && isPitch(fact, sight),
  );
  const [measured] = pitches;
  const compared = own
    ? [own]
    : sight.named.filter(isThread).filter((one) => one.from === "fastener" || one.from === "spec");
  if (!measured) return [];
  if (
    pitches.length > 1 &&
    pitches[1] &&
    !near(pitchOf(measured), pitchOf(pitches[1]), 0.02) &&
    pitches[1].from !== "related"
  )
    return [{ severity: "wrong", found: `“${sight.entry.text}” gives two pitches.`, expected: "One pitch." }];
  for (const named of compared) {
    const candidates = threadsOf(named.designation);
    if (candidates.length === 0 || candidates.some((row) => near(row.pitch, pitchOf(measured), 0.021)))
      continue;
    const [usual] = candidates;
    if (!usual) continue;
    const likes = threadsLike({ diameter: usual.major, pitch: pitchOf(measured) }).map(
      (like) => like.thread.name,
    );
    return [
      {
        severity: "wrong",
        found: `${named.designation.name} with ${measured.raw === named.raw ? sayPitch(measured) : measured.raw}.`,
        expected: `${usual.name}: ${usual.tpi ? `${usual.tpi} tpi` : `pitch ${plain(usual.pitch)} mm`}.`,
        ...(likes[0] ? { meant: `${likes[0]}?` } : {}),
        source: saySource(usual.source),
      },
    ];
  }
  return [];
}

const sayPitch = (fact: Fact): string =>
  fact.dimension === "thread pitch"
    ? `${plain(25.4 / pitchOf(fact))} tpi`
    : `a pitch of ${plain(pitchOf(fact))} mm`;

function isPitch(fact: Fact, { what, reading }: Sight): boolean {
  if (fact.dimension === "thread pitch")
    return fact.from === "text" || /pitch|tpi|thread|gauge/.test(fact.name);
  if (
    fact.dimension !== "length" ||
    /\bpitch circle|p\.?c\.?d|chain|propeller|rivet|hole|effective|pitch diameter\b/.test(fact.label)
  )
    return false;
  if (reading.kind === "product" && fact.from === "text")
    return (
      reading.quantities.length === 2 &&
      fact.si < 0.0065 &&
      fact.si === reading.quantities[1]?.si &&
      threadWords.test(what)
    );
  const only = fact.from === "text" && /\bpitch\b/.test(what) && fact.si < 0.0065;
  return (
    /\bpitch\b/.test(fact.label.replace(what, "")) ||
    (only && !/\b(?:od|diameter|dia)\b/.test(fact.label)) ||
    (fact.from === "related" && /\bpitch\b/.test(fact.name))
  );
}

/** Pitch in mm. */
const pitchOf = (fact: Fact): number => (fact.dimension === "thread pitch" ? 1000 / fact.si : fact.si * 1000);

/** A measured outside diameter against the diameter of the thread. */
function sizeApart(sight: Sight): Remark[] {
  const own = subject(sight);
  if (
    !own ||
    (!threadWords.test(sight.what) && own.from !== "text") ||
    /\btorque|spanner|wrench|length|drill|hole size|clear|key\b/.test(sight.what)
  )
    return [];
  const candidates = threadsOf(own.designation);
  const measured = sight.facts.find(
    (fact) =>
      fact.dimension === "length" &&
      (fact.from === "text" ||
        (fact.from === "related" &&
          /\b(?:od|outside|major|over|crest|diameter)\b/.test(fact.name) &&
          /thread|stud|bolt|screw|crest|major|diameter over/.test(fact.name))) &&
      !isPitch(fact, sight) &&
      isOutside(fact, sight),
  );
  const [usual] = candidates;
  if (!measured || !usual) return [];
  const mm = measured.si * 1000;
  const core = /\b(?:core|minor|root|inside|i\.?d|bore)\b/.test(measured.label);
  const suits = candidates.some((row) =>
    core
      ? mm >= (row.minor ?? row.major - 1.3 * row.pitch) * 0.97 && mm <= row.major * 0.97
      : mm <= row.major * 1.012 + 0.05 && mm >= row.major * 0.965 - 0.1 - 0.08 * row.pitch,
  );
  if (suits) return [];
  const pitch = sight.facts.find((fact) => isPitch(fact, sight));
  const likes = threadsLike({ diameter: mm, ...(pitch ? { pitch: pitchOf(pitch) } : {}) }).map(
    (like) => like.thread.name,
  );
  return [
    {
      severity: "wrong",
      found: `${measured.raw} for ${own.designation.name}.`,
      expected: `${usual.name} is ${plain(usual.major)} mm (${plain(usual.major / 25.4)} in) over the crests.`,
      ...(likes[0] ? { meant: `${likes[0]}?` } : {}),
      source: saySource(usual.source),
    },
  ];
}

const isOutside = (fact: Fact, { what }: Sight): boolean =>
  !/\b(?:long|length|deep|depth|a\/?f|across|flats|tapping|drill|hex|head|thick|engagement|reach|counterbore|washer|pcd|below|above|spanner)\b|a\/f/.test(
    `${fact.label} ${fact.raw.toLowerCase()}`,
  ) && !/\blength|depth|reach\b/.test(what);

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

/** Tapping and clearing drills. */
function drills(sight: Sight): Remark[] {
  const { what, main } = sight;
  if (!sight.named.some(isThread)) return [];
  const [named] = sight.named
    .filter(isThread)
    .filter((one) => one.from !== "text" || /\bfor\b/.test(sight.entry.text));
  const own = sight.facts.find((fact) => fact.dimension === "length" && /\bdrill\b/.test(fact.label));
  const drill = own ? own.si * 1000 : main?.dimension === "length" ? main.si * 1000 : drillSize(sight);
  const thread =
    (named ?? sight.named.find(isThread)) &&
    threadsOf((named ?? (sight.named.find(isThread) as NamedThread)).designation)[0];
  const words = `${what} ${own?.label ?? ""}`;
  if (!thread || drill === null || !/\b(?:drill|hole|reamer|bored?|core)\b/.test(words)) return [];
  const clears = /\b(?:clear(?:ance|ing)?|through|pass|free)\b/.test(words);
  if (clears) {
    if (drill >= thread.major * 0.998 && drill <= thread.major * 1.35 + 1) return [];
    return [
      {
        severity: "wrong",
        found: `${sight.entry.text} to clear ${thread.name}.`,
        expected: `More than ${plain(thread.major)} mm, the diameter of the screw, by a little.`,
        source: saySource(thread.source),
      },
    ];
  }
  if (!/\btap|\bcore|\bthread/.test(words)) return [];
  const suit = tapDrillSuits(thread, drill);
  if (suit.suits || (suit.percent !== undefined && suit.percent > 48 && suit.percent < 100)) return [];
  return [
    {
      severity: "wrong",
      found: `${sight.entry.text} for ${thread.name}: ${suit.why}.`,
      expected: suit.expected
        ? `${suit.expected.drill.name} (${plain(suit.expected.drill.mm)} mm).`
        : "A drill between core and crest.",
      ...(suit.expected
        ? { meant: `${suit.expected.drill.name}?`, source: saySource(suit.expected.source) }
        : {}),
    },
  ];
}

function drillSize({ named }: Sight): number | null {
  const drill = named.find((one) => one.from === "text" && one.designation.type === "drill");
  return drill ? nominalOf(drill.designation) : null;
}
