"use client";
import { memo, useEffect, useId, useMemo, useRef, useState } from "react";
import type { CaptionTrack, Recording } from "#lib/build/index.ts";
import type { Cue } from "#lib/captions/index.ts";
import { timecode } from "#lib/time/index.ts";
import { CaptionsOf } from "../captions/captions-of.tsx";
import { captionsOf, cueAt } from "./drafts.ts";
import type { Picture } from "./picture.ts";

/** What is said in the recording, beside its picture: it follows the film, is searched, and pressed to go there. */
export function Spoken({
  track,
  picture,
  drafts,
}: {
  track: CaptionTrack | undefined;
  picture: Picture | null;
  /** How many drafts of this sitting wait. */
  drafts: number;
}) {
  const [wanted, setWanted] = useState("");
  const searchId = useId();
  const cues = useMemo(() => (track ? captionsOf(track).cues : []), [track]);
  const shown = useMemo(() => cuesWith(cues, wanted), [cues, wanted]);
  const [open, setOpen] = useState(false);
  if (cues.length === 0) return null;
  const searching = wanted.trim() !== "";
  return (
    <section className={open ? "spoken open" : "spoken"} aria-label="What is said">
      {/* On a phone there is room for it only when it is asked for. */}
      <button type="button" className="plain unfold" aria-expanded={open} onClick={() => setOpen(!open)}>
        What is said
      </button>
      <div className="spoken-head">
        <label htmlFor={searchId}>Search what is said</label>
        <input
          id={searchId}
          type="search"
          value={wanted}
          autoComplete="off"
          onChange={(event) => setWanted(event.target.value)}
        />
        <p className="soft small" role="status">
          {searching && `${shown.length} of ${cues.length}`}
          {!searching && drafts > 0 && `${drafts} ${drafts === 1 ? "draft waits" : "drafts wait"}`}
        </p>
      </div>
      <Cues cues={shown} picture={track?.clock === "recording" ? picture : null} follow={!searching} />
    </section>
  );
}

/** The caption file of the recording in the picture, folded away once there is one. */
export function CaptionFile({ recording, track }: { recording: Recording; track: CaptionTrack | undefined }) {
  return (
    <details className="captions-fold" open={track ? undefined : true}>
      <summary className="small">{track ? "The caption file" : "No captions yet"}</summary>
      <CaptionsOf recording={recording} />
    </details>
  );
}

/** The cues that hold the words, also where they run on from one cue into the next. */
function cuesWith(cues: readonly Cue[], wanted: string): readonly Cue[] {
  const words = fold(wanted);
  if (words === "") return cues;
  const texts = cues.map((cue) => `${fold(cue.text)} `);
  const whole = texts.join("");
  const found = new Set<number>();
  let start = 0;
  let cue = 0;
  for (let at = whole.indexOf(words); at >= 0; at = whole.indexOf(words, at + 1)) {
    while (start + (texts[cue] as string).length <= at) start += (texts[cue++] as string).length;
    for (let next = cue, from = start; from < at + words.length && next < texts.length; next++) {
      found.add(next);
      from += (texts[next] as string).length;
    }
  }
  return cues.filter((_, index) => found.has(index));
}

const fold = (text: string) => text.toLowerCase().replace(/\s+/g, " ").trim();

const Cues = memo(function Cues({
  cues,
  picture,
  follow,
}: {
  cues: readonly Cue[];
  picture: Picture | null;
  follow: boolean;
}) {
  const list = useRef<HTMLOListElement>(null);
  useEffect(() => {
    let current = -1;
    // Written straight into the page, as the moment below the picture is: the film changes it, and nothing else.
    const mark = () => {
      const place = picture ? cueAt(cues, picture.moment()) : -1;
      if (place === current || !list.current) return;
      list.current.children[current]?.removeAttribute("aria-current");
      current = place;
      const row = list.current.children[place] as HTMLElement | undefined;
      row?.setAttribute("aria-current", "true");
      if (row && follow && !list.current.contains(document.activeElement))
        list.current.scrollTop = row.offsetTop - list.current.clientHeight / 3;
    };
    const stop = picture?.watch(mark);
    return () => {
      stop?.();
      list.current?.children[current]?.removeAttribute("aria-current");
    };
  }, [cues, picture, follow]);
  /** One stop of Tab for the whole list; the arrows go from line to line. */
  const walk = (event: React.KeyboardEvent) => {
    const by = event.key === "ArrowDown" ? 1 : event.key === "ArrowUp" ? -1 : 0;
    const row = (event.target as HTMLElement).closest("li");
    const next = by > 0 ? row?.nextElementSibling : by < 0 ? row?.previousElementSibling : null;
    if (by === 0) return;
    event.preventDefault();
    event.stopPropagation();
    next?.querySelector("button")?.focus();
  };
  return (
    <ol className="cues" ref={list} onKeyDown={walk}>
      {cues.map((cue, index) => (
        <li key={`${cue.line} ${cue.start}`}>
          <button
            type="button"
            tabIndex={index === 0 ? 0 : -1}
            disabled={picture === null}
            onClick={() => picture?.goTo(cue.start)}
          >
            <span className="num">{timecode(cue.start, { tenths: false })}</span>
            <span>{cue.text}</span>
          </button>
        </li>
      ))}
    </ol>
  );
});
