import { openSoaks, theWorkshop } from "#lib/store/index.ts";

/** What soaks, cures or lies in a bath, in any build. */
export async function GET(): Promise<Response> {
  return Response.json(await openSoaks(theWorkshop().client));
}
