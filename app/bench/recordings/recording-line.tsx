"use client";
import Link from "next/link";
import { useId, useState } from "react";
import { present, type Recording } from "#lib/build/index.ts";
import { publishedLink } from "#lib/procedure/index.ts";
import { sayMoment } from "#lib/time/index.ts";
import { CaptionsOf } from "../../captions/captions-of.tsx";
import { useTyped } from "../../log/typed.tsx";
import { useSession, useSessionView } from "../../session/provider.tsx";
import { CopyThatPlays } from "../copy-that-plays.tsx";
import { ClockOf } from "./clock.tsx";
import { useIndex } from "./index-state.tsx";
import { NotThere } from "./not-there.tsx";

/** A recording of a sitting: what it is, or what is wrong with it, where it lies on the sitting's clock. */
export function RecordingLine({
  recording,
  others,
  log,
}: {
  recording: Recording;
  others: readonly Recording[];
  log: string;
}) {
  const { view, ask } = useIndex();
  const { probe, trouble } = recording;
  const away = view?.away.find((one) => one.recording === recording.id);
  // A film that has only been listed can be opened: it is looked at then.
  const opens = !away && (probe ? probe.playable : !trouble);
  return (
    <li>
      <span className="grow">
        {opens ? <Link href={`${log}?recording=${recording.id}`}>{recording.name}</Link> : recording.name}
        {away ? (
          <NotThere recording={recording.id} away={away} brief={away.kind === "root-missing"} onFound={ask} />
        ) : (
          <WhatIsWrong recording={recording} />
        )}
        <SameBytes recording={recording} />
      </span>
      {probe && (
        <span className="soft small num">
          {sayMoment(probe.duration)} · {probe.width} × {probe.height} · {probe.frameCount} frames
        </span>
      )}
      {probe && <ClockOf recording={recording} others={others} />}
      <CaptionsLine recording={recording} />
      <PublishedAt recording={recording} />
    </li>
  );
}

/** Its captions, folded away: most recordings of a sitting need nothing done to theirs. */
function CaptionsLine({ recording }: { recording: Recording }) {
  const { document } = useSessionView();
  const count = present(document.captions).filter((track) => track.recordingId === recording.id).length;
  const [open, setOpen] = useState(false);
  return (
    <details style={{ flex: "1 1 100%" }} onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary className="small">{count > 0 ? "Captions" : "No captions yet"}</summary>
      {open && <CaptionsOf recording={recording} />}
    </details>
  );
}

function WhatIsWrong({ recording }: { recording: Recording }) {
  const { view, carryOut } = useIndex();
  const { probe, trouble } = recording;
  const waits = view?.state === "stopped" ? " has not been looked at yet." : " is being looked at…";
  return (
    <>
      {trouble && (
        <span className="finding" style={{ display: "block" }}>
          {trouble.found} {trouble.expected} {trouble.todo}{" "}
          {!probe && (
            <button type="button" className="plain" onClick={() => void carryOut("look again", recording.id)}>
              Look again
            </button>
          )}
        </span>
      )}
      {probe && !probe.playable && <CopyThatPlays recording={recording} />}
      {!probe && !trouble && <span className="soft">{waits}</span>}
    </>
  );
}

/** Two recordings of the same bytes, with something hanging on both: the restorer decides what to do with them. */
function SameBytes({ recording }: { recording: Recording }) {
  const { view } = useIndex();
  const session = useSession();
  const group = view?.same.find((ids) => ids.includes(recording.id)) ?? [];
  const names = group
    .filter((id) => id !== recording.id)
    .map((id) => session.row("recording", id)?.name)
    .filter((name) => typeof name === "string");
  if (names.length === 0) return null;
  return (
    <span className="soft small" style={{ display: "block" }}>
      The same film as {names.join(", ")}, byte for byte.
    </span>
  );
}

/** Where the uncut recording is published, so that print can carry the way to each second of it. */
function PublishedAt({ recording }: { recording: Recording }) {
  const session = useSession();
  const id = useId();
  const { text, change, flush } = useTyped(recording.publishedAt, (publishedAt) =>
    session.change("Address of a recording", [
      {
        table: "recording",
        row: { ...(session.row("recording", recording.id) as unknown as Recording), publishedAt },
      },
    ]),
  );
  const wrong = text.trim() !== "" && publishedLink(text, 0) === null;
  return (
    <span style={{ flex: "1 1 100%" }}>
      <label htmlFor={id}>
        Address of this film uncut, if it is published; {"{seconds}"} where the second goes, if it goes in
      </label>
      <input
        id={id}
        value={text}
        placeholder="https://video.example.org/film?t={seconds}"
        onChange={(event) => change(event.target.value)}
        onBlur={flush}
      />
      {wrong && (
        <span className="finding" style={{ display: "block" }}>
          This is not an address that begins with https://; nothing is printed for it.
        </span>
      )}
    </span>
  );
}
