import { loadBuild, stacks, theWorkshop } from "#lib/store/index.ts";

/** A build whole, as the sheets of the app work on it. */
export async function GET(_: Request, { params }: { params: Promise<{ build: string }> }): Promise<Response> {
  const { build } = await params;
  const { client } = theWorkshop();
  const document = await loadBuild(client, build);
  if (!document) return Response.json({ found: `No build ${build} in this workshop.` }, { status: 404 });
  const { undo, redo } = await stacks(client, build);
  return Response.json({ document, can: { undo: undo.length > 0, redo: redo.length > 0 } });
}
