"use client";
import { type AwayFilm, useIndex } from "./index-state.tsx";

/** Drives and folders that are not there, each said once however many films lie in it. */
export function AwayFolders() {
  const { view } = useIndex();
  const folders = new Map<string, AwayFilm[]>();
  for (const film of view?.away ?? []) {
    if (film.kind === "root-missing") folders.set(film.found, [...(folders.get(film.found) ?? []), film]);
  }
  return [...folders].map(([found, films]) => (
    <p className="finding" role="note" key={found}>
      {found} {films.length === 1 ? "One film lies" : `${films.length} films lie`} in it. {films[0]?.todo}
    </p>
  ));
}
