import type { Metadata } from "next";
import { TitleBlock } from "#app/parts/title-block.tsx";
import { listMachines, theWorkshop } from "#lib/store/index.ts";
import { Finder } from "./finder.tsx";

export const metadata: Metadata = { title: "Find" };

/** Everything that was ever written or said in this workshop, found while it is typed. */
export default async function Page({ searchParams }: { searchParams: Promise<{ q?: string | string[] }> }) {
  const { q } = await searchParams;
  const machines = (await listMachines(theWorkshop().client)).map(({ machine: { id, name } }) => ({
    id,
    name,
  }));
  return (
    <>
      <main className="page">
        <h1>Find</h1>
        <p className="soft">Marks, gotchas, parts, measurements and what was said, in all builds.</p>
        <Finder initial={typeof q === "string" ? q : ""} machines={machines} address="/find" />
      </main>
      <TitleBlock />
    </>
  );
}
