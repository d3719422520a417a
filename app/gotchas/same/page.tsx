import type { Metadata } from "next";
import { TitleBlock } from "#app/parts/title-block.tsx";
import { SameSheet } from "../same-sheet.tsx";

export const metadata: Metadata = { title: "Perhaps the same" };

export default function Page() {
  return (
    <>
      <main className="page">
        <h1>Perhaps the same</h1>
        <p className="soft">
          Joined, two are told as one with the sightings of both. Nothing of either is lost, and they can be
          split again.
        </p>
        <SameSheet />
      </main>
      <TitleBlock />
    </>
  );
}
