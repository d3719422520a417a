"use client";
import { useState } from "react";
import { decodeCaptions } from "#lib/captions/index.ts";
import { bringFilmCaptions, type Film, type FilmCaptions } from "#lib/cut/index.ts";
import { sayMoment } from "#lib/time/index.ts";
import { sayProblem } from "../captions/bring-captions.ts";
import { useSession } from "../session/provider.tsx";

/** More than any spoken day comes to, in bytes. */
const mostBytes = 10_000_000;

/** Captions of the published film go to the recordings they were spoken in. */
export function BringFilmCaptions({ film }: { film: Film }) {
  const session = useSession();
  const [said, setSaid] = useState<FilmCaptions | null>(null);
  const [trouble, setTrouble] = useState<string | null>(null);
  const bring = async (file: File | undefined) => {
    setSaid(null);
    setTrouble(null);
    if (!file) return;
    if (file.size > mostBytes) {
      setTrouble(
        `${file.name} has ${Math.round(file.size / 1e6)} MB. A caption file has at most ${mostBytes / 1e6} MB. Choose the captions themselves, not the film.`,
      );
      return;
    }
    const { text } = decodeCaptions(new Uint8Array(await file.arrayBuffer()));
    const brought = bringFilmCaptions(session.document, film, { name: file.name, text }, () =>
      crypto.randomUUID(),
    );
    if (brought.cues.length === 0) {
      setTrouble(`${file.name}: ${sayProblem(brought.problems[0])} Nothing was changed.`);
      return;
    }
    if (brought.tracks.length > 0)
      session.change(
        `Captions of the film: ${file.name}`.slice(0, 500),
        brought.tracks.map(({ row }) => ({ table: "captionTrack", row })),
      );
    setSaid(brought);
  };
  return (
    <div className="film-captions">
      <h3>Captions of this film</h3>
      <p className="soft small">
        Each goes through the cut to the recordings it was spoken in, so that drafts and search know its
        words.
      </p>
      <label className="button-for-file">
        Captions of the film…
        <input
          type="file"
          accept=".vtt,.srt,.txt"
          aria-label={`Captions of ${film.name || "the film"}`}
          onChange={(event) => {
            void bring(event.target.files?.[0]);
            event.target.value = "";
          }}
        />
      </label>
      {trouble && (
        <p className="finding" role="alert">
          {trouble}
        </p>
      )}
      {said && <Brought brought={said} />}
    </div>
  );
}

/** Where the captions went, and what of them has no recording. */
function Brought({ brought: { cues, tracks, own, without, problems } }: { brought: FilmCaptions }) {
  return (
    <div role="status">
      <p>
        Of {cues.length} captions {cues.length - without.length} come from recordings of this build.
      </p>
      <ul className="lines">
        {tracks.map(({ recording, cues: count }) => (
          <li key={recording.id}>
            <span className="grow">{recording.name}</span>
            <span className="soft small">{count} captions kept</span>
          </li>
        ))}
        {own.map((recording) => (
          <li key={recording.id}>
            <span className="grow">{recording.name}</span>
            <span className="soft small">has captions of its own, and keeps them</span>
          </li>
        ))}
      </ul>
      {without.length > 0 && (
        <details>
          <summary>
            {without.length} {without.length === 1 ? "has" : "have"} no recording: nothing of this build is
            heard there
          </summary>
          <ul className="lines">
            {without.slice(0, 200).map(({ start, line, text }) => (
              <li key={line}>
                <span className="num">{sayMoment(start)}</span> <span className="grow">{text}</span>
              </li>
            ))}
          </ul>
        </details>
      )}
      {problems.length > 0 && (
        <details>
          <summary>
            {problems.length === 1 ? "One thing" : `${problems.length} things`} in this file to look at
          </summary>
          <ul className="lines">
            {problems.slice(0, 50).map((problem) => (
              <li key={`${problem.line} ${problem.found}`}>{sayProblem(problem)}</li>
            ))}
          </ul>
        </details>
      )}
    </div>
  );
}
