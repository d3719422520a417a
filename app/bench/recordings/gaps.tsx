"use client";
import { gapsOf, type Recording } from "#lib/build/index.ts";
import { sayMoment, sayWallSpan } from "#lib/time/index.ts";

/** What was not filmed between the recordings of a sitting. */
export function GapsOf({ recordings }: { recordings: readonly Recording[] }) {
  const { clock, gaps, unknown } = gapsOf(recordings);
  if (gaps.length === 0) return null;
  const zone = Intl.DateTimeFormat().resolvedOptions().timeZone;
  const said = gaps.map(({ start, end }) =>
    clock === "wall"
      ? sayWallSpan(start * 1000, end * 1000, zone)
      : `${sayMoment(start)} to ${sayMoment(end)} of the sitting`,
  );
  return (
    <p className="soft" style={{ margin: "8px 0 0" }}>
      Nothing filmed {said.join(", nor ")}
      {clock === "wall" && ", by the times in the files"}.
      {unknown === 1 && " One film does not say when it was made, and may lie in between."}
      {unknown > 1 && ` ${unknown} films do not say when they were made, and may lie in between.`}
    </p>
  );
}
