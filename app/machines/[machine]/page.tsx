import type { Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { NewBuild } from "#app/bench/begin.tsx";
import { OpenItems } from "#app/parts/open-items.tsx";
import { TitleBlock } from "#app/parts/title-block.tsx";
import { listMachines, openItems, theWorkshop } from "#lib/store/index.ts";

export const metadata: Metadata = { title: "Machine" };

/** A machine in the words of its plate, and its builds. */
export default async function Page({ params }: { params: Promise<{ machine: string }> }) {
  const { machine: id } = await params;
  const line = (await listMachines(theWorkshop().client)).find(({ machine }) => machine.id === id);
  if (!line) notFound();
  const { machine, builds } = line;
  const left = await openItems(theWorkshop().client, id);
  const plate = [
    ["Maker", machine.maker],
    ["Model", machine.model],
    ["Serial number", machine.serial],
    ["Years", machine.years],
    ["Variant", machine.variant],
  ].filter(([, value]) => value !== "");
  return (
    <>
      <main className="page">
        <h1>{machine.name}</h1>
        <dl className="plate">
          {plate.map(([field, value]) => (
            <div key={field}>
              <dt className="soft small">{field}</dt>
              <dd>{value}</dd>
            </div>
          ))}
        </dl>
        {machine.notes && <p>{machine.notes}</p>}
        <OpenItems items={left} titles={new Map(builds.map(({ build }) => [build.id, build.title]))} />
        <section className="block">
          <h2>Builds</h2>
          <ul className="lines">
            {builds.map(({ build, marks }) => (
              <li key={build.id}>
                <span className="grow">
                  <Link href={`/builds/${build.id}`}>
                    <b>{build.title}</b>
                  </Link>
                </span>
                <span className="soft small">{marks} marks</span>
                <Link href={`/builds/${build.id}/procedure`}>Procedure</Link>
              </li>
            ))}
          </ul>
        </section>
        <section className="block">
          <h2>Another build</h2>
          <NewBuild machineId={machine.id} />
        </section>
      </main>
      <TitleBlock cells={[{ field: "Machine", value: machine.name, href: `/machines/${machine.id}` }]} />
    </>
  );
}
