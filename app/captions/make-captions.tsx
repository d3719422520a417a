"use client";
import Link from "next/link";
import { useCallback, useEffect, useState } from "react";
import type { Recording } from "#lib/build/index.ts";
import type { Row } from "#lib/store/tables.ts";
import { sayWords } from "../parts/send.ts";
import { fetchDocument } from "../session/build-session.ts";
import { useSession } from "../session/provider.tsx";

interface Making {
  /** Whether the restorer has set a command. */
  set: boolean;
  state: "none" | "making" | "done" | "failed";
  progress: { doing: "sound" | "words"; fraction: number | null; line: string } | null;
  words: string;
}

/** Captions from the sound of a recording, by the command that the restorer has set; how to set one where there is none. */
export function MakeCaptions({ recording }: { recording: Recording }) {
  const session = useSession();
  const [now, setNow] = useState<Making | null>(null);
  const [begun, setBegun] = useState(false);
  const address = `/media/recordings/${encodeURIComponent(recording.id)}/captions`;
  const ask = useCallback(
    async (method: "GET" | "POST" | "DELETE") => {
      const response = await fetch(address, { method }).catch(() => null);
      const said = await response?.json().catch(() => null);
      if (response?.ok) setNow(said as Making);
      else if (said) setNow({ set: true, state: "failed", progress: null, words: sayWords(said) });
    },
    [address],
  );
  useEffect(() => void ask("GET"), [ask]);
  const making = now?.state === "making";
  useEffect(() => {
    if (!making) return;
    setBegun(true);
    const timer = setInterval(() => void ask("GET"), 700);
    return () => clearInterval(timer);
  }, [making, ask]);
  const done = begun && now?.state === "done";
  useEffect(() => {
    if (!done) return;
    void fetchDocument(session.document.build.id).then((fetched) => {
      const rows = fetched?.document.captions ?? [];
      session.take(rows.map((row) => ({ table: "captionTrack", row: row as unknown as Row })));
    });
  }, [done, session]);
  if (!now) return null;
  if (!now.set) {
    return (
      <p className="soft small">
        Captions can be made from the sound by a program of your own:{" "}
        <Link href="/settings">Keys and settings</Link> says how to name it. None is set, so nothing is run.
      </p>
    );
  }
  return (
    <div style={{ marginTop: 10 }}>
      {making ? (
        <>
          <p className="small" role="status" style={{ margin: 0, overflowWrap: "anywhere" }}>
            {now.progress?.doing === "sound" ? "Taking the sound out of the film" : "The command is at work"}
            {now.progress?.line && <span className="soft">: {now.progress.line}</span>}
          </p>
          <progress
            {...(now.progress?.fraction == null ? {} : { value: now.progress.fraction })}
            max={1}
            aria-label="Making captions"
          />
          <button type="button" className="plain" onClick={() => void ask("DELETE")}>
            Stop
          </button>
        </>
      ) : (
        <button type="button" className="plain" onClick={() => void ask("POST")}>
          Make captions from its sound
        </button>
      )}
      {now.state === "failed" && begun && (
        <p className="finding" role="alert">
          {now.words}
        </p>
      )}
    </div>
  );
}
