import type {
  AnswerRow,
  Assembly,
  Build,
  BuildDocument,
  CaptionTrack,
  Cut,
  DraftDecisionRow,
  Edit,
  Erratum,
  ForeignMark,
  Gotcha,
  Item,
  Kit,
  Machine,
  Recording,
  Release,
  Sighting,
  Sitting,
  Still,
} from "#lib/build/index.ts";
import { type Mark, wordsOf } from "#lib/mark/index.ts";
import { closedMarks } from "./open-items.ts";
import type { Prisma, PrismaClient } from "./prisma-client/client.ts";
import { readRow, readRows } from "./tables.ts";

type Client = Prisma.TransactionClient;

/** A build whole, as it is at one moment; null if there is none of that id. */
export async function loadBuild(client: PrismaClient, buildId: string): Promise<BuildDocument | null> {
  return client.$transaction((tx) => readDocument(tx, buildId), { timeout: 60_000, maxWait: 30_000 });
}

async function readDocument(tx: Client, buildId: string): Promise<BuildDocument | null> {
  const build = (await readRow(tx, "build", buildId)) as unknown as Build | null;
  if (!build) return null;
  const { machineId } = build;
  const machine = (await readRow(tx, "machine", machineId)) as unknown as Machine;
  const marks = await readRows<Mark>(tx, "mark", { buildId });
  const sightings = await readRows<Sighting>(tx, "sighting", { buildId });
  return {
    machine,
    assemblies: await readRows<Assembly>(tx, "assembly", { machineId }),
    items: await readRows<Item>(tx, "item", { machineId }),
    build,
    sittings: await readRows<Sitting>(tx, "sitting", { buildId }),
    recordings: await readRows<Recording>(tx, "recording", { buildId }),
    captions: await readRows<CaptionTrack>(tx, "captionTrack", { buildId }),
    cuts: await readRows<Cut>(tx, "cut", { buildId }),
    marks,
    stills: await readRows<Still>(tx, "still", { buildId }),
    edits: await readRows<Edit>(tx, "edit", { buildId }),
    answers: await readRows<AnswerRow>(tx, "answer", { buildId }),
    releases: await readRows<Release>(tx, "release", { buildId }),
    errata: await readRows<Erratum>(tx, "erratum", { buildId }),
    decisions: await readRows<DraftDecisionRow>(tx, "draftDecision", { buildId }),
    gotchas: await readRows<Gotcha>(tx, "gotcha", { sightings: { some: { buildId } } }),
    sightings,
    kits: await readRows<Kit>(tx, "kit", { buildId }),
    foreign: await foreignMarks(tx, machineId, buildId, marks),
  };
}

/**
 * Marks of the machine's other builds that close one of these or are closed by one of them; and what was left open
 * in those builds, since it may be put right in this one.
 */
async function foreignMarks(
  tx: Client,
  machineId: string,
  buildId: string,
  marks: Mark[],
): Promise<ForeignMark[]> {
  const own = new Set(marks.map((mark) => mark.id));
  const named = new Set(marks.flatMap((mark) => mark.fields.closes ?? []).filter((id) => !own.has(id)));
  const others = await readRows<Mark>(tx, "mark", {
    gone: null,
    buildId: { not: buildId },
    build: { machineId, gone: null },
    OR: [{ id: { in: [...named] } }, { fieldsJson: { contains: '"closes":["' } }, { kind: "deferred" }],
  });
  const closed = await closedMarks(tx, { machineId });
  return others
    .filter(
      (mark) =>
        named.has(mark.id) ||
        (mark.fields.closes ?? []).some((id) => own.has(id)) ||
        (mark.kind === "deferred" && !closed.has(mark.id)),
    )
    .map((mark) => ({
      id: mark.id,
      buildId: mark.buildId,
      kind: mark.kind,
      words: wordsOf(mark),
      closes: mark.fields.closes ?? [],
    }));
}

/** A machine and its builds, for the first screen. */
export interface MachineLine {
  machine: Machine;
  builds: { build: Build; sittings: number; recordings: number; marks: number; unsorted: number }[];
}

/** Machines and builds that have not been struck out, by name. */
export async function listMachines(client: PrismaClient): Promise<MachineLine[]> {
  const machines = await client.machine.findMany({
    where: { gone: null },
    orderBy: { name: "asc" },
    include: {
      builds: {
        where: { gone: null },
        orderBy: { title: "asc" },
        include: {
          _count: {
            select: {
              sittings: { where: { gone: null } },
              recordings: { where: { gone: null } },
              marks: { where: { gone: null } },
            },
          },
        },
      },
    },
  });
  const unsorted = await client.mark.groupBy({
    by: ["buildId"],
    where: { gone: null, kind: "" },
    _count: { _all: true },
  });
  const unsortedOf = new Map(unsorted.map((row) => [row.buildId, row._count._all]));
  return machines.map(({ builds, ...machine }) => ({
    machine,
    builds: builds.map(({ _count, ...build }) => ({
      build: build as Build,
      ..._count,
      unsorted: unsortedOf.get(build.id) ?? 0,
    })),
  }));
}
