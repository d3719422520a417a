import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  type Gotcha,
  newGotcha,
  newScope,
  newSighting,
  type Outcome,
  type Sighting,
} from "#lib/build/index.ts";
import {
  applies,
  brief,
  entriesOf,
  fromCsv,
  fromJson,
  liesInSerials,
  liesInYears,
  newcomers,
  type Opening,
  standingOf,
  toCsv,
  toJson,
} from "#lib/gotcha/index.ts";
import { readCsv } from "../publish/read-csv.ts";

const noted = "2026-01-01T00:00:00.000Z";
const TODAY = "2026-11-28";
const gotcha = (id: string, given: Partial<Gotcha> = {}) => newGotcha({ id, symptom: id, noted, ...given });
let count = 0;
const sighting = (
  gotchaId: string,
  outcome: Outcome,
  at = "2026-05-03T10:00:00.000Z",
  given: Partial<Sighting> = {},
) => newSighting({ id: `sighting-${count++}`, gotchaId, outcome, at, ...given });

const opening: Opening = {
  machine: { id: "m", maker: "Ostrey", model: "No. 2", variant: "A", serial: "K 4120", years: "about 1911" },
  assembly: { name: "Circulating pump", inside: ["Gland"] },
  parts: [{ name: "Lip seal", here: true, make: "reproduction", maker: "Nord" }],
  kits: [],
  buildId: "b",
};

describe("serial numbers and years", () => {
  const by = "number" as const;
  test.each([
    ["K4120", { from: "K 4000", to: "K 4999", by }, "same"],
    ["k 4120", { from: "K4120", to: "K4120", by }, "same"],
    ["K4120", { from: "4000", to: "4999", by }, "contrary"],
    ["No. 4120", { from: "", to: "4119", by }, "contrary"],
    ["4120/2", { from: "4120", to: "", by }, "same"],
    ["K999", { from: "K1000", to: "K2000", by }, "contrary"],
    ["between 4000 and 4200", { from: "3000", to: "5000", by }, "same"],
    ["between 4000 and 4200", { from: "4100", to: "5000", by }, "unknown"],
    ["", { from: "1", to: "2", by }, "unknown"],
    ["not readable", { from: "1", to: "2", by }, "unknown"],
    ["3W 0190", { from: "3W 1", to: "3W 999", by }, "same"],
    ["3W4410", { from: "3W 1", to: "3W 999", by }, "contrary"],
    ["4W 0190", { from: "3W 1", to: "3W 999", by }, "contrary"],
    ["B12", { from: "A99", to: "C01", by: "text" as const }, "same"],
    ["12", { from: "1", to: "2", by: "text" as const }, "same"],
  ])("%s in %o: %s", (serial, range, lies) => {
    expect(liesInSerials(serial, range)).toBe(lies);
  });

  test.each([
    ["1911", "1910", "1915", "same"],
    ["about 1911", "1910", "1915", "unknown"],
    ["about 1911", "1905", "1915", "same"],
    ["1911 to 1920", "1912", "", "unknown"],
    ["1925", "", "1924", "contrary"],
    ["before the war", "1910", "1915", "unknown"],
  ])("%s in %s to %s: %s", (years, from, to, lies) => {
    expect(liesInYears(years, { from, to })).toBe(lies);
  });
});

