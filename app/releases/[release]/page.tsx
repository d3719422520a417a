import type { Metadata } from "next";
import { notFound } from "next/navigation";
import { Reading } from "#app/releases/reading.tsx";
import { openRelease } from "#lib/cli/read-release.ts";
import { FolderError } from "#lib/folder/index.ts";
import {
  historyOf,
  noticesOf,
  originalPicture,
  procedureBody,
  reportsOn,
  sheetState,
} from "#lib/publish/index.ts";
import { theWorkshop } from "#lib/store/index.ts";

export const metadata: Metadata = { title: "Release" };

/** A release to be read, as it was frozen, with what has been found since. */
export default async function Page({ params }: { params: Promise<{ release: string }> }) {
  const { release: id } = await params;
  const read = await openRelease(theWorkshop(), id).catch((error: unknown) => {
    if (error instanceof FolderError) return error;
    throw error;
  });
  if (read === null) notFound();
  if (read instanceof FolderError) {
    return (
      <main className="page">
        <h1>This release cannot be read</h1>
        <p className="finding wrong">{read.message}</p>
      </main>
    );
  }
  const { release, now, checked, manifest } = read;
  const { revision, date } = release;
  const body = procedureBody(checked, {
    state: sheetState(checked, { release: { revision, date }, printedOn: date }, release.contentHash),
    still: (figure) => originalPicture(figure, `/media/stills/${figure.sha256}`),
    forScreen: true,
    history: historyOf(now, checked.procedure),
    changedSteps: manifest.changedSteps,
    notices: noticesOf(now, release),
  });
  const steps = checked.procedure.stages.flatMap((stage) => stage.steps);
  return (
    <Reading
      body={body}
      build={{ id: now.build.id, title: now.build.title }}
      release={{ id, revision }}
      steps={steps.map(({ mark, number, title }) => ({ mark, number, title }))}
      reports={reportsOn(now, release).length}
    />
  );
}
