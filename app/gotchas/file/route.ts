import { BookError, fromCsv, fromJson, toCsv, toJson } from "#lib/gotcha/index.ts";
import { importBook, loadBook, theWorkshop } from "#lib/store/index.ts";

/** A book larger than this is none that a person wrote; characters. */
const MOST = 100_000_000;

/** The book as a file to give away: `?form=csv`, or JSON. */
export async function GET(request: Request): Promise<Response> {
  const csv = new URL(request.url).searchParams.get("form") === "csv";
  const book = await loadBook(theWorkshop().client);
  return new Response(csv ? `\ufeff${toCsv(book)}` : toJson(book), {
    headers: {
      "content-type": csv ? "text/csv; charset=utf-8" : "application/json; charset=utf-8",
      "content-disposition": `attachment; filename="gotchas.${csv ? "csv" : "json"}"`,
      "cache-control": "no-store",
    },
  });
}

/** Brings somebody else's book in. The file's name says which form it has; `?origin=` says whose it is. */
export async function POST(request: Request): Promise<Response> {
  const query = new URL(request.url).searchParams;
  const name = query.get("name") ?? "";
  const origin = (query.get("origin")?.trim() || name || "another book").slice(0, 200);
  const text = await request.text();
  try {
    if (text.length > MOST) throw tooLarge(text.length);
    const noted = new Date().toISOString();
    const given = /\.csv$/i.test(name) ? fromCsv(text, () => crypto.randomUUID(), noted) : fromJson(text);
    return Response.json(await importBook(theWorkshop().client, given, origin));
  } catch (error) {
    if (!(error instanceof BookError)) throw error;
    const { found, expected, todo } = error;
    return Response.json({ found, expected, todo }, { status: 400 });
  }
}

function tooLarge(length: number): BookError {
  return new BookError({
    found: `The file has ${length} characters.`,
    expected: `At most ${MOST}. Nothing was brought in.`,
    todo: "Bring it in in parts.",
  });
}
