"use client";
import { useSessionView } from "../session/provider.tsx";
import { useSettled } from "../session/use-settled.ts";

const sheets = [
  ["chapters", "Chapters for the film's description", true],
  ["chapters-vtt", "Chapters, WebVTT", true],
  ["otio", "Marks, OpenTimelineIO", false],
  ["annotations", "Marks, Web Annotations", false],
  ["howto", "Procedure, schema.org HowTo", false],
  ["measurements", "Measurements, CSV", false],
] as const;

/** What other programs can use. What was changed is on disk before a file is made. */
export function TakeAway() {
  const { document } = useSessionView();
  const hasFilm = document.cuts.some(({ gone }) => gone === null);
  const settle = useSettled();
  return (
    <section className="block" aria-label="For other programs">
      <h2>For other programs</h2>
      <ul className="lines">
        {sheets
          .filter(([, , needsFilm]) => hasFilm || !needsFilm)
          .map(([format, words]) => (
            <li key={format}>
              <a href={`/print/${encodeURIComponent(document.build.id)}/${format}`} onClick={settle} download>
                {words}
              </a>
            </li>
          ))}
      </ul>
    </section>
  );
}
