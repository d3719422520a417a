"use client";
import { sayCount } from "#lib/finding/index.ts";
import { sayBytes } from "#lib/media/trouble.ts";
import type { Audit } from "#lib/store/audit/index.ts";
import { Found } from "./found.tsx";
import { JobProgress } from "./job-progress.tsx";
import { useJob } from "./use-job.ts";

/** Rules of findings that making the projections anew mends. */
const mended = new Set(["search-differs", "search-damaged"]);

/** An audit of the workshop, and what it found. */
export function AuditPart() {
  const { job, running, begin, stop, trouble } = useJob<Audit>("audit");
  const made = job?.state === "done" ? job.result : null;
  return (
    <section className="block">
      <h2>Audit</h2>
      <p>
        Reads the workshop through: every still and every film in it against its hash, every record against
        the history, the search table against the marks. It changes nothing.
      </p>
      <div className="row-of-buttons">
        <button type="button" disabled={running} onClick={() => void begin({})}>
          {running ? "Auditing…" : "Audit"}
        </button>
        {made?.findings.some((one) => mended.has(one.rule)) && (
          <button type="button" disabled={running} onClick={() => void begin({ rebuild: true })}>
            Make the search table anew
          </button>
        )}
      </div>
      <JobProgress job={job} name="Auditing" onStop={stop} />
      {trouble && (
        <p className="finding" role="alert">
          {trouble}
        </p>
      )}
      {made && <Looked made={made} />}
    </section>
  );
}

function Looked({ made }: { made: Audit }) {
  const { rows, stills, recordings, elsewhere, bytes } = made.looked;
  return (
    <div role="status" style={{ marginTop: 14 }}>
      <p>
        {`Looked at: ${rows} records, stills: ${stills}, films in the workshop: ${recordings}; ${sayBytes(bytes)} read and hashed.`}
        {elsewhere > 0 && ` ${elsewhere} films that stay where they lie, by size and time.`}
        {made.rebuilt.length > 0 && " The search table was made anew."}
      </p>
      <p>
        <b>{made.findings.length === 0 ? "Nothing was found." : `Found: ${sayCount(made.findings)}.`}</b>
      </p>
      <Found findings={made.findings} />
    </div>
  );
}
