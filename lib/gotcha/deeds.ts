import {
  type BuildDocument,
  type Gotcha,
  type Item,
  type Machine,
  newGotcha,
  newScope,
  newSighting,
  type Outcome,
  present,
  type Scope,
  type Sighting,
} from "#lib/build/index.ts";
import { type Mark, wordsOf } from "#lib/mark/index.ts";
import type { OpenedPart, Opening } from "./applies.ts";
import { type BriefLine, briefLength } from "./brief.ts";
import { meanings } from "./words.ts";

/** The history of the book: what is written in it, and not in a build, stands under this name in the change log. */
export const bookHistory = "gotcha-book";

/** A machine in words: "Ostrey No. 2, serial 4120". */
export function machineWords({ name, maker, model, serial, variant }: Machine): string {
  const called = [maker, model].filter(Boolean).join(" ") || name;
  return [called, variant && `variant ${variant}`, serial && `serial ${serial}`]
    .filter(Boolean)
    .join(", ")
    .slice(0, 500);
}

/** An answer to a gotcha given in a build. */
export function answerOf(
  document: Pick<BuildDocument, "build" | "machine">,
  given: {
    id: string;
    gotchaId: string;
    outcome: Outcome;
    at: string;
    assembly: string;
    markId?: string | null;
  },
): Sighting {
  const { build, machine } = document;
  return newSighting({
    ...given,
    markId: given.markId ?? null,
    buildId: build.id,
    machineId: machine.id,
    machine: machineWords(machine),
  });
}

/** The gotcha that a mark becomes: its words, and the machine, assembly and part it was met on as where it applies. */
export function gotchaOfMark(document: BuildDocument, mark: Mark, given: { id: string; at: string }): Gotcha {
  const { maker, model, variant } = document.machine;
  const item = document.items.find((one) => one.id === mark.fields.itemId);
  const assembly = assemblyOf(document, mark)?.name ?? "";
  const scope: Partial<Scope> = {
    maker,
    model,
    variant,
    assembly,
    item: item?.name ?? wordsOf(mark, "item"),
  };
  return newGotcha({
    id: given.id,
    noted: given.at,
    symptom: wordsOf(mark).replace(/\s+/g, " ").slice(0, 500),
    mechanism: wordsOf(mark, "why"),
    avoid: wordsOf(mark, "instead"),
    appliesTo: [newScope(scope)],
    source: "met",
  });
}

/** The assembly a mark is about: its part's, else the build's. */
export function assemblyOf(
  document: BuildDocument,
  mark?: Mark,
): BuildDocument["assemblies"][number] | undefined {
  const item = document.items.find((one) => one.id === mark?.fields.itemId);
  const id = item?.assemblyId ?? document.build.assemblyId;
  return present(document.assemblies).find((one) => one.id === id);
}

/** What is about to be opened in a build; without an assembly its title stands for one. */
export function openingOf(
  document: BuildDocument,
  assemblyId: string | null = document.build.assemblyId,
): Opening {
  const assemblies = present(document.assemblies);
  const assembly = assemblies.find((one) => one.id === assemblyId);
  const below = (id: string | null, depth = 0): typeof assemblies =>
    depth > 20
      ? []
      : assemblies.filter((one) => one.parentId === id).flatMap((one) => [one, ...below(one.id, depth + 1)]);
  const inside = assembly ? below(assembly.id) : assemblies;
  return {
    machine: document.machine,
    assembly: { name: assembly?.name ?? document.build.title, inside: inside.map((one) => one.name) },
    parts: partsOf(document, assembly ? new Set([assembly, ...inside].map((one) => one.id)) : null),
    kits: present(document.kits).map(({ supplier, name }) => `${supplier} ${name}`.trim()),
    buildId: document.build.id,
  };
}

/**
 * The machine's parts, and whether they are reproductions, by what the marks say: one that was made, obtained or put
 * in another's place is, unless its source says "original"; one whose source or note says "reproduction" is.
 */
function partsOf(document: BuildDocument, opened: ReadonlySet<string> | null): OpenedPart[] {
  const marks = present(document.marks).filter((mark) => mark.kind === "part");
  return present(document.items).map((item) => {
    const own = marks.filter((mark) => mark.fields.itemId === item.id);
    const here = opened === null || item.assemblyId === null || opened.has(item.assemblyId);
    return { name: item.name, here, ...makeOf(item, own) };
  });
}

function makeOf(item: Item, own: readonly Mark[]): Pick<OpenedPart, "make" | "maker"> {
  const said = [item.notes, ...own.flatMap((mark) => [wordsOf(mark), wordsOf(mark, "source")])].join(" ");
  const words = new Set(meanings(said));
  const bought = own.findLast((mark) =>
    /^(made|obtained|replaced|substituted)$/.test(wordsOf(mark, "event")),
  );
  const maker = bought ? wordsOf(bought, "source") : "";
  if (words.has("reproduction")) return { make: "reproduction", maker };
  if (words.has("original")) return { make: "original", maker: "" };
  return bought ? { make: "reproduction", maker } : { make: "", maker: "" };
}

/** The brief of a build, of all that applies to what is opened in it: but for what its own log has taught and says. */
export function briefOf(all: readonly BriefLine[], document: BuildDocument): BriefLine[] {
  return all.filter((line) => !taughtIn(line, document)).slice(0, briefLength);
}

/** Whether everything known of a gotcha comes from marks of this build. */
function taughtIn({ entry: { sightings } }: BriefLine, { build }: BuildDocument): boolean {
  return sightings.length > 0 && sightings.every((one) => one.buildId === build.id && one.markId !== null);
}

/** The first mark of a removal in a build, before which the brief speaks; undefined while there is none. */
export function firstRemoval(document: BuildDocument): Mark | undefined {
  return present(document.marks).find((mark) => mark.kind === "part" && wordsOf(mark, "event") === "removed");
}
