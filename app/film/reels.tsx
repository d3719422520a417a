"use client";
import { useId } from "react";
import { present, type Recording } from "#lib/build/index.ts";
import type { Film, ReelMatch } from "#lib/cut/index.ts";
import { readRate, sayFrameTimecode, sayMoment } from "#lib/time/index.ts";
import { useSessionView } from "../session/provider.tsx";
import { type PutCut, Words } from "./cut-fields.tsx";

const none = "none of this build";

/** Which recording each reel is: found by its name, or said here. */
export function Reels({ film, put }: { film: Film; put: PutCut }) {
  if (film.reels.length === 0) return null;
  return (
    <>
      <h3 style={{ marginTop: 18 }}>Reels</h3>
      <ul className="lines">
        {film.reels.map((match) => (
          <ReelLine key={match.reel.key} match={match} film={film} put={put} />
        ))}
      </ul>
    </>
  );
}

function ReelLine({ match, film, put }: { match: ReelMatch; film: Film; put: PutCut }) {
  const { document } = useSessionView();
  const { reel, recordingId } = match;
  const known = film.row.reels.find((one) => one.reel === reel.key);
  const mend = (set: { recordingId?: string | null; startsAt?: string }) => {
    const line = { reel: reel.key, recordingId, startsAt: known?.startsAt ?? "", ...set };
    const others = film.row.reels.filter((one) => one.reel !== reel.key);
    put("Recording of a reel", { reels: [...others, line] });
  };
  return (
    <li>
      <span className="grow">
        <b>{reel.key}</b>
        <span className="soft small" style={{ display: "block" }}>
          {sayMoment(reel.used.start)} to {sayMoment(reel.used.end)} of it is used. {howSaid(match)}
        </span>
      </span>
      <WhichRecording
        match={match}
        recordings={present(document.recordings)}
        choose={(id) => mend({ recordingId: id })}
      />
      {film.row.form === "cmx3600" && (
        <span className="reel-start">
          <Words
            label="Its first frame bears"
            value={known?.startsAt ?? ""}
            placeholder={hourOf(match, film) ?? "00:00:00:00"}
            keep={(startsAt) => mend({ startsAt })}
          />
        </span>
      )}
    </li>
  );
}

function howSaid({ how, recordingId, startsAt, mayStartAt }: ReelMatch): string {
  if (how === "unknown") return "No recording has just this name.";
  if (recordingId === null) return "Not of this build.";
  if (startsAt === null)
    return mayStartAt === null
      ? "That lies beyond the recording's end: say what its first frame bears."
      : "That lies beyond the recording's end: it may begin at a whole hour.";
  return how === "by name" ? "Found by its name." : "As you said.";
}

/** The whole hour that a reel may begin at, as a label; null where there is none. */
function hourOf({ mayStartAt }: ReelMatch, film: Film): string | null {
  const rate = readRate(film.rate);
  if (mayStartAt === null || !rate) return null;
  const hour = String(Math.round(mayStartAt / 3600)).padStart(2, "0");
  return `${hour}${sayFrameTimecode(0n, rate).slice(2)}`;
}

function WhichRecording(props: {
  match: ReelMatch;
  recordings: readonly Recording[];
  choose: (id: string | null) => void;
}) {
  const id = useId();
  const { match, recordings, choose } = props;
  const why = new Map(match.candidates.map((one) => [one.recordingId, one.why]));
  const likely = recordings.filter((one) => why.has(one.id));
  const others = recordings.filter((one) => !why.has(one.id));
  const value = match.recordingId ?? (match.how === "by hand" ? none : "");
  return (
    <span className="reel-recording">
      <label htmlFor={id}>Recording</label>
      <select
        id={id}
        value={value}
        onChange={(event) => choose(event.target.value === none ? null : event.target.value)}
      >
        {value === "" && <option value="">not known yet</option>}
        {[...likely, ...others].map((one) => (
          <option key={one.id} value={one.id}>
            {one.name}
            {why.has(one.id) ? ` (${why.get(one.id)})` : ""}
          </option>
        ))}
        <option value={none}>{none}</option>
      </select>
    </span>
  );
}
