import { type Soak, soakState } from "#lib/procedure/index.ts";
import { sayWallDate, sayWallTime } from "#lib/time/index.ts";

/** What the limits of a soak mean now: "overdue since 22:00, 3 May 2026". */
export function saySoak(soak: Soak, now: number): string {
  const { state } = soakState(soak, now);
  const when = sayUntil(soak, now);
  if (state === "overdue") return `overdue ${when}`;
  return state === "ready" && soak.longest ? `ready; ${when}` : when;
}

/** The same without the word for how it stands: "since 22:00, 3 May 2026". */
export function sayUntil(soak: Soak, now: number): string {
  const { state, dueIn } = soakState(soak, now);
  switch (state) {
    case "no start":
      return "nothing says when it began";
    case "too early":
      return `not before ${sayWhen(now + (dueIn ?? 0))}`;
    case "ready":
      return dueIn === null ? "long enough" : `out by ${sayWhen(now + dueIn)}`;
    case "overdue":
      return `since ${sayWhen(now + (dueIn ?? 0))}`;
    case "over":
      return "over";
  }
}

function sayWhen(seconds: number): string {
  const zone = Intl.DateTimeFormat().resolvedOptions().timeZone;
  return `${sayWallTime(seconds * 1000, zone)}, ${sayWallDate(new Date(seconds * 1000).toISOString())}`;
}
