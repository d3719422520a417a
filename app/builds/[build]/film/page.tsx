import type { Metadata } from "next";
import { FilmSheet } from "#app/film/film-sheet.tsx";

export const metadata: Metadata = { title: "Film" };

export default function Page() {
  return <FilmSheet />;
}
