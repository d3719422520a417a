import { type BuildDocument, rowLists } from "#lib/build/index.ts";
import { apply } from "./apply.ts";
import { mustBeCoherent } from "./coherent.ts";
import type { Put } from "./command.ts";
import { loadBuild } from "./load.ts";
import type { PrismaClient } from "./prisma-client/client.ts";
import { type Row, readRow, type TableName } from "./tables.ts";

/** Lists of what belongs to other builds too: the machine's assemblies and items, the workshop's gotchas. */
const shared: ReadonlySet<string> = new Set(["assemblies", "items", "gotchas"]);

/** What to do where the workshop has a build of that id already. They are never merged. */
export type ImportChoice = "replace" | "keep both";

/** The build came in; or it is there already and the restorer has not said what to do. */
export type Imported = { kind: "imported"; document: BuildDocument } | { kind: "exists"; title: string };

const tableOf: Record<(typeof rowLists)[number], TableName> = {
  assemblies: "assembly",
  items: "item",
  sittings: "sitting",
  recordings: "recording",
  captions: "captionTrack",
  cuts: "cut",
  marks: "mark",
  stills: "still",
  edits: "edit",
  answers: "answer",
  releases: "release",
  errata: "erratum",
  decisions: "draftDecision",
  gotchas: "gotcha",
  sightings: "sighting",
  kits: "kit",
};

/**
 * Brings a build into the workshop as one command. Ids are kept, so that what refers to a mark still finds it; only
 * "keep both" gives the newcomer ids of its own. "Replace" strikes out what the known build has and the new one
 * lacks: it stays in the history.
 */
export async function importBuild(
  client: PrismaClient,
  given: BuildDocument,
  choice: ImportChoice | null,
): Promise<Imported> {
  const known = await loadBuild(client, given.build.id);
  const there = known !== null && known.build.gone === null;
  if (there && choice === null) return { kind: "exists", title: known.build.title };
  mustBeCoherent(given);
  const document = there && choice === "keep both" ? withNewIds(given) : given;
  const puts = await putsFor(client, document);
  if (there && choice === "replace") puts.push(...strikeOuts(known, document));
  await apply(client, {
    id: crypto.randomUUID(),
    buildId: document.build.id,
    label: `Brought in: ${document.build.title}`.slice(0, 500),
    puts,
  });
  const now = await loadBuild(client, document.build.id);
  return { kind: "imported", document: now ?? document };
}

async function putsFor(client: PrismaClient, document: BuildDocument): Promise<Put[]> {
  const put = async (table: TableName, row: { id: string }): Promise<Put> => {
    const { rev: _, ...set } = row as Row;
    return { table, id: row.id, rev: (await readRow(client, table, row.id))?.rev ?? 0, set };
  };
  const puts = [await put("machine", document.machine)];
  const [assemblies, items, ...rest] = rowLists;
  // An assembly may name a parent: those above come first.
  const above = new Map(document.assemblies.map((one) => [one.id, one.parentId]));
  const tree = [...document.assemblies].sort((a, b) => depth(above, a.id) - depth(above, b.id));
  for (const row of tree) puts.push(await put(tableOf[assemblies], row));
  for (const row of document[items]) puts.push(await put(tableOf[items], row));
  puts.push(await put("build", document.build));
  const known = await knownGotchas(client, document);
  for (const list of rest) {
    for (const row of document[list]) {
      // What the workshop's book says already is its own.
      if (list !== "gotchas" || !known.has(row.id)) puts.push(await put(tableOf[list], row));
    }
  }
  return puts;
}

async function knownGotchas(client: PrismaClient, { gotchas }: BuildDocument): Promise<Set<string>> {
  const rows = await client.gotcha.findMany({
    where: { id: { in: gotchas.map((one) => one.id) } },
    select: { id: true },
  });
  return new Set(rows.map((row) => row.id));
}

/** How many assemblies lie above one. */
function depth(above: ReadonlyMap<string, string | null>, id: string): number {
  let steps = 0;
  for (let at = above.get(id) ?? null; at !== null; at = above.get(at) ?? null) steps += 1;
  return steps;
}

/** What the known build has and the new one lacks, struck out. Machine, assemblies and items belong to other builds too. */
function strikeOuts(known: BuildDocument, document: BuildDocument): Put[] {
  const gone = new Date().toISOString();
  return rowLists
    .filter((list) => !shared.has(list))
    .flatMap((list) => {
      const kept = new Set(document[list].map((row) => row.id));
      return known[list]
        .filter((row) => row.gone === null && !kept.has(row.id))
        .map((row) => ({ table: tableOf[list], id: row.id, rev: row.rev, set: { gone } }));
    });
}

/** The same build under ids of its own. The machine and its items are the same ones. */
export function withNewIds(document: BuildDocument): BuildDocument {
  const renamed = new Map<string, string>();
  const own = [
    document.build,
    ...rowLists.filter((list) => !shared.has(list)).flatMap((list) => document[list] as { id: string }[]),
  ];
  for (const row of own) renamed.set(row.id, crypto.randomUUID());
  for (const edit of document.edits)
    renamed.set(edit.id, `${edit.edit}-${renamed.get(edit.markId) ?? edit.markId}`);
  const rename = (value: unknown): unknown => {
    if (typeof value === "string") return renamed.get(value) ?? value;
    if (Array.isArray(value)) return value.map(rename);
    if (typeof value !== "object" || value === null) return value;
    return Object.fromEntries(
      Object.entries(value).map(([key, one]) => [key, isReference(key) ? rename(one) : deep(one)]),
    );
  };
  const deep = (value: unknown): unknown =>
    typeof value === "object" && value !== null ? rename(value) : value;
  const copy = rename(document) as BuildDocument;
  copy.answers = copy.answers.map((answer) => ({
    ...answer,
    key: answer.key
      .split("/")
      .map((part) => renamed.get(part) ?? part)
      .join("/"),
  }));
  // A copy has not been published: what was, and what was said of it, stays with the first.
  copy.releases = [];
  copy.errata = [];
  copy.build = { ...copy.build, title: `${document.build.title} (second copy)` };
  return copy;
}

/** Columns that hold an id; an edit's value may be one. Words that happen to look like one are left alone. */
function isReference(column: string): boolean {
  return (
    column === "id" || column.endsWith("Id") || column === "closes" || column === "value" || column === "mark"
  );
}
