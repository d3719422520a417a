import { settings, theWorkshop, writeSettings } from "#lib/store/index.ts";

/** Keeps the settings of the workshop. */
export async function POST(request: Request): Promise<Response> {
  const chosen = settings.safeParse(await request.json().catch(() => null));
  if (!chosen.success) {
    const issue = chosen.error.issues[0];
    const found = `The settings do not fit: ${issue?.path.join(".")}: ${issue?.message}.`;
    return Response.json({ found, expected: "", todo: "Load the page again." }, { status: 400 });
  }
  await writeSettings(theWorkshop().client, chosen.data);
  return Response.json({});
}
