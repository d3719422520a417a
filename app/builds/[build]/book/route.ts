import { bookOf, loadBook, loadBuild, theWorkshop } from "#lib/store/index.ts";

/** What the gotcha book has that could concern a build's machine. */
export async function GET(_: Request, { params }: { params: Promise<{ build: string }> }): Promise<Response> {
  const { build } = await params;
  const { client } = theWorkshop();
  const document = await loadBuild(client, build);
  if (!document) return Response.json({ found: `No build ${build} in this workshop.` }, { status: 404 });
  return Response.json(bookOf(await loadBook(client), document));
}
