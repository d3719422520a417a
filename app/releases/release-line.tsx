"use client";
import Link from "next/link";
import type { Release } from "#lib/build/index.ts";
import { releasesInOrder, reportsOn } from "#lib/publish/release/history.ts";
import { sayWallDate } from "#lib/time/index.ts";
import { useSessionView } from "../session/provider.tsx";
import { Differences } from "./differences.tsx";
import { Report } from "./report.tsx";

const files = [
  ["procedure-a4.pdf", "PDF, A4"],
  ["procedure-letter.pdf", "PDF, Letter"],
  ["bench-a4.pdf", "Bench sheet, A4"],
  ["bench-letter.pdf", "Bench sheet, Letter"],
  ["procedure.html", "One HTML file"],
  ["procedure.md", "Markdown"],
  ["parts.csv", "Parts list"],
] as const;

/** A release: what it was, its files as they were published, and what was reported against it. */
export function ReleaseLine({ release }: { release: Release }) {
  const { document } = useSessionView();
  const releases = releasesInOrder(document);
  const before = releases[releases.findIndex((one) => one.id === release.id) - 1];
  const reports = reportsOn(document, release);
  const address = `/release/${encodeURIComponent(release.id)}`;
  return (
    <article className="release" aria-labelledby={`release-${release.id}`}>
      <h3 id={`release-${release.id}`}>
        <Link href={`/releases/${release.id}`}>Revision {release.revision}</Link>{" "}
        <span className="soft">
          {sayWallDate(release.date)} · <span className="num">{release.contentHash.slice(0, 8)}</span>
        </span>
      </h3>
      {release.changed !== "" && <p>{release.changed}</p>}
      {release.again !== "" && <p>To be done again: {release.again}</p>}
      <p className="small">
        {files.map(([name, words], index) => (
          <span key={name}>
            {index > 0 && " · "}
            <a href={`${address}/${name}`} download>
              {words}
            </a>
          </span>
        ))}
      </p>
      {before && (
        <Differences
          from={before.id}
          to={release.id}
          says={`What differs from revision ${before.revision}`}
        />
      )}
      {reports.length > 0 && <h4>Reported</h4>}
      {reports.map((report) => (
        <Report key={report.id} report={report} />
      ))}
    </article>
  );
}
