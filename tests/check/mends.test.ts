import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type BuildDocument, newEdit, present } from "#lib/build/index.ts";
import { check, drawSketch, type MendedRow, mend, rules, type Sketch } from "#lib/check/index.ts";
import type { Finding, Mend } from "#lib/finding/index.ts";
import type { Mark } from "#lib/mark/index.ts";
import { markRow } from "#lib/mark/index.ts";
import { compile, stepsOf } from "#lib/procedure/index.ts";
import { buildOf, procedures } from "./wording/procedures.ts";
import { seeds } from "./wording/seeds.ts";

const say = (document: BuildDocument) => check(compile(document), document).findings;
const titles = (document: BuildDocument) => stepsOf(compile(document)).map(({ title }) => title);
const offered = (document: BuildDocument) =>
  say(document).flatMap((finding) => (finding.mends ?? []).map((one) => ({ finding, one })));

function made(document: BuildDocument, finding: Finding, one: Mend): MendedRow[] {
  let made = 0;
  return mend(document, finding, one, { now: "2026-11-01T10:00:00Z", newId: () => `mended-${++made}` });
}

/** The document with rows written, as the store would write them: by id, new ones at the end. */
function write(document: BuildDocument, rows: readonly MendedRow[]): BuildDocument {
  const put = <T extends { id: string }>(list: T[], row: T): T[] =>
    list.some(({ id }) => id === row.id)
      ? list.map((one) => (one.id === row.id ? row : one))
      : [...list, row];
  let { marks, edits } = document;
  for (const one of rows) {
    if (one.table === "mark") marks = put(marks, one.row);
    else edits = put(edits, one.row);
  }
  return { ...document, marks, edits };
}

/** The laws of a quick mend, for every one that a document's findings offer. */
function holds(document: BuildDocument): number {
  const all = offered(document);
  for (const { finding, one } of all) {
    const before = structuredClone(document);
    const rows = made(document, finding, one);
    expect(document, "a mend writes nothing itself").toEqual(before);
    expect(rows.length, `${one.name}: ${finding.found}`).toBeGreaterThan(0);
    expect(new Set(rows.map(({ row }) => row.id)).size).toBe(rows.length);
    const after = write(document, rows);
    for (const mark of after.marks) expect(markRow.safeParse(mark).error).toBeUndefined();
    const own = (where: BuildDocument) => say(where).filter(({ rule }) => rule === finding.rule);
    const left = own(after);
    const keys = left.map(({ key }) => key);
    expect(keys, `${one.name} removes it: ${finding.found}`).not.toContain(finding.key);
    // What stood twice in a step is said once: the second place speaks up when the first is mended.
    const known = own(document).flatMap(({ key, evidence }) => [key, evidence]);
    for (const { key, evidence } of left)
      expect(known.includes(key) || known.includes(evidence), `${one.name} adds none: ${key}`).toBe(true);
    const orphans = (where: BuildDocument) => compile(where).orphans.map(({ edit }) => edit);
    expect(orphans(after), "no hand edit is orphaned").toEqual(orphans(document));
    const restored = new Map([...document.marks, ...document.edits].map((row) => [row.id as string, row]));
    const undone = {
      ...after,
      marks: after.marks.flatMap((row) => (restored.get(row.id) as Mark | undefined) ?? []),
      edits: after.edits
        .filter(({ id }) => restored.has(id))
        .map((row) => document.edits.find(({ id }) => id === row.id) ?? row),
    };
    expect(say(undone)).toEqual(say(document));
    expect(made(after, finding, one).length === 0 || one.name.startsWith("list"), "twice does no more").toBe(
      true,
    );
  }
  return all.length;
}

