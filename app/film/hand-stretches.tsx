"use client";
import { useState } from "react";
import { type Cut, present } from "#lib/build/index.ts";
import { readTimecode, timecode } from "#lib/time/index.ts";
import { useSessionView } from "../session/provider.tsx";
import { type PutCut, Words } from "./cut-fields.tsx";

type Stretch = Cut["segments"][number];

/** A cut that is marked by hand: a few stretches, each with where it stands in the film and where it comes from. */
export function HandStretches({ cut, put }: { cut: Cut; put: PutCut }) {
  const { document } = useSessionView();
  const recordings = present(document.recordings);
  const write = (segments: Stretch[]) => put("Stretches of a film", { segments });
  const change = (index: number, set: Partial<Stretch>) =>
    write(cut.segments.map((one, at) => (at === index ? { ...one, ...set } : one)));
  const add = () => {
    const last = cut.segments.at(-1);
    const recordingId = last?.recordingId ?? recordings[0]?.id;
    if (recordingId === undefined) return;
    write([
      ...cut.segments,
      { at: last?.until ?? last?.at ?? 0, until: null, recordingId, from: 0, speed: 1 },
    ]);
  };
  return (
    <>
      <h3 style={{ marginTop: 18 }}>Stretches</h3>
      <p className="soft small">
        Times as minutes and seconds: 3:20, or 1:02:03.4. A stretch without an end goes on to the next one,
        the last to its recording's end.
      </p>
      <ol className="lines hand-stretches">
        {cut.segments.map((stretch, index) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: a stretch has no name but its place
          <li key={index}>
            <HandLine
              number={index + 1}
              stretch={stretch}
              recordings={recordings}
              change={(set) => change(index, set)}
              remove={() => write(cut.segments.filter((_, at) => at !== index))}
            />
          </li>
        ))}
      </ol>
      <button type="button" onClick={add} disabled={recordings.length === 0}>
        Another stretch
      </button>
    </>
  );
}

function HandLine(props: {
  number: number;
  stretch: Stretch;
  recordings: { id: string; name: string }[];
  change: (set: Partial<Stretch>) => void;
  remove: () => void;
}) {
  const { number, stretch, recordings, change, remove } = props;
  return (
    <fieldset>
      <legend className="soft small">Stretch {number}</legend>
      <Moment label="Film, from" value={stretch.at} keep={(at) => change({ at: at ?? 0 })} />
      <Moment label="Film, until" value={stretch.until} keep={(until) => change({ until })} />
      <label>
        Recording
        <select value={stretch.recordingId} onChange={(event) => change({ recordingId: event.target.value })}>
          {recordings.map(({ id, name }) => (
            <option key={id} value={id}>
              {name}
            </option>
          ))}
          {!recordings.some(({ id }) => id === stretch.recordingId) && (
            <option value={stretch.recordingId}>no longer in the build</option>
          )}
        </select>
      </label>
      <Moment label="Recording, from" value={stretch.from} keep={(from) => change({ from: from ?? 0 })} />
      <Speed value={stretch.speed} keep={(speed) => change({ speed })} />
      <button type="button" className="plain" onClick={remove}>
        Remove
      </button>
    </fieldset>
  );
}

/** A time as it is typed. What is no time is not kept, and the field says so until it is one. */
function Moment(props: { label: string; value: number | null; keep: (value: number | null) => void }) {
  const [unread, setUnread] = useState<string | null>(null);
  const said = props.value === null ? "" : timecode(props.value);
  const keep = (text: string) => {
    const typed = text.trim();
    const read = typed === "" ? null : readTimecode(typed);
    const isTime = typed === "" || (read !== null && read >= 0);
    setUnread(isTime ? null : typed);
    if (isTime) props.keep(read);
  };
  return (
    <div>
      <Words label={props.label} value={said} placeholder="0:00" keep={keep} />
      {unread !== null && (
        <p className="finding" role="alert">
          “{unread.slice(0, 40)}” is no time, and was not kept; {said || "none"} holds. Write minutes and
          seconds: 3:20.
        </p>
      )}
    </div>
  );
}

function Speed({ value, keep }: { value: number; keep: (speed: number) => void }) {
  const read = (text: string) => {
    const speed = Number(text.replace("%", "").replace(",", ".")) / 100;
    if (text.trim() !== "" && Number.isFinite(speed) && Math.abs(speed) <= 1000) keep(speed);
  };
  return <Words label="Speed, %" value={String(Math.round(value * 10_000) / 100)} keep={read} />;
}
