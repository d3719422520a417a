import { describe, expect, test } from "vitest";
import { newItem, newRecording, newSitting } from "#lib/build/index.ts";
import type { Mark } from "#lib/mark/index.ts";
import {
  arrivalOf,
  compile,
  containersOf,
  draftAssembly,
  holdPointsOf,
  ledgerOf,
  soakState,
  soaksOf,
  stacksOf,
  stepsOf,
  whereWasI,
  writeDraft,
  writtenTime,
} from "#lib/procedure/index.ts";
import { sampleDocument, sampleMark } from "../../sample.ts";

const part = (at: number, item: string, event: string, more = {}) =>
  sampleMark(at, "part", { item, event, count: "1", ...more });
const action = (at: number, words: string, stage?: string) =>
  sampleMark(at, "action", { words, ...(stage ? { stage } : {}) });

function looked(marks: Mark[], given: Parameters<typeof sampleDocument>[0] = {}) {
  const document = sampleDocument({ items: [], marks, ...given });
  const procedure = compile(document);
  return { document, procedure, ledger: ledgerOf(procedure, document) };
}

describe("the order of events", () => {
  test("is that of the moments over all sittings and recordings, not that of the stages", () => {
    const sittings = [1, 2].map((rank) =>
      newSitting({ id: `sitting-${rank}`, buildId: "build-1", title: `${rank}`, stage: "strip", rank }),
    );
    const recordings = [
      newRecording({ id: "recording-1", buildId: "build-1", sittingId: "sitting-1", name: "1", offset: 100 }),
      newRecording({ id: "recording-2", buildId: "build-1", sittingId: "sitting-1", name: "2", offset: 0 }),
      newRecording({ id: "recording-3", buildId: "build-1", sittingId: "sitting-2", name: "3" }),
    ];
    const later = { sittingId: "sitting-2", recordingId: "recording-3" };
    const { ledger } = looked(
      [
        sampleMark(1, "part", { item: "Nut", event: "removed" }, { id: "first", recordingId: "recording-2" }),
        sampleMark(1, "action", { words: "Fit", stage: "assemble" }, { id: "fit" }),
        part(2, "Nut", "fitted"),
        sampleMark(1, "action", { words: "Open it again", stage: "strip" }, { id: "again", ...later }),
        sampleMark(2, "part", { item: "Nut", event: "removed" }, { id: "second", ...later }),
      ],
      { sittings, recordings },
    );
    expect(ledger.events.map(({ event, stage }) => [event, stage])).toEqual([
      ["removed", "strip"],
      ["fitted", "assemble"],
      ["removed", "strip"],
    ]);
    expect(ledger.accounts[0]?.now).toMatchObject({ on: 0, cameOff: 1 });
    expect(ledger.accounts[0]?.gained).toEqual({ found: 1, obtained: 0, made: 0, unexplained: 0 });
  });
});

test("a part is one part, whether its mark has the item or only the name", () => {
  const items = [newItem({ id: "item-nut", machineId: "machine-1", name: "Cover nut" })];
  const { ledger } = looked(
    [
      part(1, "Cover nut", "removed", { itemId: "item-nut", count: "4" }),
      action(5, "Fit", "assemble"),
      part(6, "cover  nut", "fitted", { count: "4" }),
    ],
    { items },
  );
  expect(ledger.accounts.map(({ item, now }) => [item, now.on, now.cameOff])).toEqual([["item-nut", 4, 0]]);
});

describe("a stack", () => {
  test("is summed whatever the units, and says what has moved", () => {
    const layer = (at: number, item: string, event: string, place: string, typed: string) =>
      part(at, item, event, { stack: "Thrust", stackPlace: place, thickness: { typed } });
    const { ledger } = looked([
      layer(1, "Shim", "removed", "2", "0.5 mm"),
      layer(2, "Washer", "removed", "1", "1/16 in"),
      action(5, "Fit", "assemble"),
      layer(6, "Washer", "fitted", "1", "1/16 in"),
      layer(7, "Shim", "fitted", "2", "0.6 mm"),
    ]);
    const [stack] = stacksOf(ledger);
    // 1/16 in is 1.5875 mm: an inch is 25.4 mm (NIST SP 811, appendix B).
    expect(stack?.before).toBeCloseTo(0.0020875, 12);
    expect(stack?.after).toBeCloseTo(0.0021875, 12);
    expect(stack?.difference).toBeNull();
    expect(stack?.on.map(({ event }) => event.name)).toEqual(["Washer", "Shim"]);
  });
});

