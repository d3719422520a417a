"use client";
import { present, type Sitting } from "#lib/build/index.ts";
import { useSessionView } from "../../session/provider.tsx";
import { GapsOf } from "./gaps.tsx";
import { ProposedClocks } from "./proposals.tsx";
import { RecordingLine } from "./recording-line.tsx";

/** The recordings of a sitting, where they lie on its clock, and what was not filmed between them. */
export function RecordingsOf({ sitting, log }: { sitting: Sitting; log: string }) {
  const { document } = useSessionView();
  const recordings = present(document.recordings).filter((one) => one.sittingId === sitting.id);
  return (
    <>
      <ul className="lines" style={{ marginTop: 10 }}>
        {recordings.map((recording) => (
          <RecordingLine
            key={recording.id}
            recording={recording}
            others={recordings.filter((one) => one !== recording && one.probe !== null)}
            log={log}
          />
        ))}
      </ul>
      <GapsOf recordings={recordings} />
      <ProposedClocks recordings={recordings} />
    </>
  );
}
