"use client";
import { LeftOut } from "../procedure/left-out.tsx";
import { useSessionView } from "../session/provider.tsx";
import { useSettled } from "../session/use-settled.ts";

const sheets = [
  ["chapters", "Chapters for the film's description", true],
  ["chapters-vtt", "Chapters, WebVTT", true],
  ["captions", "Captions of the film, WebVTT", true],
  ["otio", "Marks, OpenTimelineIO", false],
  ["annotations", "Marks, Web Annotations", false],
  ["howto", "Procedure with its pictures, schema.org HowTo", false],
  ["measurements", "Measurements, CSV", false],
] as const;

/** What other programs can use. What was changed is on disk before a file is made. */
export function TakeAway() {
  const { document } = useSessionView();
  const hasFilm = document.cuts.some(({ gone }) => gone === null);
  const hasCaptions = document.captions.some(({ gone, clock }) => gone === null && clock === "recording");
  const settle = useSettled();
  const offered = sheets
    .filter(([format, , needsFilm]) => (hasFilm || !needsFilm) && (hasCaptions || format !== "captions"))
    .map(([format, name]) => ({
      address: `/print/${encodeURIComponent(document.build.id)}/${format}`,
      name,
    }));
  return (
    <section className="block" aria-label="For other programs">
      <h2>For other programs</h2>
      <ul className="lines">
        {offered.map(({ address, name }) => (
          <li key={address}>
            <a href={address} onClick={settle} download>
              {name}
            </a>
          </li>
        ))}
      </ul>
      <LeftOut sheets={offered} />
    </section>
  );
}
