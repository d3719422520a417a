import type { Metadata } from "next";
import { TitleBlock } from "#app/parts/title-block.tsx";
import { BookSheet } from "./book-sheet.tsx";

export const metadata: Metadata = { title: "Gotchas" };

export default function Page() {
  return (
    <>
      <main className="page">
        <h1>Gotchas</h1>
        <p className="soft">
          What bit before, on which machines, and how often. Before an assembly is opened, the few that apply
          are shown there.
        </p>
        <BookSheet />
      </main>
      <TitleBlock />
    </>
  );
}
