import { type BuildDocument, type RowList, rowLists } from "#lib/build/index.ts";
import { Refused } from "./command.ts";

/** Which list a column's ids are of. What may name a record of elsewhere, or one that is gone, is not among them. */
const names: Partial<Record<RowList, Record<string, RowList>>> = {
  assemblies: { parentId: "assemblies" },
  items: { assemblyId: "assemblies" },
  recordings: { sittingId: "sittings" },
  captions: { recordingId: "recordings" },
  marks: { sittingId: "sittings", recordingId: "recordings" },
  stills: { markId: "marks", recordingId: "recordings" },
  errata: { releaseId: "releases" },
  decisions: { recordingId: "recordings" },
};

/**
 * Sees that the records of a build that comes in belong together: each id once, each in this build, and every record
 * that is named among them.
 *
 * @throws Refused with the places, as they stand in build.json
 */
export function mustBeCoherent(document: BuildDocument): void {
  const troubles = [...rowLists.flatMap((list) => troublesOf(document, list)), ...circles(document)];
  if (troubles.length === 0) return;
  const more = troubles.length > 3 ? ` And ${troubles.length - 3} more.` : "";
  throw new Refused({
    found: `The records of the build do not belong together: ${troubles.slice(0, 3).join("; ")}.${more}`,
    expected: "Each id once in its list, and every record that is named among the build's own.",
    todo: "Mend build.json at those places, or export the build again. Nothing was brought in.",
  });
}

function troublesOf(document: BuildDocument, list: RowList): string[] {
  const seen = new Set<string>();
  return (document[list] as unknown as Record<string, unknown>[]).flatMap((row, index) => {
    const place = `${list}.${index}`;
    const twice = seen.has(String(row.id)) ? [`${place}.id: stands there twice`] : [];
    seen.add(String(row.id));
    const foreign = list !== "sightings" && row.buildId !== undefined && row.buildId !== document.build.id;
    return [
      ...twice,
      ...(foreign ? [`${place}.buildId: names another build`] : []),
      ...Object.entries(names[list] ?? {}).flatMap(([column, among]) =>
        row[column] === null || idsOf(document, among).has(String(row[column]))
          ? []
          : [`${place}.${column}: names none of the ${among}`],
      ),
    ];
  });
}

const known = new WeakMap<object, ReadonlySet<string>>();

function idsOf(document: BuildDocument, list: RowList): ReadonlySet<string> {
  const rows = document[list];
  const ids = known.get(rows) ?? new Set(rows.map((row) => row.id));
  known.set(rows, ids);
  return ids;
}

/** Assemblies that lie in themselves. */
function circles({ assemblies }: BuildDocument): string[] {
  const above = new Map(assemblies.map((one) => [one.id, one.parentId]));
  const well = new Set<string>();
  return assemblies.flatMap(({ id }, index) => {
    const way = new Set<string>();
    for (let at: string | null = id; at !== null && !well.has(at); at = above.get(at) ?? null) {
      if (way.has(at)) return [`assemblies.${index}.parentId: the assembly lies in itself`];
      way.add(at);
    }
    for (const one of way) well.add(one);
    return [];
  });
}
