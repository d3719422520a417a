import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { newItem, newKit } from "#lib/build/index.ts";
import { compile, ledgerOf, readKit, reconcileKits } from "#lib/procedure/index.ts";
import { sampleDocument, sampleMark } from "../../sample.ts";

const lines = (text: string) => readKit(text).map(({ name, partNumber, count }) => [count, partNumber, name]);

describe("what is written on a kit's bag", () => {
  test("a table with headings, in whatever order its columns stand", () => {
    expect(lines("Part No\tDescription\tQty\nG-12\tCover gasket\t1\nN-4\tCover nut, 1/4 BSF\t4")).toEqual([
      [1, "G-12", "Cover gasket"],
      [4, "N-4", "Cover nut, 1/4 BSF"],
    ]);
    expect(lines('Qty,Part number,Description\n2,WP-9,"Washer, thin"')).toEqual([
      [2, "WP-9", "Washer, thin"],
    ]);
  });

  test("plain lines, as people write them", () => {
    expect(lines("4 x Cover nut\n2× O-ring\n3 off Split pin\nSeal x2\nCover gasket")).toEqual([
      [4, "", "Cover nut"],
      [2, "", "O-ring"],
      [3, "", "Split pin"],
      [2, "", "Seal"],
      [1, "", "Cover gasket"],
    ]);
    // A size is no number of pieces.
    expect(lines("2 x Screw M6 x 20\nScrew M6 x 20")).toEqual([
      [2, "", "Screw M6 x 20"],
      [1, "", "Screw M6 x 20"],
    ]);
    expect(lines("Cover gasket, G-12, 1 off\n1; Circlip; QC-2")).toEqual([
      [1, "G-12", "Cover gasket"],
      [1, "QC-2", "Circlip"],
    ]);
  });

  test("the same line twice is one line with as many as both", () => {
    expect(lines("2 x Seal\n2 x Seal")).toEqual([[4, "", "Seal"]]);
  });

  test("no text is refused, and every line with a letter gives one line", () => {
    fc.assert(
      fc.property(fc.string({ unit: "grapheme", maxLength: 200 }), (text) => {
        const rows = text.split(/\r?\n/).map((line) => line.trim());
        const written = [...new Set(rows.filter((line) => /\p{L}/u.test(line)))];
        const read = readKit(text);
        expect(written.length - read.length).toBeGreaterThanOrEqual(0);
        expect(written.length - read.length).toBeLessThanOrEqual(1);
        for (const { count, name } of read) {
          expect(count).toBeGreaterThan(0);
          expect(name).not.toBe("");
        }
      }),
    );
  });
});

describe("need, received, fitted, left over", () => {
  const marks = [
    sampleMark(1, "part", { item: "Seal", event: "removed", count: "4" }),
    sampleMark(2, "part", { item: "Seal", event: "scrapped", count: "4" }),
    sampleMark(3, "action", { words: "Fit", stage: "assemble" }),
    sampleMark(4, "part", { item: "Seal", event: "fitted", count: "3" }),
  ];
  const kit = newKit({ id: "kit", buildId: "build-1", name: "Seal kit", text: "3 x Seal\n1 x Gasket" });
  const accountsOf = (given: Parameters<typeof sampleDocument>[0]) => {
    const document = sampleDocument({ items: [], marks, kits: [kit], ...given });
    return reconcileKits(ledgerOf(compile(document), document)).map(
      ({ name, need, received, fitted, left, short, leftWhy }) => ({
        name,
        need,
        received,
        fitted,
        left,
        short,
        leftWhy,
      }),
    );
  };

  test("a kit one short, with something left over", () => {
    expect(accountsOf({})).toEqual([
      { name: "Seal", need: 4, received: 3, fitted: 3, left: 0, short: 1, leftWhy: "" },
      { name: "Gasket", need: null, received: 1, fitted: 0, left: 1, short: 0, leftWhy: "" },
    ]);
  });

  test("what is not to be used stays out of the account, with its reason", () => {
    const lines = { "1 x Gasket": { notToUse: "too thick" } };
    expect(accountsOf({ kits: [{ ...kit, lines }] })[1]).toMatchObject({
      fitted: 0,
      left: 1,
      leftWhy: "too thick",
    });
  });

  test("fewer came than the bag says", () => {
    const lines = { "3 x Seal": { received: 2 } };
    expect(accountsOf({ kits: [{ ...kit, lines }] })[0]).toMatchObject({ received: 2, fitted: 2, short: 2 });
  });

  test("a line is known by its part number, or by the part that the restorer names for it", () => {
    const items = [newItem({ id: "seal", machineId: "machine-1", name: "Seal", partNumber: "S-7" })];
    const named = (text: string, lines = {}) =>
      accountsOf({
        items,
        marks: marks.map((mark) => ({ ...mark, fields: { ...mark.fields, itemId: "seal" } })),
        kits: [{ ...kit, text, lines }],
      })[0];
    expect(named("3 x Rubber ring, S-7")).toMatchObject({ need: 4, fitted: 3 });
    expect(named("3 x Rubber ring", { "3 x Rubber ring": { item: "Seal" } })).toMatchObject({
      need: 4,
      fitted: 3,
    });
  });

  test("two kits that hold the same part are drawn upon one after the other", () => {
    const two = [
      { ...kit, id: "kit-1", text: "2 x Seal" },
      { ...kit, id: "kit-2", text: "2 x Seal" },
    ];
    expect(accountsOf({ kits: two }).map(({ fitted, left, short }) => [fitted, left, short])).toEqual([
      [2, 0, 2],
      [1, 1, 0],
    ]);
  });
});
