"use client";
import { useEffect, useRef } from "react";
import { timecode } from "#lib/time/index.ts";
import type { Picture } from "./picture.ts";

/** Under the picture: the moment, the frame and the speed, and buttons for who has a mouse in hand. */
export function Transport({ picture }: { picture: Picture | null }) {
  const time = useRef<HTMLSpanElement>(null);
  const frame = useRef<HTMLSpanElement>(null);
  const rate = useRef<HTMLSpanElement>(null);
  const run = useRef<HTMLButtonElement>(null);
  useEffect(
    () =>
      // Written straight into the page: it changes with every frame, and nothing else on the sheet does.
      picture?.watch(() => {
        if (time.current) time.current.textContent = timecode(picture.moment());
        if (frame.current) frame.current.textContent = sayFrame(picture);
        if (rate.current) rate.current.textContent = `×${picture.rate}`;
        if (run.current) run.current.textContent = picture.running ? "Hold" : "Run";
      }),
    [picture],
  );
  if (!picture) return null;
  return (
    <div className="transport">
      <span ref={time} className="num" />
      <span ref={frame} className="soft frame" />
      <span ref={rate} className="soft num rate" />
      <span className="row-of-buttons" style={{ gap: 6 }}>
        <button
          type="button"
          className="plain"
          aria-label="One frame back"
          onClick={() => picture.stepFrames(-1)}
        >
          −1
        </button>
        <button ref={run} type="button" className="plain" onClick={() => picture.runOrHold()}>
          Run
        </button>
        <button
          type="button"
          className="plain"
          aria-label="One frame on"
          onClick={() => picture.stepFrames(1)}
        >
          +1
        </button>
      </span>
    </div>
  );
}

function sayFrame(picture: Picture): string {
  const index = picture.frame();
  if (index === null || !picture.frames) return "";
  return `frame ${index + 1} of ${picture.frames.starts.length}`;
}
