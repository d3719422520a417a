"use client";
import Link from "next/link";
import type { Finding } from "#lib/finding/index.ts";
import { timecode } from "#lib/time/index.ts";
import { FindingNote } from "../parts/finding-note.tsx";
import { useDerived, useSession, useSessionView } from "../session/provider.tsx";

/** What the checks say, worst first; each leads to its second in the recording. */
export function Findings() {
  const { findings } = useDerived();
  if (findings.length === 0) return <p>Nothing was found.</p>;
  return findings.map((finding) => (
    <FindingNote key={finding.key} finding={finding} place={<PlaceOf finding={finding} />} />
  ));
}

/** The way from a finding to what it speaks of. */
export function PlaceOf({ finding }: { finding: Finding }) {
  const session = useSession();
  const { document } = useSessionView();
  const mark = document.marks.find((one) => one.id === finding.place.mark && one.gone === null);
  const edit = document.edits.find((one) => one.id === finding.place.edit);
  const change = (label: string, columns: Partial<NonNullable<typeof edit>>) => {
    if (edit) session.change(label, [{ table: "edit", row: { ...edit, ...columns } }]);
  };
  return (
    <>
      {mark && (
        <Link href={`/builds/${document.build.id}/sittings/${mark.sittingId}?mark=${mark.id}`}>
          {mark.at === null ? "Show the mark" : `Show ${timecode(mark.at, { tenths: false })}`}
        </Link>
      )}
      {edit && (
        <span className="row-of-buttons" style={{ gap: 6, marginTop: 4 }}>
          {mark && (
            <button
              type="button"
              className="plain"
              onClick={() =>
                change("Edit kept as it stands", {
                  basis: typeof mark.fields.words === "string" ? mark.fields.words.trim() : "",
                })
              }
            >
              Keep the edit
            </button>
          )}
          <button
            type="button"
            className="plain"
            onClick={() => change("Edit taken back", { gone: new Date().toISOString() })}
          >
            Take the edit back
          </button>
        </span>
      )}
    </>
  );
}
