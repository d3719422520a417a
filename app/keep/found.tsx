"use client";
import type { Finding } from "#lib/finding/index.ts";

const words = { wrong: "Wrong.", doubtful: "Doubtful.", advice: "Advice." } as const;

/** The most findings that are shown; the command shows all. */
const MOST = 200;

/** What was found, in words. */
export function Found({ findings }: { findings: readonly Finding[] }) {
  return (
    <>
      {findings.slice(0, MOST).map((finding) => (
        <div key={finding.key} className={`finding ${finding.severity}`} style={{ overflowWrap: "anywhere" }}>
          <p>
            <b>{words[finding.severity]}</b> {finding.found}{" "}
            <span className="soft">
              {finding.expected} {finding.todo}
            </span>
          </p>
        </div>
      ))}
      {findings.length > MOST && (
        <p>{`${findings.length - MOST} more: npm run -s witness -- audit shows them all.`}</p>
      )}
    </>
  );
}
