import {
  apply,
  command,
  historyStep,
  isOfTheDisk,
  Refused,
  step,
  theWorkshop,
  wordsOf,
} from "#lib/store/index.ts";

/** Carries out a command, or one step of undo or redo. When this answers 200, the change is on disk. */
export async function POST(request: Request): Promise<Response> {
  const { client } = theWorkshop();
  const body: unknown = await request.json().catch(() => null);
  const wanted = command.safeParse(body);
  const back = historyStep.safeParse(body);
  try {
    if (back.success) return Response.json(await step(client, back.data));
    if (wanted.success) return Response.json(await apply(client, wanted.data));
  } catch (error) {
    if (error instanceof Refused) {
      const { found, expected, todo, stale } = error;
      return Response.json({ found, expected, todo, stale }, { status: 409 });
    }
    // It may work the next time: the page keeps the change, and tries again.
    if (isOfTheDisk(error)) return Response.json(wordsOf(error), { status: 503 });
    throw error;
  }
  const issue = wanted.error?.issues[0];
  return Response.json(
    {
      found: `The request is not a command: ${issue?.path.join(".") ?? ""} ${issue?.message ?? ""}.`,
      expected: "A command of the form in lib/store/command.ts was expected.",
      todo: "Load the page again; it may be from another version of the program.",
      stale: null,
    },
    { status: 400 },
  );
}
