"use client";
import { useCallback, useEffect, useState } from "react";
import type { Still } from "#lib/build/index.ts";
import type { Mark } from "#lib/mark/index.ts";
import type { OfferedFrame } from "#lib/media/browser/sharpest.ts";
import { middleOf } from "#lib/time/index.ts";
import type { Picture } from "./picture.ts";
import { sharpestNear } from "./take-frame.ts";

type Offers = Awaited<ReturnType<typeof sharpestNear>>;

/**
 * Frames within half a second of a still, sharpest first, beside its own. Looked for at once after a still has been
 * taken from a film that is held; while it runs only when asked, so that nothing holds it up.
 */
export function Sharper({
  still,
  mark,
  picture,
  justTaken,
  onTake,
}: {
  still: Still;
  mark: Mark;
  picture: Picture;
  justTaken: boolean;
  onTake: (moment: number) => Promise<void>;
}) {
  const [offers, setOffers] = useState<Offers | "looking" | "none" | null>(null);
  const { at } = still;
  const look = useCallback(() => {
    setOffers("looking");
    sharpestNear(mark, picture, at ?? 0).then(
      (found) => setOffers(found.exact === null ? "none" : found),
      () => setOffers("none"),
    );
  }, [mark, picture, at]);
  const asked = offers !== null;
  useEffect(() => {
    if (justTaken && !asked && !picture.running) look();
  }, [justTaken, asked, picture, look]);
  if (offers === null) {
    return (
      <button type="button" className="plain" onClick={look}>
        Sharper frames near it
      </button>
    );
  }
  if (offers === "looking") return <p className="soft small">Looking for sharper frames…</p>;
  if (offers === "none") return <p className="soft small">The frames near it cannot be compared here.</p>;
  return <Offered offers={offers} picture={picture} onTake={onTake} />;
}

function Offered({
  offers,
  picture,
  onTake,
}: {
  offers: Offers;
  picture: Picture;
  onTake: (moment: number) => Promise<void>;
}) {
  const { offered, exact } = offers;
  const frames = picture.frames;
  if (!frames || !exact) return null;
  if (offered[0]?.index === exact.index) {
    return <p className="soft small">No frame within half a second is sharper.</p>;
  }
  const moment = (frame: OfferedFrame) => middleOf(frames, frame.index);
  const others = offered.filter((frame) => frame.index !== exact.index);
  return (
    <fieldset className="offers">
      <legend className="small soft">Frames near it, sharpest first</legend>
      {others.map((frame, place) => (
        <button key={frame.index} type="button" onClick={() => onTake(moment(frame))}>
          <Small frame={frame} />
          {place === 0 ? "Take the sharpest, " : "Take this, "}
          {sayApart(moment(frame) - moment(exact))}
        </button>
      ))}
      <div className="own">
        <Small frame={exact} />
        This still, at the moment
      </div>
    </fieldset>
  );
}

/** A frame as it was measured, painted into the page. */
function Small({ frame }: { frame: OfferedFrame }) {
  const { canvas } = frame;
  return (
    <span aria-hidden="true">
      <canvas
        width={canvas.width}
        height={canvas.height}
        ref={(element) => {
          element?.getContext("2d")?.drawImage(canvas, 0, 0);
        }}
      />
    </span>
  );
}

function sayApart(seconds: number): string {
  return `${Math.abs(seconds).toFixed(2)} s ${seconds < 0 ? "before" : "after"}`;
}