describe("where a gotcha applies", () => {
  const here = { maker: "Ostrey", model: "No. 2", assembly: "Water pump" };
  const tie = (scope: Parameters<typeof newScope>[0]) =>
    applies({ appliesTo: [newScope(scope)], notTo: [] }, opening)?.tie ?? null;

  test("the same assembly by another name, what is inside it, its maker, its kind, the whole machine", () => {
    expect(tie(here)).toBe("assembly");
    expect(tie({ ...here, assembly: "gland" })).toBe("inside");
    expect(tie({ ...here, model: "" })).toBe("maker");
    expect(tie({ assembly: "Water pump" })).toBe("kind");
    expect(tie({ ...here, assembly: "" })).toBe("model");
    expect(tie({ ...here, model: "No. 3" })).toBe("sister");
  });

  test("nothing where anything is contrary, or nothing is said", () => {
    expect(tie({ ...here, maker: "Tolvik" })).toBeNull();
    expect(tie({ ...here, variant: "B" })).toBeNull();
    expect(tie({ ...here, assembly: "Gearbox" })).toBeNull();
    expect(tie({ ...here, item: "Lip seal", make: "original" })).toBeNull();
    expect(tie({ ...here, item: "Lip seal", make: "reproduction", partMaker: "Sud" })).toBeNull();
    expect(tie({})).toBeNull();
  });

  test("not where it is said not to, unless that is not known", () => {
    const but = (not: Parameters<typeof newScope>[0]) =>
      applies({ appliesTo: [newScope(here)], notTo: [newScope({ ...here, ...not })] }, opening);
    expect(but({ variant: "A" })).toBeNull();
    expect(but({ variant: "B" })).not.toBeNull();
    expect(but({ kit: "K7" })).not.toBeNull();
  });

  test("what is not known of the machine is said, and counts for less", () => {
    const asked = applies(
      { appliesTo: [newScope({ ...here, years: { from: "1911", to: "" } })], notTo: [] },
      opening,
    );
    expect(asked?.unknown).toEqual(["its year (from 1911)"]);
    expect(asked?.closeness).toBeLessThan(1);
  });
});

describe("standing", () => {
  const standing = (sightings: Sighting[], given: Partial<Gotcha> = {}) => {
    const entry = entriesOf({ gotchas: [gotcha("a", given)], sightings }).get("a");
    if (!entry) throw new Error("no entry");
    return standingOf(entry, TODAY);
  };

  test("climbs with what is met, and not with what is merely told", () => {
    expect(standing([]).trust).toBe("heard");
    expect(standing([sighting("a", "absent")]).trust).toBe("heard");
    expect(standing([sighting("a", "happened", undefined, { origin: "a stranger's book" })]).trust).toBe(
      "heard",
    );
    expect(standing([sighting("a", "happened")]).trust).toBe("seen once");
    expect(standing([sighting("a", "happened"), sighting("a", "avoided")]).trust).toBe("repeated");
    expect(standing([sighting("a", "happened")], { cause: "proven" }).trust).toBe("proven");
    expect(standing([], { cause: "proven" }).trust).toBe("heard");
  });

  test("is due when it has not been met for three years, or was absent three times since", () => {
    expect(standing([sighting("a", "happened", "2023-11-01T00:00:00.000Z")]).due).toMatch(/3 years/);
    expect(standing([sighting("a", "happened", "2024-01-01T00:00:00.000Z")]).due).toBeNull();
    const absent = ["06", "07", "08"].map((month) =>
      sighting("a", "absent", `2026-${month}-01T00:00:00.000Z`),
    );
    expect(standing([sighting("a", "happened"), ...absent]).due).toMatch(/absent/);
    expect(standing([...absent, sighting("a", "happened", "2026-09-01T00:00:00.000Z")]).due).toBeNull();
  });
});

