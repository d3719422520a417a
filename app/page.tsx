import Link from "next/link";
import { findMarks, listMachines, openItems, theWorkshop } from "#lib/store/index.ts";
import { BringBuild, NewMachine, OpenDemo } from "./bench/begin.tsx";
import { OpenItems } from "./parts/open-items.tsx";
import { TitleBlock } from "./parts/title-block.tsx";

/** The first screen: machines and their builds, or where to begin. */
export default async function Page({ searchParams }: { searchParams: Promise<{ find?: string }> }) {
  const { find = "" } = await searchParams;
  const { client, workshop } = theWorkshop();
  const machines = await listMachines(client);
  const left = await openItems(client);
  const found = await findMarks(client, find);
  const titles = new Map(
    machines.flatMap(({ builds }) => builds.map(({ build }) => [build.id, build.title])),
  );
  const places = new Map(
    (await client.mark.findMany({ where: { id: { in: found.map((one) => one.markId) } } })).map((mark) => [
      mark.id,
      mark,
    ]),
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
              engine, filmed, marked and ready to print.
            </p>
            <OpenDemo main />
          </section>
        ) : (
          <section className="block">
            <OpenItems items={left} titles={titles} />
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
            <form action="/" style={{ maxWidth: 420, marginTop: 22 }}>
              <label htmlFor="find">Find words in all marks</label>
              <input id="find" name="find" type="search" defaultValue={find} minLength={3} />
            </form>
            {find !== "" && (
              <ul className="lines" aria-label="Marks found">
                {found.map(({ markId, buildId, snippet }) => (
                  <li key={markId}>
                    <span className="grow">
                      <Link
                        href={`/builds/${buildId}/sittings/${places.get(markId)?.sittingId}?mark=${markId}`}
                      >
                        {snippet}
                      </Link>
                    </span>
                    <span className="soft small">{titles.get(buildId)}</span>
                  </li>
                ))}
                {found.length === 0 && <li>No mark has these words.</li>}
              </ul>
            )}
          </section>
        )}

        <section className="block">
          <h2>Begin</h2>
          <NewMachine />
        </section>
        <section className="block">
          <h2>Bring in a build folder</h2>
          <BringBuild />
          {machines.length > 0 && (
            <div style={{ marginTop: 16 }}>
              <OpenDemo />
            </div>
          )}
        </section>
        <p className="soft small" style={{ marginTop: 34, overflowWrap: "anywhere" }}>
          Everything is kept in {workshop.folder}. Nothing leaves this computer.
        </p>
      </main>
      <TitleBlock
        cells={[
          { field: "Book", value: "Machines", href: "/" },
          { field: "Book", value: "Reference", href: "/reference" },
          { field: "Workshop", value: "Keys and settings", href: "/settings" },
          { field: "Workshop", value: "Keep it", href: "/keep" },
        ]}
      />
    </>
  );
}

function count(number: number, thing: string): string {
  return `${number} ${thing}${number === 1 ? "" : "s"}`;
}
