"use client";
import { useId, useState } from "react";
import { sayBytes } from "#lib/media/trouble.ts";
import type { Backup } from "#lib/store/backup/backup.ts";
import type { LastBackup } from "#lib/store/last-backup.ts";
import { sayWallDate } from "#lib/time/index.ts";
import { Found } from "./found.tsx";
import { JobProgress } from "./job-progress.tsx";
import { useJob } from "./use-job.ts";

/** A backup into a folder, and what was written and read back. */
export function BackupPart({ last: lastAtFirst }: { last: LastBackup | null }) {
  const { job, running, begin, stop, trouble } = useJob<Backup>("backup");
  const last = job?.last ?? lastAtFirst;
  const [folder, setFolder] = useState(last ? parentOf(last.folder) : "");
  const id = useId();
  return (
    <section className="block">
      <h2>Backup</h2>
      <p style={{ overflowWrap: "anywhere" }}>
        {last
          ? `The last one: ${sayWallDate(last.at)}, ${last.at.slice(11, 16)} UTC, ${last.files} files, ${sayBytes(last.bytes)}, in ${last.folder}.`
          : "There has been none yet."}
      </p>
      <form
        onSubmit={(event) => {
          event.preventDefault();
          void begin({ folder: folder.trim() });
        }}
        style={{ maxWidth: 720 }}
      >
        <label htmlFor={id}>
          Folder on another drive that holds the backups; each goes into a new one in it
        </label>
        <input id={id} value={folder} required onChange={(event) => setFolder(event.target.value)} />
        <button type="submit" className="main" disabled={running} style={{ marginTop: 12 }}>
          {running ? "Backing up…" : "Back it up"}
        </button>
      </form>
      <JobProgress job={job} name="Backing up" onStop={stop} />
      {trouble && (
        <p className="finding" role="alert">
          {trouble}
        </p>
      )}
      {job?.state === "done" && job.result && <Written made={job.result} />}
    </section>
  );
}

function Written({ made }: { made: Backup }) {
  return (
    <div role="status" style={{ marginTop: 14, overflowWrap: "anywhere" }}>
      <p>
        {`${made.files} files, ${sayBytes(made.bytes)}, were written to ${made.folder} and read back: every hash agrees, and the database is whole.`}
      </p>
      {made.elsewhere > 0 && (
        <p>{`Not in it: ${made.elsewhere} films that stay where they lie. manifest.json names them.`}</p>
      )}
      {made.leftOut.length > 0 && (
        <ul className="lines" aria-label="Left out">
          {made.leftOut.map(({ path, why }) => (
            <li key={path}>
              <span className="grow">{path}</span>
              <span className="soft small">left out: {why}</span>
            </li>
          ))}
        </ul>
      )}
      {made.unfinished.map((name) => (
        <p key={name}>{`${name} was cut short earlier; it may be deleted.`}</p>
      ))}
      <Found findings={made.findings} />
    </div>
  );
}

/** The folder above, whichever way the system writes it. */
function parentOf(folder: string): string {
  return folder.replace(/[/\\][^/\\]*$/, "");
}
