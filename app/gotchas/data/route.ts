import { bookHistory } from "#lib/gotcha/index.ts";
import { loadBook, stacks, theWorkshop } from "#lib/store/index.ts";

/** The gotcha book whole, and whether something in its own history can be undone. */
export async function GET(): Promise<Response> {
  const { client } = theWorkshop();
  const { undo, redo } = await stacks(client, bookHistory);
  const can = { undo: undo.length > 0, redo: redo.length > 0 };
  return Response.json({ ...(await loadBook(client)), can });
}
