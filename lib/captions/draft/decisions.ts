import type { Draft, DraftKind } from "./types.ts";

/**
 * What a draft is known by, whichever file it was read from: recording, kind, the span of its words, and its value in
 * one fixed form. Two drafts are the same one when recording, kind and value agree and their spans overlap.
 */
export interface DraftIdentity {
  recordingId: string;
  kind: DraftKind;
  /** Seconds of the captions' clock; half-open. */
  start: number;
  end: number;
  /** Measurements: quantity and value in SI. Parts: what was done, and the last word of the name. Empty for words. */
  value: string;
}

/** What the restorer decided about a draft. */
export interface DraftDecision {
  identity: DraftIdentity;
  verdict: "accepted" | "dropped";
  /** The mark it became. */
  markId?: string;
}

/** The identity of a draft of a recording. */
export function identityOf(draft: Draft, recordingId: string): DraftIdentity {
  return { recordingId, kind: draft.kind, start: draft.start, end: draft.end, value: figureOf(draft) };
}

function figureOf(draft: Draft): string {
  if (draft.kind === "measurement") {
    const { quantity, valueSi, highSi, designation } = draft.fields;
    if (designation !== undefined) return `thread ${designation}`;
    return [quantity, rounded(valueSi), highSi === undefined ? "" : rounded(highSi)].join(" ").trim();
  }
  if (draft.kind === "part") {
    const { action, name } = draft.fields;
    return `${action ?? ""} ${lastWord(name)}`.trim();
  }
  return "name" in draft.fields ? draft.fields.name : "";
}

/** Four digits: a value keeps its identity when it is said in another unit of the same size. */
const rounded = (value: number) => Number(value.toPrecision(4)).toString();
const lastWord = (name: string) => (name.split(" ").at(-1) ?? "").replace(/s$/, "");

/** What became of drafts and decisions when they were laid side by side. */
export interface Matched<T> {
  /** Drafts that nobody has decided yet, in their order. `formerly` is a decision about other words at the same place. */
  open: { draft: T; formerly?: DraftDecision }[];
  /** Drafts with the decision that holds for them. */
  decided: { draft: T; decision: DraftDecision }[];
  /** Decisions whose draft the captions no longer give. They are kept, since the words may come back. */
  orphaned: DraftDecision[];
}

/** How far the times of a mended file may lie from those of the old one, in seconds. */
const slack = 1.5;

/**
 * Finds for each draft the decision that was taken about it, one to one, the nearest in time first. So the same
 * captions read again, a mended file or one of another shape bring back no dropped draft and double none.
 */
export function matchDecisions<T extends { identity: DraftIdentity }>(
  drafts: readonly T[],
  decisions: readonly DraftDecision[],
): Matched<T> {
  const waiting = new Map<string, DraftDecision[]>();
  for (const decision of decisions) list(waiting, keyOf(decision.identity)).push(decision);
  for (const group of waiting.values()) group.sort((a, b) => a.identity.start - b.identity.start);
  const used = new Set<DraftDecision>();
  const found = new Map<T, DraftDecision>();
  for (const same of [true, false]) {
    for (const draft of drafts) {
      if (found.has(draft)) continue;
      const near = nearest(waiting.get(keyOf(draft.identity)) ?? [], draft.identity, used, same);
      if (!near) continue;
      found.set(draft, near);
      used.add(near);
    }
  }
  const matched: Matched<T> = { open: [], decided: [], orphaned: decisions.filter((one) => !used.has(one)) };
  for (const draft of drafts) {
    const decision = found.get(draft);
    if (!decision) matched.open.push({ draft });
    else if (decision.identity.value === draft.identity.value) matched.decided.push({ draft, decision });
    else matched.open.push({ draft, formerly: decision });
  }
  return matched;
}

const keyOf = ({ recordingId, kind }: DraftIdentity) => `${kind}\n${recordingId}`;

function list<T>(map: Map<string, T[]>, key: string): T[] {
  const known = map.get(key) ?? [];
  map.set(key, known);
  return known;
}

/** The unused decision whose span overlaps best; with the same value, or in the second round with any. */
function nearest(
  decisions: readonly DraftDecision[],
  identity: DraftIdentity,
  used: ReadonlySet<DraftDecision>,
  sameValue: boolean,
): DraftDecision | null {
  let best: DraftDecision | null = null;
  let distance = Number.POSITIVE_INFINITY;
  for (let i = firstNear(decisions, identity.start); i < decisions.length; i++) {
    const one = decisions[i] as DraftDecision;
    if (one.identity.start > identity.end + slack) break;
    if (used.has(one) || (one.identity.value === identity.value) !== sameValue) continue;
    if (one.identity.end + slack <= identity.start) continue;
    const away = Math.abs(one.identity.start - identity.start);
    if (away < distance) {
      best = one;
      distance = away;
    }
  }
  return best;
}

/** No draft is longer than this, in seconds, so that earlier decisions need not be looked at. */
const longestDraft = 120;

function firstNear(decisions: readonly DraftDecision[], start: number): number {
  let [low, high] = [0, decisions.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((decisions[middle] as DraftDecision).identity.start < start - longestDraft) low = middle + 1;
    else high = middle;
  }
  return low;
}