describe("the assembly drafted from the strip-down", () => {
  const strip = [
    part(10, "Cover nut", "removed", { count: "4", torque: { typed: "5 lbf ft" } }),
    part(20, "Cover", "removed", { foundWrong: "two gaskets under it" }),
    part(30, "Gasket", "removed"),
    part(40, "Impeller", "removed", { covers: "Gasket" }),
  ];

  test("is the reverse, moved no further than what covers what asks for", () => {
    const { ledger, procedure, document } = looked(strip);
    const { entries, circles } = draftAssembly(ledger, procedure, document);
    expect(entries.map(({ name, off, count }) => [name, off.at, count])).toEqual([
      ["Gasket", 30, 1],
      ["Impeller", 40, 1],
      ["Cover", 20, 1],
      ["Cover nut", 10, 4],
    ]);
    expect(entries[2]?.foundWrong).toBe("two gaskets under it");
    expect(circles).toEqual([]);
  });

  test("asks what reversal never has, until a mark or the restorer answers", () => {
    const marks = [...strip, part(50, "Impeller", "cleaned"), part(51, "Gasket", "made")];
    const answer = { id: "a", buildId: "build-1", evidence: "", gone: null, rev: 1 };
    const { ledger, procedure, document } = looked(marks, {
      answers: [{ ...answer, key: "assembly/name:impeller/lock", reason: "held by its key" }],
    });
    const open = (name: string) =>
      draftAssembly(ledger, procedure, document)
        .entries.find((entry) => entry.name === name)
        ?.asked.filter((one) => one.mark === null && one.answer === null)
        .map((one) => one.name);
    expect(open("Impeller")).not.toContain("clean");
    expect(open("Impeller")).not.toContain("lock");
    expect(open("Impeller")).toContain("inspect");
    expect(open("Gasket")).not.toContain("renew");
    expect(open("Cover nut")).not.toContain("torque");
    expect(open("Cover")).toContain("torque");
  });

  test("is written down as actions that fit nothing yet: the ledger says the same after it as before", () => {
    const { ledger, procedure, document } = looked(strip);
    const { entries } = draftAssembly(ledger, procedure, document);
    let ids = 0;
    const { sitting, marks } = writeDraft(document, entries, () => `new-${++ids}`);
    const written = {
      ...document,
      sittings: [...document.sittings, sitting],
      marks: [...document.marks, ...marks],
    };
    const after = compile(written);
    expect(ledgerOf(after, written).accounts).toEqual(ledger.accounts);
    expect(stepsOf(after).map(({ stage, title }) => [stage, title])).toEqual([
      ["assemble", "Fit the Gasket."],
      ["assemble", "Fit the Impeller."],
      ["assemble", "Fit the Cover."],
      ["assemble", "Fit 4 × Cover nut."],
    ]);
    expect(marks[2]?.fields.detail).toBe(
      "It came off at 0:20 of first.mp4. That was not right: two gaskets under it.",
    );
  });

  test("carries on what the trial fit found out", () => {
    const { ledger, procedure, document } = looked([
      ...strip,
      action(60, "Try it", "trial fit"),
      sampleMark(61, "gotcha", { words: "The impeller rubs without its shim", item: "Impeller" }),
    ]);
    const impeller = draftAssembly(ledger, procedure, document).entries.find(
      (one) => one.name === "Impeller",
    );
    expect(impeller?.fromTrial.map((one) => one.words)).toEqual(["The impeller rubs without its shim"]);
  });
});

test("a tin holds what went in and has not come out", () => {
  const { ledger } = looked([
    part(1, "Nut", "removed", { count: "4", container: "tin 1" }),
    part(2, "Key", "removed", { container: "Tin 1" }),
    part(3, "Key", "cleaned", { container: "tin 2" }),
    action(5, "Fit", "assemble"),
    part(6, "Nut", "fitted", { count: "3" }),
  ]);
  expect(
    containersOf(ledger).map(({ name, countedIn, countedOut, holds }) => [
      name,
      countedIn,
      countedOut,
      holds.map((held) => `${held.count} ${held.name}`),
    ]),
  ).toEqual([
    ["tin 1", 5, 4, ["1 Nut"]],
    ["tin 2", 1, 0, ["1 Key"]],
  ]);
});