describe("the brief", () => {
  const scope = newScope({ maker: "Ostrey", model: "No. 2", assembly: "Water pump" });
  const ids = (gotchas: Gotcha[], sightings: Sighting[] = []) =>
    brief({ gotchas, sightings }, opening, TODAY).map((line) => line.entry.gotcha.id);

  test("leaves out what is superseded, struck out, or was said not to apply to this machine", () => {
    const old = gotcha("old", { appliesTo: [scope] });
    expect(ids([old])).toEqual(["old"]);
    expect(ids([old, gotcha("new", { appliesTo: [scope], supersedes: ["old"] })])).toEqual(["new"]);
    expect(ids([{ ...old, gone: TODAY }])).toEqual([]);
    const said = (buildId: string) =>
      sighting("old", "not applicable", undefined, { machineId: "m", buildId });
    expect(ids([old], [said("another")])).toEqual([]);
    // The answer just given stays where it can be seen, and taken back.
    expect(brief({ gotchas: [old], sightings: [said("b")] }, opening, TODAY)[0]?.answered).toBe(
      "not applicable",
    );
  });

  test("is five long at most, and the same whatever order the rows stand in", () => {
    const grades = ["nuisance", "hours", "part", "machine", "injury"] as const;
    const many = Array.from({ length: 9 }, (_, index) =>
      gotcha(`g${index}`, { appliesTo: [scope], severity: grades[index % 5] }),
    );
    const expected = ids(many);
    expect(expected).toHaveLength(5);
    expect(expected.slice(0, 1)).toEqual(["g4"]);
    fc.assert(
      fc.property(fc.shuffledSubarray(many, { minLength: 9 }), (shuffled) => {
        expect(ids(shuffled)).toEqual(expected);
      }),
    );
  });

  test("a circle of joins tells itself by one, and loses none", () => {
    const a = gotcha("a", { appliesTo: [scope], joinedInto: "b" });
    const b = gotcha("b", { appliesTo: [scope], joinedInto: "a" });
    const entries = [
      ...entriesOf({
        gotchas: [b, a],
        sightings: [sighting("a", "happened"), sighting("b", "absent")],
      }).values(),
    ];
    expect(entries.map((entry) => [entry.gotcha.id, entry.joined.length, entry.sightings.length])).toEqual([
      ["a", 1, 2],
    ]);
  });
});

describe("a book that is given away and brought in", () => {
  const scopes = [
    newScope({ maker: "Ostrey", serial: { from: "K 1", to: "K 9", by: "text" } }),
    newScope({ assembly: 'The "pump", old' }),
  ];
  const mine = gotcha("mine", {
    symptom: "=1+1, it\nsaid",
    mechanism: "-x",
    severity: "part",
    appliesTo: scopes,
    notTo: [newScope({ variant: "B" })],
  });

  test("comes back from JSON and from a table as it went", () => {
    const book = { gotchas: [mine, gotcha("plain")], sightings: [sighting("mine", "avoided")] };
    expect(fromJson(toJson(book))).toMatchObject(book);
    expect(fromCsv(toCsv(book), () => "new", noted).gotchas).toEqual(book.gotchas);
    // No cell may begin like a formula (OWASP, "CSV Injection").
    for (const cell of readCsv(toCsv(book)).flat()) expect(cell).not.toMatch(/^[=+\-@\t\r]/);
  });

  test("is heard, bears its origin, and writes over nothing", () => {
    const given = {
      gotchas: [
        { ...mine, symptom: "theirs" },
        gotcha("theirs", { joinedInto: "mine", supersedes: ["mine"] }),
      ],
      sightings: [sighting("theirs", "happened"), sighting("mine", "absent")],
    };
    const here = { gotchas: new Set(["mine"]), sightings: new Set<string>() };
    const came = newcomers(here, given, "Harrow's book");
    expect(came.known).toBe(1);
    expect(came.gotchas).toMatchObject([
      { id: "theirs", origin: "Harrow's book", joinedInto: null, supersedes: [] },
    ]);
    const entry = entriesOf({ gotchas: [mine, ...came.gotchas], sightings: came.sightings }).get("theirs");
    expect(entry && standingOf(entry, TODAY).trust).toBe("heard");
    expect(came.sightings.every((one) => one.origin === "Harrow's book")).toBe(true);
  });

  test.each([
    ["not JSON", () => fromJson("{"), /not JSON/],
    ["another JSON", () => fromJson('{"form":"x"}'), /form/],
    ["a table without symptoms", () => fromCsv("name,age\r\nx,1\r\n", () => "n", noted), /name, age/],
    [
      "a table with a grade of its own",
      () => fromCsv("symptom,how bad\r\nx,awful\r\n", () => "n", noted),
      /Line 2.*severity/,
    ],
  ])("that is %s is refused, and it is said why", (_, read, words) => {
    expect(read).toThrow(words);
  });
});
