import Link from "next/link";
import { listMachines, openItems, openSoaks, theWorkshop } from "#lib/store/index.ts";
import { BringBuild, NewMachine, OpenDemo, OpenGotchaDemo } from "./bench/begin.tsx";
import { Soaking } from "./due/due-line.tsx";
import { Finder } from "./find/finder.tsx";
import { OpenItems } from "./parts/open-items.tsx";
import { TitleBlock } from "./parts/title-block.tsx";

/** The first screen: machines and their builds, or where to begin. */
export default async function Page({ searchParams }: { searchParams: Promise<{ find?: string }> }) {
  const { find = "" } = await searchParams;
  const { client, workshop } = theWorkshop();
  const machines = await listMachines(client);
  // What has a time stands by itself.
  const timed = new Set((await openSoaks(client)).map((soak) => soak.mark));
  const left = (await openItems(client)).filter(({ markId }) => !timed.has(markId));
  const titles = new Map(
    machines.flatMap(({ builds }) => builds.map(({ build }) => [build.id, build.title])),
  );
  return (
    <>
      <main className="page">
        <h1>Witness Mark</h1>
        <p className="soft">
          From your own recordings to a procedure that a stranger can follow at the bench.
        </p>

        {machines.length === 0 ? (
          <section className="block">
            <h2>The workshop is empty</h2>
            <p>
              Begin with a machine of your own, or look first at a finished job: the water pump of an invented
              engine, filmed, marked and ready to print. Or at three hand pumps, of which the third is warned
              by what the first two taught.
            </p>
            <div className="row-of-buttons">
              <OpenDemo main />
              <OpenGotchaDemo />
            </div>
          </section>
        ) : (
          <>
            <Soaking />
            <OpenItems items={left} titles={titles} />
            <section className="block">
              <h2>Machines</h2>
              {machines.map(({ machine, builds }) => (
                <div key={machine.id} style={{ marginTop: 18 }}>
                  <h3>
                    <Link href={`/machines/${machine.id}`}>{machine.name}</Link>{" "}
                    <span className="soft small">
                      {[machine.maker, machine.model, machine.years].filter(Boolean).join(", ")}
                    </span>
                  </h3>
                  <ul className="lines">
                    {builds.map(({ build, sittings, recordings, marks, unsorted }) => (
                      <li key={build.id}>
                        <span className="grow">
                          <Link href={`/builds/${build.id}`}>
                            <b>{build.title}</b>
                          </Link>
                        </span>
                        <span className="soft small">
                          {count(sittings, "sitting")} · {count(recordings, "recording")} ·{" "}
                          {count(marks, "mark")}
                          {unsorted > 0 && ` · ${unsorted} unsorted`}
                        </span>
                        <Link href={`/builds/${build.id}/procedure`}>Procedure</Link>
                      </li>
                    ))}
                    {builds.length === 0 && (
                      <li>
                        <Link href={`/machines/${machine.id}`}>Begin a build</Link>
                      </li>
                    )}
                  </ul>
                </div>
              ))}
              <div style={{ marginTop: 22 }}>
                <Finder
                  initial={find}
                  machines={machines.map(({ machine: { id, name } }) => ({ id, name }))}
                />
              </div>
            </section>
          </>
        )}

        <section className="block">
          <h2>Begin</h2>
          <NewMachine />
        </section>
        <section className="block">
          <h2>Bring in a build folder</h2>
          <BringBuild />
          {machines.length > 0 && (
            <div className="row-of-buttons" style={{ marginTop: 16 }}>
              <OpenDemo />
              <OpenGotchaDemo />
            </div>
          )}
        </section>
        <p className="soft small" style={{ marginTop: 34, overflowWrap: "anywhere" }}>
          Everything is kept in {workshop.folder}. Nothing leaves this computer.
        </p>
      </main>
      <TitleBlock />
    </>
  );
}

function count(number: number, thing: string): string {
  return `${number} ${thing}${number === 1 ? "" : "s"}`;
}