describe("a quick mend removes its finding, adds none of its rule, and can be taken back", () => {
  test.each(rules.flatMap((rule) => rule.examples.map((one) => [rule.id, one.says, one.sketch] as const)))(
    "%s: %s",
    (_, __, sketch) => void holds(drawSketch(sketch)),
  );

  test("in the seeded procedures", () => {
    let count = 0;
    for (const rule of ["late-condition", "two-commands", "tool-not-listed", "consumable-not-listed"]) {
      const ways = seeds.find((one) => one.rule === rule)?.ways ?? [];
      for (const one of procedures) {
        const clean = buildOf(one);
        const action = clean.marks.filter(({ kind }) => kind === "action").at(3) as Mark;
        for (const way of ways) count += holds(way(clean, action));
      }
    }
    expect(count).toBeGreaterThan(200);
  });

  test("with hand edits laid over: titles, stages, places, merges", () => {
    const words = fc.constantFrom(
      "Undo the nuts and lift the cover off.",
      "Tap the rim with a soft mallet if it sticks.",
      "Wipe the bore with white spirit, then slide the shaft in.",
      "Draw the pin.",
    );
    const step = fc.record({
      words,
      gap: fc.integer({ min: 1, max: 60 }),
      detail: fc.option(words),
      result: fc.boolean(),
    });
    const edit = fc.record({
      of: fc.nat(3),
      to: fc.nat(3),
      edit: fc.constantFrom("title" as const, "stage" as const, "after" as const, "merged" as const),
      title: words,
    });
    fc.assert(
      fc.property(
        fc.array(step, { minLength: 4, maxLength: 4 }),
        fc.array(edit, { maxLength: 4 }),
        (steps, edits) => {
          let at = 0;
          const marks = steps.map(({ words, gap, detail, result }) => {
            at += gap;
            return [
              at,
              "action",
              { words, detail: detail ?? "", result: result ? "It is bare." : "" },
            ] as const;
          });
          const document = drawSketch({ marks } as Sketch);
          const id = (index: number) => document.marks[index]?.id ?? "";
          const rows = edits.map((one) =>
            newEdit({
              id: `${one.edit}-${id(one.of)}`,
              buildId: document.build.id,
              markId: id(one.of),
              edit: one.edit,
              value: { title: one.title, stage: "clean", after: id(one.to), merged: id(one.to) }[one.edit],
              basis: String(document.marks[one.of]?.fields.words),
            }),
          );
          const unique = [...new Map(rows.map((row) => [row.id, row])).values()];
          holds({ ...document, edits: unique });
        },
      ),
      { numRuns: process.env.LONG ? 2000 : 120 },
    );
  });
});

describe("what a quick mend makes", () => {
  const first = (sketch: Sketch, name: string) => {
    const document = drawSketch(sketch);
    const found = offered(document).find(({ one }) => one.name === name);
    if (!found) throw new Error(`no mend ${name}`);
    return write(document, made(document, found.finding, found.one));
  };

  test("the condition first, and the rest of the paragraph as it was", () => {
    const detail = "Grease the lip.  Press it out again if it tilts! Wipe it dry.";
    const after = first(
      { marks: [[1, "action", { words: "Press the seal in.", detail }]] },
      "condition-first",
    );
    expect(after.marks[0]?.fields.detail).toBe(
      "Grease the lip.  If it tilts, press it out again! Wipe it dry.",
    );
  });

  test("a step of each act; parts go with the act that names them, and what should be seen with the last", () => {
    const after = first(
      {
        marks: [
          [10, "action", { words: "Undo the nuts and lift the cover off.", result: "The gasket is bare." }],
          [14, "part", { item: "Nut", event: "removed" }],
          [20, "part", { item: "Cover", event: "removed" }],
          [90, "action", { words: "Draw the pin." }],
        ],
      },
      "split-step",
    );
    const steps = stepsOf(compile(after));
    expect(steps.map(({ title }) => title)).toEqual([
      "Undo the nuts.",
      "Lift the cover off.",
      "Draw the pin.",
    ]);
    expect(steps.map(({ parts }) => parts.map(({ name }) => name))).toEqual([["Nut"], ["Cover"], []]);
    expect(steps.map(({ result }) => result)).toEqual(["", "The gasket is bare.", ""]);
  });

  test("without film the second act comes right after the first", () => {
    const document = drawSketch({
      marks: [
        [1, "action", { words: "Undo the nuts and lift the cover off." }],
        [2, "action", { words: "Draw the pin." }],
      ],
    });
    const unfilmed = {
      ...document,
      marks: document.marks.map((mark, rank) => ({ ...mark, at: null, recordingId: null, rank })),
    };
    const [found] = offered(unfilmed);
    const after = found && write(unfilmed, made(unfilmed, found.finding, found.one));
    expect(after && titles(after)).toEqual(["Undo the nuts.", "Lift the cover off.", "Draw the pin."]);
  });

  test("the tool in the list of the step that names it, with the next action a second later", () => {
    const after = first(
      {
        marks: [
          [5, "action", { words: "Tap the rim with a soft mallet." }],
          [6, "action", { words: "Draw the pin." }],
        ],
      },
      "list-tool",
    );
    expect(compile(after).tools).toMatchObject([{ name: "Soft mallet", steps: [1] }]);
    expect(present(after.marks)).toHaveLength(3);
  });
});
