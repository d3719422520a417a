import type { Metadata } from "next";
import { BuildTitleBlock } from "#app/parts/title-block.tsx";
import { BackTo, Retrace } from "#app/session/retrace.tsx";
import { history, theWorkshop } from "#lib/store/index.ts";

export const metadata: Metadata = { title: "Changes" };

/** What changed in a build and when, latest first, with the way back. */
export default async function Page({ params }: { params: Promise<{ build: string }> }) {
  const { build } = await params;
  const lines = await history(theWorkshop().client, build);
  return (
    <>
      <main className="page">
        <h1>Changes</h1>
        <Retrace />
        <ol className="lines" style={{ marginTop: 20, borderTop: "var(--thick)" }}>
          {lines.map((line, index) => (
            <li key={line.seq}>
              <time className="num soft small" dateTime={line.at}>
                {line.at.slice(0, 19).replace("T", " ")}
              </time>
              <span className="grow">{line.label}</span>
              {line.kind === "noted" ? (
                <span className="soft small">by the program</span>
              ) : (
                index > 0 && <BackTo seq={line.seq} label={line.label} />
              )}
            </li>
          ))}
        </ol>
        <p className="soft small" style={{ marginTop: 14 }}>
          Times are UTC. Nothing here is ever taken out: undoing adds a line.
        </p>
      </main>
      <BuildTitleBlock />
    </>
  );
}
