import type { ThreadDesignation } from "#lib/quantity/index.ts";
import { saySource, threadsLike } from "#lib/reference/index.ts";
import { near, plain, termNumber } from "../figures.ts";
import { type EntryRule, firstOf, type Remark } from "../rule.ts";
import type { Fact, Named, Sight } from "../sight.ts";
import { nearestThreads, threadsOf } from "../threads-of.ts";

/** A thread whose diameter, pitch and name do not belong together. */
export const threads: EntryRule = {
  id: "thread-mismatch",
  title: "Thread, pitch and diameter",
  explanation:
    "Each series of threads gives a diameter its pitch. A pitch of another series means that one of the two was misread. The tables say which thread it may have been.",
  source: "ISO 261, ASME B1.1, BS 84, BS 93, BS 811, ISO 228-1, as in the reference tables",
  check: (sight) => firstOf(sight, unlisted, pitchApart, sizeApart),
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
    { says: "a lens mount of a fine pitch", entry: { text: "M42 x 1", what: "lens mount thread" }, finds: 0 },
    {
      says: "metric of before the standard",
      entry: { text: "M5 x 0.9", what: "cover screw", context: { spec: "pre-ISO metric" } },
      finds: 0,
    },
    { says: "and else a slip", entry: { text: "M5 x 0.9", what: "cover screw" }, finds: 1 },
    { says: "3/8 BSF is no 8 mm", entry: { text: "3/8 BSF, 8.0 mm OD", what: "stud thread" }, finds: 1 },
  ],
};

/** A thread with what it is called. */
export type NamedThread = Named & { designation: ThreadDesignation };

/** Whether a designation is a thread. */
export const isThread = (named: Named): named is NamedThread => named.designation.type === "thread";

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
    const fine = finerThanListed(thread);
    if (fine === "of the series for fine threads" || ofBefore(thread, sight)) continue;
    const special =
      fine !== null ||
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

/** The pitches of ISO 261 for threads finer than its table has. */
const finePitches = [3, 2, 1.5, 1, 0.75, 0.5, 0.35, 0.25, 0.2];

/**
 * A metric thread finer than those listed for its diameter: ISO 261 names the pitches to take for one. On optical
 * parts and large rings they are usual (M42 x 1); on a small screw a misread pitch is as likely.
 */
function finerThanListed(
  thread: ThreadDesignation,
): "of the series for fine threads" | "on a small screw" | null {
  const [mm, pitch] = [Number(thread.size.replace(/^M/i, "")), termNumber(`${thread.pitch ?? Number.NaN}`)];
  if (thread.system !== "ISO metric" || !finePitches.includes(pitch)) return null;
  const listed = nearestThreads(thread).filter((row) => near(row.major, mm, 0.001));
  if (mm < 25)
    return listed.length > 0 && listed.every((row) => pitch < row.pitch) ? "on a small screw" : null;
  return pitch <= 2 ? "of the series for fine threads" : null;
}

/** Metric pitches of before 1949 in Germany (DIN 13, from memory), where the entry says that they are of that time. */
const before: Record<string, number> = { "3": 0.6, "3.5": 0.6, "4": 0.75, "5": 0.9, "9": 1.25, "11": 1.5 };
const ofBefore = ({ system, size, pitch }: ThreadDesignation, { all }: Sight): boolean =>
  system === "ISO metric" &&
  before[size.replace(/^M/i, "")] === termNumber(`${pitch}`) &&
  /\b(?:pre-?iso|pre-?war|old|obsolete|before the war|early|antique|19[0-4]\d|french|system|si thread|din)\b/.test(
    all,
  );

/** Things that have a thread. */
export const threadWords =
  /\b(?:thread|threads|tpi|pitch|screw|stud|bolt|nut|union|plug|tap|tapped|die|fastener|fitting|adaptor|adapter|outlet|inlet|boss|cap|gland|connection|nipple|cock|valve|spindle nut|cone)\b/;

/** The thread that the text is about: its own, else the fastener or the specification. */
export function subject(sight: Sight): NamedThread | undefined {
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
