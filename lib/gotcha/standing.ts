import { sayWallDate } from "#lib/time/index.ts";
import type { Entry } from "./book.ts";

/** How far an entry is to be trusted, from the least. */
export type Trust = "heard" | "seen once" | "repeated" | "proven";

/** What the sightings of an entry come to. Computed, never stored. */
export interface Standing {
  trust: Trust;
  happened: number;
  avoided: number;
  absent: number;
  notApplicable: number;
  /** When it last happened or was avoided; null if never. ISO 8601. */
  lastConfirmed: string | null;
  /** Why somebody should look at it again, in words; null where nobody need. */
  due: string | null;
}

/** An entry that nobody has met for so long asks to be looked at again; years, judgement. */
const YEARS = 3;

/** So many looks in a row that found nothing put it in doubt; judgement. */
const LOOKS = 3;

/**
 * The standing of an entry on a day. Sightings out of somebody else's book do not count: one's own do.
 *
 * @param today ISO 8601
 */
export function standingOf({ gotcha, joined, sightings }: Entry, today: string): Standing {
  const own = sightings.filter((one) => one.origin === "");
  const count = (outcome: string) => own.filter((one) => one.outcome === outcome).length;
  const [happened, avoided, absent] = [count("happened"), count("avoided"), count("absent")];
  const met = own.filter((one) => one.outcome === "happened" || one.outcome === "avoided");
  const lastConfirmed = met.at(-1)?.at ?? null;
  const proven = [gotcha, ...joined].some((one) => one.cause === "proven" && one.origin === "");
  const trust = met.length === 0 ? "heard" : proven ? "proven" : met.length === 1 ? "seen once" : "repeated";
  const absentSince = own.filter((one) => one.outcome === "absent" && one.at > (lastConfirmed ?? "")).length;
  return {
    trust,
    happened,
    avoided,
    absent,
    notApplicable: count("not applicable"),
    lastConfirmed,
    due: dueWhy(lastConfirmed ?? gotcha.noted, absentSince, today),
  };
}

function dueWhy(last: string, absentSince: number, today: string): string | null {
  if (absentSince >= LOOKS)
    return `looked for ${absentSince} times since it was last met, and absent each time`;
  const years = (Date.parse(today) - Date.parse(last)) / (365.25 * 86_400_000);
  return years >= YEARS ? `not met for ${Math.floor(years)} years` : null;
}

/** A standing in a few words: "seen twice, once harmless; last on 3 May 2026". */
export function sayStanding(standing: Standing): string {
  const { trust, happened, avoided, absent, lastConfirmed } = standing;
  const times = happened + avoided;
  const parts = [
    times === 0 ? "heard of, never met here" : `met ${sayTimes(times)}`,
    avoided > 0 ? `${times === avoided ? "" : `${sayTimes(avoided)} of them `}avoided` : "",
    absent > 0 ? `looked for and absent ${sayTimes(absent)}` : "",
    trust === "proven" ? "cause proven" : "",
  ];
  const last = lastConfirmed === null ? "" : `; last on ${sayWallDate(lastConfirmed)}`;
  return `${parts.filter(Boolean).join(", ")}${last}`;
}

function sayTimes(count: number): string {
  return count === 1 ? "once" : count === 2 ? "twice" : `${count} times`;
}