test("what was thrown away stays in its bag when a new one goes on", () => {
  const { ledger } = looked([
    part(1, "Gasket", "removed"),
    part(2, "Gasket", "scrapped", { container: "waste bag" }),
    part(3, "Gasket", "made"),
    action(5, "Fit", "assemble"),
    part(6, "Gasket", "fitted"),
  ]);
  expect(containersOf(ledger)[0]).toMatchObject({ countedIn: 1, countedOut: 0, holds: [{ count: 1 }] });
});

describe("a bath", () => {
  const bath = {
    words: "Body in the acid",
    least: { typed: "2 h" },
    longest: { typed: "4 h" },
    began: "2026-05-03 10:00",
  };
  const at = (time: string) => writtenTime(`2026-05-03 ${time}`) as number;
  const soakOf = (fields = {}, marks: Mark[] = []) => {
    const { procedure, document } = looked([sampleMark(1, "deferred", { ...bath, ...fields }), ...marks]);
    return soaksOf(procedure, document)[0];
  };

  test("is too early, ready, overdue by the clock alone, at the limits too", () => {
    const soak = soakOf();
    if (!soak) throw new Error("there is a soak");
    const states = ["11:59", "12:00", "14:00", "14:01"].map((time) => soakState(soak, at(time)).state);
    expect(states).toEqual(["too early", "ready", "ready", "overdue"]);
    expect(soakState(soak, at("13:30")).dueIn).toBe(1800);
  });

  test("is over when a mark closes it", () => {
    const soak = soakOf({}, [sampleMark(100, "action", { words: "Take it out", closes: ["deferred-1"] })]);
    expect(soak && soakState(soak, at("20:00")).state).toBe("over");
  });

  test("a time that is none is no beginning", () => {
    expect(writtenTime("yesterday")).toBeNull();
    expect(writtenTime("2026-13-45 10:00")).toBeNull();
    expect(writtenTime("2026-05-03 10:00+02:00")).toBe(Date.UTC(2026, 4, 3, 8) / 1000);
  });
});

describe("where was I", () => {
  test("an overdue bath first, then what goes on next, then what is loose", () => {
    const now = writtenTime("2026-05-03 20:00") as number;
    const bath = { words: "Body in the acid", longest: { typed: "4 h" }, began: "2026-05-03 10:00" };
    const strip = [
      part(1, "Cover nut", "removed", { torque: { typed: "5 lbf ft" } }),
      part(2, "Cover", "removed"),
    ];
    const next = (marks: Mark[]) => {
      const { ledger, procedure, document } = looked(marks);
      return whereWasI(ledger, procedure, document, now).next.words;
    };
    const begun = [...strip, action(5, "Fit the cover", "assemble"), part(6, "Cover", "fitted")];
    expect(next([...begun, sampleMark(7, "deferred", bath)])).toBe("Take out: Body in the acid");
    expect(next(begun)).toBe("Fit: Cover nut");
    expect(next([...begun, part(8, "Cover nut", "fitted")])).toBe("Torque: Cover nut");
    expect(next([])).toBe("Film its arrival, and mark what you see");
  });
});

test("the survey of arrival says what it lacks until it has been answered", () => {
  const answer = {
    id: "a",
    buildId: "build-1",
    key: "arrival/aim",
    evidence: "",
    reason: "run",
    gone: null,
    rev: 1,
  };
  const empty = looked([]);
  expect(arrivalOf(empty.ledger, empty.document)).toMatchObject({ lacking: 6, begun: false });
  const begun = looked(
    [part(1, "Nut", "removed"), sampleMark(2, "measurement", { asFound: { typed: "2 mm" } })],
    {
      answers: [answer],
    },
  );
  expect(arrivalOf(begun.ledger, begun.document)).toMatchObject({ lacking: 4, begun: true });
});

test("hold points come from what is open, loose, limited or dangerous", () => {
  const { ledger, procedure, document } = looked([
    action(1, "Fit", "assemble"),
    part(2, "Nut", "fitted", { torque: { typed: "5 lbf ft" } }),
    sampleMark(3, "deferred", { words: "Old belt on", waitsFor: "the new one" }),
    sampleMark(4, "measurement", { words: "End float", limit: { typed: "0.3 mm" } }),
    action(5, "Start it", "prove"),
    sampleMark(6, "caution", { words: "The belt has no guard", avoid: "Stand aside" }),
  ]);
  expect(holdPointsOf(ledger, procedure, document).map(({ from, words }) => [from, words])).toEqual([
    ["left provisional", "Old belt on"],
    ["not torqued", "Nut"],
    ["limit", "End float: limit 0.3 mm, not measured as fitted"],
    ["hazard", "The belt has no guard: Stand aside"],
  ]);
});
