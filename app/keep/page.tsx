import type { Metadata } from "next";
import { TitleBlock } from "#app/parts/title-block.tsx";
import { readLastBackup, theWorkshop } from "#lib/store/index.ts";
import { AuditPart } from "./audit-part.tsx";
import { BackupPart } from "./backup-part.tsx";

export const metadata: Metadata = { title: "Keep it" };

/** Backup and audit of the workshop. */
export default async function Page() {
  const { client, workshop } = theWorkshop();
  return (
    <>
      <main className="page">
        <h1>Keep it</h1>
        <p className="soft" style={{ overflowWrap: "anywhere" }}>
          The workshop lies in {workshop.folder}. Its backup belongs on another drive, best in another
          building.
        </p>
        <BackupPart last={await readLastBackup(client)} />
        <AuditPart />
        <section className="block">
          <h2>Bring a backup back</h2>
          <p>
            A backup is brought back into a new or empty folder, on this computer or another; nothing is
            written over. Stop the program, and run in its folder:
          </p>
          <p className="num" style={{ overflowWrap: "anywhere" }}>
            npm run -s witness -- restore "the backup's folder" --workshop "a new folder"
          </p>
          <p>Then start the program with WORKSHOP_DIR naming that folder.</p>
        </section>
      </main>
      <TitleBlock
        cells={[
          { field: "Book", value: "Machines", href: "/" },
          { field: "Workshop", value: "Keys and settings", href: "/settings" },
          { field: "Workshop", value: "Keep it", href: "/keep" },
        ]}
      />
    </>
  );
}
