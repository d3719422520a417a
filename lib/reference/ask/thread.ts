import type { ThreadDesignation } from "#lib/quantity/index.ts";
import { sourceNamed } from "../source.ts";
import {
  compareThreads,
  isoForm,
  type LikeThread,
  type Thread,
  threadOf,
  threadsLike,
  unlistedNearest,
} from "../threads/index.ts";
import { diameterOf, pitchOf } from "../threads/named.ts";
import {
  bothWays,
  columnInches,
  columnMm,
  distinct,
  type Entry,
  inMillimetres,
  short,
  signed,
} from "./reply.ts";
import { besideThread, type ThreadMatter, threadEntry } from "./thread-entry.ts";

/** Which matter of a thread a text asks about. */
export function matterOf(text: string): ThreadMatter {
  if (/\btap(?:s|ped|ping)?\b/i.test(text)) return "tapping";
  if (/\bclearance|\bclear\b|\bthrough hole/i.test(text)) return "clearance";
  if (/\bspanner|\bsocket|\bwrench|\bhexagon|\bacross flats|\bflats\b/i.test(text)) return "spanner";
  if (/\btorque|\btight|\bproof|\bstress|N m\b|lbf/i.test(text)) return "strength";
  return /\bdrill/i.test(text) ? "tapping" : "all";
}

/** Answers for a thread that was named; where only figures were, for what they may be. */
export function namedThread(thread: ThreadDesignation, text: string, strength?: string): Entry[] {
  const rows = threadOf(thread);
  const measured = thread.system === "unstated" && !/^\d+(?:-\d+)?\/\d+|^\d+$/.test(thread.size);
  if (rows.length === 0 || measured) {
    const diameter = diameterOf(thread);
    const pitch = pitchOf(thread);
    if (thread.system === "unstated" && diameter !== undefined) return likeEntries({ diameter, pitch });
    return [unlisted(thread)];
  }
  const shown = thread.size === "" ? rows.slice(0, 8) : rows;
  const [first, ...others] = shown;
  if (!first) return [];
  const alike = thread.tpi === undefined && thread.pitch === undefined && thread.system !== "unstated";
  const entry = threadEntry(first, matterOf(text), thread.strength ?? strength);
  if (alike && others.length > 0) {
    const also = others.map(({ name }) => name).join(", ");
    return [{ ...entry, notes: [...entry.notes, `In other pitches: ${also}.`] }];
  }
  return [entry, ...others.map((row) => threadEntry(row, matterOf(text), thread.strength ?? strength))];
}

/** A pair of diameter and pitch that no table has. */
function unlisted(thread: ThreadDesignation): Entry {
  const nearest = unlistedNearest(thread);
  const [diameter, pitch] = [diameterOf(thread), pitchOf(thread)];
  const form = diameter !== undefined && pitch !== undefined ? isoForm(diameter, pitch) : undefined;
  const geometry = thread.system === "ISO metric" || thread.system === "UN" ? form : undefined;
  const source = sourceNamed(thread.system === "ISO metric" ? "iso724" : "asmeB11formula");
  return {
    title: thread.name,
    about: "thread, in no table here",
    says:
      nearest.length > 0
        ? `No table here has ${thread.name}. Near it are ${nearest.map(({ name }) => name).join(" and ")}: a slip of size or of pitch is likely.`
        : `No table here has ${thread.name}.`,
    figures: geometry
      ? [
          { label: "effective diameter, if it were cut", mm: geometry.effective, source },
          { label: "core diameter, if it were cut", mm: geometry.minor, source },
        ]
      : [],
    ...(nearest[0] && { beside: besideThread(nearest[0], nearest.slice(1)) }),
    notes: [],
  };
}

/** What a measured diameter (mm) and pitch (mm) can be: all candidates side by side, then the likeliest in full. */
export function likeEntries(asked: { diameter?: number; pitch?: number }): Entry[] {
  const found = threadsLike(asked);
  const words = [
    asked.diameter === undefined ? "" : `${bothWays(asked.diameter)} across`,
    asked.pitch === undefined
      ? ""
      : `pitch ${inMillimetres(asked.pitch)}, ${short(25.4 / asked.pitch, 1)} to the inch`,
  ].filter(Boolean);
  const title = `A thread of ${words.join(", ")}`;
  if (found.length === 0)
    return [
      {
        title,
        about: "measured thread",
        says: "No thread in the tables measures so. A worn screw measures less than its nominal diameter, a nut more.",
        figures: [],
        notes: [],
      },
    ];
  const shown = found.slice(0, 8);
  const best = shown.filter(({ misfit }) => misfit <= (shown[0]?.misfit ?? 0) + 0.15);
  return [
    {
      title,
      about: "measured thread",
      says: `It can be ${joined(best.map(({ thread }) => thread.name))}${shown.length > best.length ? `; less likely ${joined(shown.slice(best.length).map(({ thread }) => thread.name))}` : ""}.`,
      figures: [],
      beside: candidates(shown, title),
      notes: [
        "A screw measures a little below its nominal diameter. What size and pitch do not tell apart, the angle does: a thread gauge of the wrong angle shows light.",
      ],
    },
    ...best.slice(0, 2).map(({ thread }) => threadEntry(thread)),
  ];
}

function candidates(found: LikeThread[], title: string): NonNullable<Entry["beside"]> {
  const row = (label: string, say: (one: LikeThread) => string) => ({ label, cells: found.map(say) });
  return {
    caption: `Candidates: ${title.toLowerCase()}`,
    columns: found.map(({ thread }) => thread.name),
    rows: [
      row("outside, in", ({ thread }) => columnInches(thread.major)),
      row("outside, mm", ({ thread }) => columnMm(thread.major)),
      row("threads an inch", ({ thread }) => short(thread.tpi ?? 25.4 / thread.pitch)),
      row("pitch, mm", ({ thread }) => columnMm(thread.pitch)),
      row("angle", ({ thread }) => `${thread.angle}°`),
      row("form", ({ thread }) => thread.form.replace(/^[\d.]+° /, "")),
      row("measured less nominal", ({ diameterOff }) =>
        diameterOff === undefined ? "" : signed(diameterOff),
      ),
    ],
    sources: distinct(found.map(({ thread }) => thread.source)),
  };
}

/** Two threads that were named together. */
export function comparedThreads(first: Thread, second: Thread): Entry {
  const { same, differ, interchangeable, willStart, sources } = compareThreads(first, second);
  const says = interchangeable
    ? `${first.name} and ${second.name} go together.`
    : `${first.name} and ${second.name} do not go together: ${joined(differ)} ${differ.length > 1 ? "differ" : "differs"}.`;
  const starts =
    interchangeable || willStart === null
      ? ""
      : willStart
        ? " One starts in the other, and binds or strips."
        : " One does not start in the other.";
  return {
    title: `${first.name} and ${second.name}`,
    about: "two threads",
    says: `${says}${starts}`,
    figures:
      same.length > 0
        ? [{ label: "in common", value: joined(same), source: sources[0] ?? first.source }]
        : [],
    beside: besideThread(first, [second]),
    notes: [],
  };
}

/** "a, b and c" */
export function joined(words: readonly string[]): string {
  const [last = "", ...before] = [...words].reverse();
  return before.length === 0 ? last : `${before.reverse().join(", ")} and ${last}`;
}
