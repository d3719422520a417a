import { openWorkshop, projectionsIn } from "../open.ts";
import { rebuildSearch } from "../search/index.ts";
import type { Workshop } from "../workshop.ts";

/**
 * Makes the projections anew from the rows they follow from. The tables themselves are made anew too, since a damaged
 * one cannot be emptied.
 *
 * @returns the names of what was made
 */
export async function rebuildProjections(workshop: Workshop, programRoot: string): Promise<string[]> {
  const { client } = openWorkshop(workshop.folder, programRoot);
  await client.$disconnect();
  rebuildSearch(workshop.database, projectionsIn(programRoot));
  return ["search_entry"];
}
