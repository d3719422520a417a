"use client";
import { useMemo } from "react";
import { type Cut, present } from "#lib/build/index.ts";
import { readFilm } from "#lib/cut/index.ts";
import { SheetPage } from "../parts/sheet-page.tsx";
import { useSession, useSessionView } from "../session/provider.tsx";
import { BringFilmCaptions } from "./bring-film-captions.tsx";
import { BringList } from "./bring-list.tsx";
import { CutFields } from "./cut-fields.tsx";
import { HandStretches } from "./hand-stretches.tsx";
import { NotShown } from "./not-shown.tsx";
import { Reels } from "./reels.tsx";
import { Stretches } from "./stretches.tsx";
import { TakeAway } from "./take-away.tsx";
import "./film.css";

/** The edited films of a build: which stretch of which recording stands where, so that every moment has its place. */
export function FilmSheet() {
  const { document } = useSessionView();
  const cuts = present(document.cuts).sort((a, b) => b.rank - a.rank || (a.id < b.id ? -1 : 1));
  return (
    <SheetPage
      title="Film"
      about="With the cut of the edited film known, every marked moment has its places in it: links, codes and chapters lead there, and move when it is cut again."
    >
      {cuts.map((cut, index) => (
        <CutBlock key={cut.id} cut={cut} foremost={index === 0} ranks={cuts.map(({ rank }) => rank)} />
      ))}
      <BringList />
      {cuts.length > 0 && <NotShown />}
      <TakeAway />
    </SheetPage>
  );
}

function CutBlock({ cut, foremost, ranks }: { cut: Cut; foremost: boolean; ranks: number[] }) {
  const session = useSession();
  const { document } = useSessionView();
  const film = useMemo(() => readFilm(cut, present(document.recordings)), [cut, document.recordings]);
  const put = (label: string, set: Partial<Cut>) =>
    session.change(label, [
      { table: "cut", row: { ...(session.row("cut", cut.id) as unknown as Cut), ...set } },
    ]);
  const name = film.name || "A film without a name";
  return (
    <section className="block" aria-label={name}>
      <h2>{name}</h2>
      <p className="soft">
        {foremost
          ? "Links, codes and chapters lead to this film."
          : "Kept; links lead to the film that stands above."}
      </p>
      <CutFields film={film} put={put} />
      {cut.form === "hand" ? <HandStretches cut={cut} put={put} /> : <Reels film={film} put={put} />}
      <Problems film={film} />
      <Stretches film={film} />
      <BringFilmCaptions film={film} />
      <div className="row-of-buttons" style={{ marginTop: 14 }}>
        {!foremost && (
          <button
            type="button"
            onClick={() => put("Film that links lead to", { rank: Math.max(...ranks) + 1 })}
          >
            Lead links to this film
          </button>
        )}
        <button
          type="button"
          className="plain"
          onClick={() => put("Film struck out", { gone: new Date().toISOString() })}
        >
          Strike out this film
        </button>
      </div>
    </section>
  );
}

/** What cannot be followed of the list, and where in it. */
function Problems({ film }: { film: ReturnType<typeof readFilm> }) {
  if (film.problems.length === 0) return null;
  return (
    <div role="status">
      <h3 style={{ marginTop: 18 }}>What cannot be followed</h3>
      {film.problems.map(({ where, found, expected, todo }) => (
        <p className="finding" key={`${where} ${found}`}>
          <b>{where}.</b> {found} {expected} {todo}
        </p>
      ))}
    </div>
  );
}
