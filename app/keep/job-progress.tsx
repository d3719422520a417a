"use client";
import type { Job } from "./use-job.ts";

/** How far it is, and the way to stop it. */
export function JobProgress({
  job,
  name,
  onStop,
}: {
  job: Job<unknown> | null;
  name: string;
  onStop: () => void;
}) {
  if (job?.state !== "running") return null;
  const { words, done, of } = job.progress ?? { words: "Beginning", done: 0, of: 0 };
  return (
    <div style={{ marginTop: 14, maxWidth: 720 }}>
      <p role="status" style={{ margin: 0 }}>
        {words}…
      </p>
      <progress aria-label={name} {...(of > 0 ? { value: done / of, max: 1 } : {})} />
      <button type="button" className="plain" onClick={onStop}>
        Stop
      </button>
    </div>
  );
}
