"use client";
import { useState } from "react";
import { mend } from "#lib/check/index.ts";
import type { Finding, Mend } from "#lib/finding/index.ts";
import { useSession } from "../session/provider.tsx";

const words = { wrong: "Wrong.", doubtful: "Doubtful.", advice: "Advice." } as const;

/** What a check says, beside what it speaks of, with the way to let it stand for a reason. */
export function FindingNote({ finding, place }: { finding: Finding; place?: React.ReactNode }) {
  const session = useSession();
  const [answering, setAnswering] = useState(false);
  const [reason, setReason] = useState(finding.answer ?? "");
  const answer = (gone: string | null) => {
    const known = session.document.answers.find(
      (one) => one.key === finding.key && one.evidence === finding.evidence,
    );
    session.change(gone === null ? "Answer to a finding" : "Answer taken back", [
      {
        table: "answer",
        row: {
          id: known?.id ?? crypto.randomUUID(),
          buildId: session.document.build.id,
          key: finding.key,
          evidence: finding.evidence,
          reason: gone === null ? reason.trim() : (finding.answer ?? ""),
          gone,
          rev: known?.rev ?? 0,
        },
      },
    ]);
    setAnswering(false);
  };
  return (
    <div className={`finding ${finding.severity}`}>
      <p>
        <b>{words[finding.severity]}</b> {finding.found}{" "}
        {finding.meant && <>Perhaps {finding.meant} was meant. </>}
        <span className="soft">{finding.todo}</span> {place}
      </p>
      {finding.answer !== undefined ? (
        <p className="small">
          Left as it is: “{finding.answer}”{" "}
          <button type="button" className="plain" onClick={() => answer(new Date().toISOString())}>
            Take the answer back
          </button>
        </p>
      ) : answering ? (
        <form
          className="row-of-buttons"
          onSubmit={(event) => {
            event.preventDefault();
            if (reason.trim() !== "") answer(null);
          }}
        >
          <label style={{ flex: "1 1 220px" }}>
            Why it may stand
            <input value={reason} onChange={(event) => setReason(event.target.value)} />
          </label>
          <button type="submit" className="plain">
            Let it stand
          </button>
        </form>
      ) : (
        <p className="small">
          <span className="soft">{finding.source}.</span> <QuickMends finding={finding} />
          <button type="button" className="plain" onClick={() => setAnswering(true)}>
            Answer
          </button>
        </p>
      )}
    </div>
  );
}

/** The quick mends of a finding, a button each. Each is one change, and undo takes it back. */
function QuickMends({ finding }: { finding: Finding }) {
  const session = useSession();
  const apply = (one: Mend) =>
    session.change(
      `Mended: ${one.says.charAt(0).toLowerCase()}${one.says.slice(1)}`,
      mend(session.document, finding, one, {
        now: new Date().toISOString(),
        newId: () => crypto.randomUUID(),
      }),
    );
  return finding.mends?.map((one) => (
    <span key={one.name}>
      <button type="button" className="plain" onClick={() => apply(one)}>
        {one.says}
      </button>{" "}
    </span>
  ));
}
