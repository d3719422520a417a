"use client";
import { useEffect, useState } from "react";
import { dispositions, type Erratum } from "#lib/build/index.ts";
import { useTyped } from "../log/typed.tsx";
import { useSession, useSessionView } from "../session/provider.tsx";

const words: Record<Erratum["disposition"], string> = {
  "": "nothing said yet",
  mistake: "a mistake: it will be mended",
  stands: "no mistake: it stands",
  "known already": "known already",
};

/** A report against a release: its words, what came of it, and which files carry what it speaks of. */
export function Report({ report }: { report: Erratum }) {
  const session = useSession();
  const { document } = useSessionView();
  const change = (columns: Partial<Erratum>) =>
    session.change("What came of a report", [{ table: "erratum", row: { ...report, ...columns } }]);
  const correction = useTyped(report.correction, (value) => change({ correction: value }));
  const mark = document.marks.find((one) => one.id === report.markId && one.gone === null);
  const mendedIn = document.releases.find((one) => one.id === report.mendedIn)?.revision;
  return (
    <div className="report">
      <p>
        “{report.words}” {report.value !== "" && <b>{report.value}</b>}{" "}
        {mark && (
          <a href={`/builds/${document.build.id}/sittings/${mark.sittingId}?mark=${mark.id}`}>
            Show the mark
          </a>
        )}
      </p>
      <div className="fields">
        <label>
          What came of it
          <select
            value={report.disposition}
            onChange={(event) => change({ disposition: event.target.value as Erratum["disposition"] })}
          >
            {dispositions.map((one) => (
              <option key={one} value={one}>
                {words[one]}
              </option>
            ))}
          </select>
        </label>
        <label>
          What is right, or why it stands
          <input
            value={correction.text}
            onChange={(event) => correction.change(event.target.value)}
            onBlur={correction.flush}
          />
        </label>
      </div>
      <p className="soft small">
        {mendedIn ? `Mended in revision ${mendedIn}. ` : ""}
        <Carriers report={report} />
      </p>
    </div>
  );
}

/** Every file that carries what was reported. */
function Carriers({ report }: { report: Erratum }) {
  const [carriers, setCarriers] = useState<{ revision: string; files: string[] }[]>([]);
  const { releaseId, markId } = report;
  useEffect(() => {
    let current = true;
    const query = markId === null ? "" : `?mark=${encodeURIComponent(markId)}`;
    void fetch(`/release/${encodeURIComponent(releaseId)}/carriers${query}`)
      .then((response) => (response.ok ? response.json() : { carriers: [] }))
      .then((answer) => current && setCarriers(answer.carriers))
      .catch(() => undefined);
    return () => {
      current = false;
    };
  }, [releaseId, markId]);
  if (carriers.length === 0) return null;
  return (
    <>{`It stands in ${carriers.map(({ revision, files }) => `revision ${revision} (${files.filter((one) => !one.startsWith("stills/")).join(", ")})`).join("; ")}.`}</>
  );
}
