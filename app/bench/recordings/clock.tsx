"use client";
import { useId, useState } from "react";
import type { Recording } from "#lib/build/index.ts";
import { present } from "#lib/build/index.ts";
import { wordsOf } from "#lib/mark/index.ts";
import {
  type ClockDoubt,
  type ClockFromMoments,
  type ClockSetting,
  clockFromMoments,
  readTimecode,
  timecode,
  toSittingTime,
} from "#lib/time/index.ts";
import { useSession, useSessionView } from "../../session/provider.tsx";

/** Where a recording lies on its sitting's clock, and how that is set. `others` lie in the same sitting. */
export function ClockOf({ recording, others }: { recording: Recording; others: readonly Recording[] }) {
  const [open, setOpen] = useState(false);
  if (others.length === 0) return null;
  return (
    <div style={{ flex: "1 1 100%" }}>
      <span className="small">
        On the sitting's clock: {sayClock(recording)}{" "}
        <button type="button" className="plain" aria-expanded={open} onClick={() => setOpen(!open)}>
          Set it by clear moments
        </button>
      </span>
      {open && <SetClock recording={recording} others={others} onDone={() => setOpen(false)} />}
    </div>
  );
}

/** "begins at 0:12.4, runs 0.02 % slow": slow when less time passes in the film than in the sitting. */
function sayClock({ offset, rate }: ClockSetting): string {
  const drift = (rate - 1) * 100;
  const runs = rate === 1 ? "" : `, runs ${percent(Math.abs(drift))} ${drift > 0 ? "slow" : "fast"}`;
  return `begins at ${timecode(offset)}${runs}`;
}

function percent(value: number): string {
  return `${value < 0.001 ? value.toExponential(0) : Number(value.toPrecision(2))} %`;
}

interface Pair {
  here: string;
  there: string;
}

const emptyPair: Pair = { here: "", there: "" };

function SetClock({
  recording,
  others,
  onDone,
}: {
  recording: Recording;
  others: readonly Recording[];
  onDone: () => void;
}) {
  const session = useSession();
  const id = useId();
  const [otherId, setOtherId] = useState(others[0]?.id ?? "");
  const [pairs, setPairs] = useState<Pair[]>([emptyPair, emptyPair]);
  const other = others.find((one) => one.id === otherId) ?? others[0];
  if (!other) return null;
  const change = (index: number, part: Partial<Pair>) =>
    setPairs(pairs.map((pair, at) => (at === index ? { ...pair, ...part } : pair)));
  const fit = fitOf(recording, other, pairs);
  const set = (clock: ClockSetting) => {
    const now = session.row("recording", recording.id) as unknown as Recording;
    session.change(`Clock of ${recording.name}`.slice(0, 500), [
      { table: "recording", row: { ...now, offset: clock.offset, rate: clock.rate } },
    ]);
    onDone();
  };
  return (
    <fieldset className="finding advice" style={{ border: 0, borderLeft: "3px solid var(--rule)" }}>
      <legend className="hidden-words">Clock of {recording.name}</legend>
      <p>
        A clear moment is one that both films show or let hear: a knock, a lamp going on. One says where this
        film begins; a second, long after it, says whether both clocks run alike.
      </p>
      <label htmlFor={id}>The other film</label>
      <select id={id} value={other.id} onChange={(event) => setOtherId(event.target.value)}>
        {others.map((one) => (
          <option key={one.id} value={one.id}>
            {one.name}
          </option>
        ))}
      </select>
      {pairs.map((pair, index) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: the rows are never moved
        <div className="form" key={index} style={{ maxWidth: "none", marginTop: 8 }}>
          <Moment
            label={`${ordinals[index]} moment in this film`}
            recording={recording}
            value={pair.here}
            onChange={(here) => change(index, { here })}
          />
          <Moment
            label={`The same in ${other.name}`}
            recording={other}
            value={pair.there}
            onChange={(there) => change(index, { there })}
          />
        </div>
      ))}
      <FitWords fit={fit} />
      <div className="row-of-buttons" style={{ marginTop: 10 }}>
        <button type="button" disabled={!fit?.ok} onClick={() => fit?.ok && set(fit.clock)}>
          {fit?.ok && fit.doubts.length > 0 ? "Set it all the same" : "Set the clock"}
        </button>
        {pairs.length < ordinals.length && (
          <button type="button" className="plain" onClick={() => setPairs([...pairs, emptyPair])}>
            Another moment
          </button>
        )}
        <button type="button" className="plain" onClick={onDone}>
          Leave it
        </button>
      </div>
    </fieldset>
  );
}

