import type { Metadata } from "next";
import { TitleBlock } from "#app/parts/title-block.tsx";
import { loadBook, sightingPlaces, theWorkshop } from "#lib/store/index.ts";
import { GotchaSheet } from "../gotcha-sheet.tsx";

export const metadata: Metadata = { title: "Gotcha" };

export default async function Page({ params }: { params: Promise<{ gotcha: string }> }) {
  const { gotcha } = await params;
  const { client } = theWorkshop();
  const { sightings } = await loadBook(client);
  const id = decodeURIComponent(gotcha);
  return (
    <>
      <main className="page">
        <GotchaSheet id={id} places={await sightingPlaces(client, sightings)} />
      </main>
      <TitleBlock />
    </>
  );
}
