import { describe, expect, test } from "vitest";
import { newGotcha, newItem, newKit, newScope, type Scope } from "#lib/build/index.ts";
import { applies, brief, openingOf } from "#lib/gotcha/index.ts";
import { sampleDocument, sampleMark } from "../sample.ts";

const base = { machineId: "machine-1", gone: null, rev: 0 };
const assembly = (id: string, parentId: string | null = null) => ({
  ...base,
  id,
  name: id,
  parentId,
  rank: 1,
});

/** A machine with a pump and its gland, and a gearbox; a seal in each of the two, one of them bought since. */
function pumpBuild() {
  const document = sampleDocument({
    assemblies: [assembly("pump"), assembly("gland", "pump"), assembly("gearbox")],
    items: [
      newItem({ id: "pump-seal", machineId: "machine-1", name: "Lip seal", assemblyId: "gland" }),
      newItem({ id: "box-seal", machineId: "machine-1", name: "Lip seal", assemblyId: "gearbox" }),
      newItem({ id: "dowel", machineId: "machine-1", name: "Dowel" }),
    ],
    kits: [newKit({ id: "kit", buildId: "build-1", name: "Seal kit K-204", supplier: "Nordholt" })],
  });
  document.build.assemblyId = "pump";
  document.marks = [
    sampleMark(1, "part", { event: "obtained", itemId: "pump-seal", source: "Nordholt, by post" }),
    sampleMark(2, "part", { event: "removed", itemId: "box-seal", words: "an original one" }),
  ];
  return document;
}

const document = pumpBuild();
const applied = (scope: Partial<Scope>, opened?: string) =>
  applies({ appliesTo: [newScope(scope)], notTo: [] }, openingOf(document, opened));

describe("the kits that a build holds", () => {
  const pump = { assembly: "pump" };

  test.each(["Seal kit", "K-204", "Nordholt seal kit", "Seal kits", "k 204"])("“%s” is held", (kit) => {
    const match = applied({ ...pump, kit });
    expect(match?.unknown).toEqual([]);
    expect(match?.holds).toEqual([`the kit ${kit} is used`]);
  });

  test("another kit is not, and is no concern of this build", () => {
    expect(applied({ ...pump, kit: "K-205" })).toBeNull();
    expect(applied({ ...pump, kit: "Nordholt ring kit" })).toBeNull();
  });

  test("before any kit is there it is not known which will be used", () => {
    const none = openingOf({ ...document, kits: [] });
    const struck = openingOf({
      ...document,
      kits: document.kits.map((kit) => ({ ...kit, gone: "2026-01-01T00:00:00.000Z" })),
    });
    for (const opening of [none, struck]) {
      const match = applies({ appliesTo: [newScope({ ...pump, kit: "K-204" })], notTo: [] }, opening);
      expect(match?.unknown).toEqual(["whether the kit K-204 is used"]);
    }
  });

  test("a gotcha of a kit alone speaks in the build that holds it, and says why", () => {
    const gotcha = newGotcha({
      id: "a",
      symptom: "The small ring is for another pump",
      noted: "2026-01-01T00:00:00.000Z",
      appliesTo: [newScope({ kit: "K-204" })],
    });
    const told = (kits: typeof document.kits) =>
      brief({ gotchas: [gotcha], sightings: [] }, openingOf({ ...document, kits }), "2026-11-28");
    expect(told(document.kits)[0]?.why).toContain("It holds here: the kit K-204 is used.");
    expect(told([])).toEqual([]);
  });
});

describe("the parts in what is opened", () => {
  const bought = { item: "Lip seal", make: "reproduction", partMaker: "Nordholt" } as const;

  test("a gotcha of a part speaks where that part lies, be it in an assembly inside", () => {
    expect(applied(bought)?.tie).toBe("thing");
    expect(applied(bought, "gearbox")).toBeNull();
    expect(applied({ item: "Lip seal", make: "original" }, "gearbox")?.tie).toBe("thing");
    expect(applied({ item: "Lip seal", make: "original" })).toBeNull();
  });

  test("one of which nobody has said where it lies may lie here", () => {
    expect(applied({ item: "dowels" })?.tie).toBe("thing");
    expect(applied({ item: "dowel" }, "gearbox")?.tie).toBe("thing");
    expect(applied({ item: "rotor" })).toBeNull();
  });

  test("the make of the part that lies here counts, not of its namesake elsewhere", () => {
    const maker = { maker: "Invented Works", model: "No. 1" };
    expect(applied({ ...maker, assembly: "gearbox", ...bought }, "gearbox")).toBeNull();
    expect(applied({ ...maker, assembly: "pump", ...bought })?.unknown).toEqual([]);
    expect(applied({ ...maker, assembly: "pump", ...bought, item: "Dowel" })?.unknown).toEqual([
      "whether the dowel is a reproduction",
      "whether Nordholt made it",
    ]);
  });
});