const ordinals = ["First", "Second", "Third", "Fourth"];

/** A moment of a recording, typed as minutes and seconds or taken from one of its marks. */
function Moment({
  label,
  recording,
  value,
  onChange,
}: {
  label: string;
  recording: Recording;
  value: string;
  onChange: (text: string) => void;
}) {
  const { document } = useSessionView();
  const id = useId();
  const marks = present(document.marks)
    .filter((mark) => mark.recordingId === recording.id && mark.at !== null)
    .sort((a, b) => (a.at ?? 0) - (b.at ?? 0));
  const wrong = value.trim() !== "" && readTimecode(value) === null;
  return (
    <div>
      <label htmlFor={id} style={{ overflowWrap: "anywhere" }}>
        {label}
      </label>
      <div style={{ display: "flex", gap: 8 }}>
        <input
          id={id}
          className="num"
          value={value}
          placeholder="12:03.4"
          aria-invalid={wrong}
          onChange={(event) => onChange(event.target.value)}
        />
        {marks.length > 0 && (
          <select
            aria-label={`${label}: take it from a mark`}
            value=""
            style={{ flex: "0 1 150px" }}
            onChange={(event) => onChange(event.target.value)}
          >
            <option value="">from a mark…</option>
            {marks.map((mark) => (
              <option key={mark.id} value={exact(mark.at ?? 0)}>
                {timecode(mark.at ?? 0)} {wordsOf(mark) || mark.kind}
              </option>
            ))}
          </select>
        )}
      </div>
      {wrong && <span className="small">Minutes and seconds were expected: 12:03.4</span>}
    </div>
  );
}

/** To the millisecond: a tenth, as it is printed, is two frames or more. */
function exact(seconds: number): string {
  const minutes = Math.floor(seconds / 60);
  const rest = (seconds - minutes * 60).toFixed(3);
  return rest === "60.000" ? `${minutes + 1}:00.000` : `${minutes}:${rest.padStart(6, "0")}`;
}

/** The clock that the typed moments give; null while none is complete. */
function fitOf(recording: Recording, other: Recording, pairs: readonly Pair[]): ClockFromMoments | null {
  const moments = pairs.flatMap(({ here, there }) => {
    const [at, same] = [readTimecode(here), readTimecode(there)];
    return at === null || same === null ? [] : [{ recording: at, sitting: toSittingTime(other, same) }];
  });
  if (moments.length === 0) return null;
  return clockFromMoments(moments, { rate: recording.rate, slip: frameOf(recording) + frameOf(other) });
}

/** How long a frame lasts, in seconds; a twenty-fifth where it is not known. */
function frameOf({ probe }: Recording): number {
  return probe && probe.frameCount > 0 ? probe.duration / probe.frameCount : 0.04;
}

function FitWords({ fit }: { fit: ClockFromMoments | null }) {
  if (!fit) return null;
  if (!fit.ok) return <p role="alert">{troubles[fit.why]}</p>;
  const { clock, residual, rateSlip, doubts } = fit;
  return (
    <div role="status" style={{ marginTop: 8 }}>
      <p>
        <b>This film {sayClock(clock)}.</b>
        {residual > 0.001 && ` The moments agree within ${residual.toFixed(2)} s.`}
      </p>
      {doubts.map((doubt) => (
        <p key={doubt}>{questions(clock, residual, rateSlip)[doubt]}</p>
      ))}
    </div>
  );
}

const troubles = {
  "no-moment": "Give the moment in both films.",
  "same-moment": "Both moments are the same one. Take a second that lies well after the first.",
  backwards: "What comes first in this film comes last in the other: these are not the same events.",
};

function questions(clock: ClockSetting, residual: number, rateSlip: number): Record<ClockDoubt, string> {
  return {
    rate: `Its clock would be out by ${percent(Math.abs(clock.rate - 1) * 100)}; two cameras seldom differ by more than 0.1 %. Are these the same events in both films?`,
    "too-near": `The moments lie near each other: one frame too early or too late makes the clock wrong by ${percent(rateSlip * 100)}. Take a second moment that lies further off, or leave it out.`,
    disagree: `The moments do not agree: one lies ${residual.toFixed(2)} s off. Look at each again.`,
  };
}
