import { type Soak, soakState } from "#lib/procedure/index.ts";
import { sayWallDate, sayWallTime } from "#lib/time/index.ts";

/** What the limits of a soak mean now: "ready; out by 22:00, 3 May 2026". */
export function saySoak(soak: Soak, now: number): string {
  const { state, dueIn } = soakState(soak, now);
  switch (state) {
    case "no start":
      return "nothing says when it began";
    case "too early":
      return `not before ${sayWhen(now + (dueIn ?? 0))}`;
    case "ready":
      return dueIn === null ? "long enough" : `ready; out by ${sayWhen(now + dueIn)}`;
    case "overdue":
      return `overdue since ${sayWhen(now + (dueIn ?? 0))}`;
    case "over":
      return "over";
  }
}

function sayWhen(seconds: number): string {
  const zone = Intl.DateTimeFormat().resolvedOptions().timeZone;
  return `${sayWallTime(seconds * 1000, zone)}, ${sayWallDate(new Date(seconds * 1000).toISOString())}`;
}
