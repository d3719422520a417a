"use client";
import { proposeClocks, type Recording } from "#lib/build/index.ts";
import { timecode } from "#lib/time/index.ts";
import { useSession } from "../../session/provider.tsx";

/** Where the files themselves say that the recordings of a sitting lie. Nothing is set before it is taken. */
export function ProposedClocks({ recordings }: { recordings: readonly Recording[] }) {
  const session = useSession();
  const proposals = proposeClocks(recordings);
  if (proposals.length === 0) return null;
  const take = () =>
    session.change(
      "Clocks of the recordings, by their files",
      proposals.map(({ recording, offset, rate }) => ({
        table: "recording" as const,
        row: { ...(session.row("recording", recording) as unknown as Recording), offset, rate },
      })),
    );
  return (
    <div className="finding advice" style={{ marginTop: 12 }}>
      <p>
        By the files themselves, {proposals.length === 1 ? "this film begins" : "these films begin"} elsewhere
        on the sitting's clock than is set:
      </p>
      <ul style={{ margin: "4px 0 8px", paddingLeft: 20 }}>
        {proposals.map((one) => (
          <li key={one.recording} style={{ overflowWrap: "anywhere" }}>
            {recordings.find((recording) => recording.id === one.recording)?.name}: at{" "}
            <span className="num">{timecode(one.offset)}</span>.{" "}
            <span className="soft small">{one.trust}</span>
          </li>
        ))}
      </ul>
      <button type="button" className="plain" onClick={take}>
        Take {proposals.length === 1 ? "this time" : "these times"}
      </button>
    </div>
  );
}
