"use client";
import { useEffect, useState } from "react";
import type { Recording } from "#lib/build/index.ts";
import type { Row } from "#lib/store/tables.ts";
import { sayWords } from "../parts/send.ts";
import { fetchDocument } from "../session/build-session.ts";
import { useSession } from "../session/provider.tsx";

interface Progress {
  ffmpeg: boolean;
  state: "none" | "making" | "done" | "failed";
  fraction: number;
  words: string;
}

/** Makes a copy of a recording that this browser cannot show, so that it plays and keeps its moments. */
export function CopyThatPlays({ recording }: { recording: Recording }) {
  const session = useSession();
  const [progress, setProgress] = useState<Progress | null>(null);
  const address = `/media/recordings/${encodeURIComponent(recording.id)}/copy`;
  const ask = async (method: "GET" | "POST" | "DELETE") => {
    const response = await fetch(address, { method });
    const answer = await response.json();
    setProgress(
      response.ok
        ? (answer as Progress)
        : { ffmpeg: false, state: "failed", fraction: 0, words: sayWords(answer) },
    );
  };
  const making = progress?.state === "making";
  const done = progress?.state === "done";
  // biome-ignore lint/correctness/useExhaustiveDependencies: asked again only while a copy is being made
  useEffect(() => {
    if (!making) return;
    const timer = setInterval(() => void ask("GET"), 700);
    return () => clearInterval(timer);
  }, [making]);
  useEffect(() => {
    if (!done) return;
    void fetchDocument(session.document.build.id).then((fetched) =>
      session.take(
        (fetched?.document.recordings ?? []).map((row) => ({
          table: "recording",
          row: row as unknown as Row,
        })),
      ),
    );
  }, [done, session]);
  return (
    <span className="row-of-buttons">
      {making ? (
        <>
          <progress
            value={progress.fraction}
            max={1}
            aria-label="Making a copy that plays"
            style={{ width: 200 }}
          />
          <button type="button" className="plain" onClick={() => void ask("DELETE")}>
            Stop
          </button>
        </>
      ) : (
        <button type="button" className="plain" onClick={() => void ask("POST")}>
          Make a copy that plays
        </button>
      )}
      {progress?.state === "failed" && <span role="alert">{progress.words}</span>}
    </span>
  );
}
