"use client";
import Link from "next/link";
import { useId, useState } from "react";
import type { CaptionTrack, Recording } from "#lib/build/index.ts";
import { captionsOf } from "../log/drafts.ts";
import { useSession, useSessionView } from "../session/provider.tsx";
import { bringCaptions, sayProblem, tracksOf } from "./bring-captions.ts";
import { MakeCaptions } from "./make-captions.tsx";

/** The captions of a recording: what came, whose clock it keeps, what could not be read; and the way to bring others. */
export function CaptionsOf({ recording }: { recording: Recording }) {
  const session = useSession();
  useSessionView();
  const [said, setSaid] = useState<string | null>(null);
  const [over, setOver] = useState(false);
  const tracks = tracksOf(session, recording.id);
  const bring = async (file: File | undefined) => {
    if (file) setSaid(await bringCaptions(session, recording, file));
  };
  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: dropping is a second way; the file field is the first
    <div
      className={over ? "captions-of over" : "captions-of"}
      onDragOver={(event) => {
        event.preventDefault();
        event.stopPropagation();
        setOver(true);
      }}
      onDragLeave={() => setOver(false)}
      onDrop={(event) => {
        event.preventDefault();
        event.stopPropagation();
        setOver(false);
        void bring(event.dataTransfer.files[0]);
      }}
    >
      {tracks.map((track) => (
        <Track key={track.id} track={track} />
      ))}
      <div className="row-of-buttons">
        <label className="button-for-file">
          {tracks.length > 0 ? "Other captions…" : "Captions…"}
          <input
            type="file"
            accept=".vtt,.srt,.txt"
            aria-label={`${tracks.length > 0 ? "Other captions" : "Captions"} for ${recording.name}`}
            onChange={(event) => {
              const [file] = event.target.files ?? [];
              void bring(file);
              event.target.value = "";
            }}
          />
        </label>
      </div>
      <MakeCaptions recording={recording} />
      {said && (
        <p className="finding" role="alert">
          {said}
        </p>
      )}
    </div>
  );
}

function Track({ track }: { track: CaptionTrack }) {
  const session = useSession();
  const clockId = useId();
  const { cues, format, problems } = captionsOf(track);
  const put = (label: string, columns: Partial<CaptionTrack>) =>
    session.change(label, [{ table: "captionTrack", row: { ...track, ...columns } }]);
  return (
    <div className="track">
      <p className="small" style={{ margin: 0, overflowWrap: "anywhere" }}>
        {track.name}
        <span className="soft">
          {" "}
          · {format ?? "no captions"}, {cues.length} cues
        </span>
      </p>
      <label htmlFor={clockId}>Its times are those of</label>
      <select
        id={clockId}
        value={track.clock}
        onChange={(event) =>
          put("Whose clock the captions keep", { clock: event.target.value as CaptionTrack["clock"] })
        }
      >
        <option value="recording">this recording</option>
        <option value="cut">the published film</option>
      </select>
      {track.clock === "cut" && (
        <p className="soft small" style={{ margin: "6px 0" }}>
          No drafts are made from it: its times say where in the published film something is said, not where
          in this recording. On the <Link href={`/builds/${track.buildId}/film`}>film’s sheet</Link> such
          captions come to the recordings.
        </p>
      )}
      {problems.length > 0 && (
        <details className="finding advice small">
          <summary>
            {problems.length === 1 ? "One thing" : `${problems.length} things`} in this file to look at
          </summary>
          <ul className="problems">
            {problems.slice(0, 50).map((problem) => (
              <li key={`${problem.line} ${problem.found}`}>{sayProblem(problem)}</li>
            ))}
          </ul>
          {problems.length > 50 && <p>And {problems.length - 50} more.</p>}
        </details>
      )}
      <button
        type="button"
        className="plain"
        onClick={() =>
          put(`Captions taken away: ${track.name}`.slice(0, 500), { gone: new Date().toISOString() })
        }
      >
        Take these captions away
      </button>
    </div>
  );
}
