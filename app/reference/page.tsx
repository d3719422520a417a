import type { Metadata } from "next";
import { TitleBlock } from "#app/parts/title-block.tsx";
import { Ask } from "./ask.tsx";
import { Book } from "./book.tsx";
import "./reference.css";

export const metadata: Metadata = { title: "Reference" };

/** One field that answers, and below it the tables it answers from. */
export default async function Page({ searchParams }: { searchParams: Promise<{ q?: string | string[] }> }) {
  const { q } = await searchParams;
  return (
    <>
      <main className="page reference">
        <h1>Reference</h1>
        <p className="soft">
          Threads, drills, spanners, gauges, fits, bolts, bearings and values, each figure with its source.
          Nothing leaves this computer.
        </p>
        <Ask initial={typeof q === "string" ? q : ""} />
        <section className="block">
          <h2>The tables</h2>
          <Book />
        </section>
      </main>
      <TitleBlock
        cells={[
          { field: "Book", value: "Machines", href: "/" },
          { field: "Book", value: "Reference", href: "/reference" },
          { field: "Workshop", value: "Keys and settings", href: "/settings" },
        ]}
      />
    </>
  );
}
