import { find, theWorkshop } from "#lib/store/index.ts";

/** What was found of a text: `?text=`, narrowed by `kind`, `build` and `machine`, each as often as wanted. */
export async function GET(request: Request): Promise<Response> {
  const query = new URL(request.url).searchParams;
  const { client, workshop } = theWorkshop();
  const machines = query.getAll("machine").slice(0, 100);
  // Marks and captions are known by their build: a machine stands for its builds.
  const ofMachines =
    machines.length === 0
      ? []
      : await client.build.findMany({ where: { machineId: { in: machines } }, select: { id: true } });
  const builds = [...query.getAll("build").slice(0, 100), ...ofMachines.map((row) => row.id)];
  const text = (query.get("text") ?? "").slice(0, 300);
  return Response.json(
    find(workshop, { text, kinds: query.getAll("kind").slice(0, 20), builds, machines }, 40),
  );
}
