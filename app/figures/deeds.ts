import { newStill, present, type Still } from "#lib/build/index.ts";
import type { Drawing } from "#lib/figure/index.ts";
import type { Mark } from "#lib/mark/index.ts";
import { changeStill } from "../log/deeds.ts";
import type { BuildSession } from "../session/build-session.ts";

/** What the restorer does on a figure's sheet, as changes of rows. Each is one command in the history. */

/** The still as it now is, whatever this screen last showed. */
export function stillNow(session: BuildSession, id: string): Still | undefined {
  return session.row("still", id) as unknown as Still | undefined;
}

/** Changes what is drawn on a still, or how it is shown. */
export function draw(
  session: BuildSession,
  id: string,
  label: string,
  change: (drawing: Drawing) => Drawing,
): void {
  const still = stillNow(session, id);
  if (still) changeStill(session, still, label, { drawing: change(still.drawing) });
}

/** The views of a mark, in their order. */
export function viewsOf(session: BuildSession, markId: string): Still[] {
  return present(session.document.stills)
    .filter((still) => still.markId === markId)
    .sort((a, b) => a.rank - b.rank || (a.at ?? 0) - (b.at ?? 0) || (a.id < b.id ? -1 : 1));
}

/** Moves a view before the one in front of it, or behind the next. All views of the mark are numbered anew. */
export function moveView(session: BuildSession, still: Still, by: -1 | 1): void {
  const views = viewsOf(session, still.markId);
  const place = views.findIndex((one) => one.id === still.id);
  const [moved] = views.splice(place, 1);
  if (!moved || place + by < 0 || place + by > views.length) return;
  views.splice(place + by, 0, moved);
  session.change(
    by < 0 ? "A view moved forward" : "A view moved back",
    views.map((row, rank) => ({ table: "still" as const, row: { ...row, rank } })),
  );
}

/** Shows a still of the build at another mark too, as a view of its own with nothing drawn on it yet. */
export function addView(session: BuildSession, mark: Mark, from: Still): Still {
  const { source, recordingId, at, sha256, width, height, alt } = from;
  const still = newStill({
    id: crypto.randomUUID(),
    buildId: mark.buildId,
    markId: mark.id,
    rank: Math.max(0, ...viewsOf(session, mark.id).map((one) => one.rank)) + 1,
    ...{ source, recordingId, at, sha256, width, height, alt },
  });
  session.change("A further view", [{ table: "still", row: still }]);
  return still;
}
