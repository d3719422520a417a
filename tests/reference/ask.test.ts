import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { allThreads, bearings, book, replyTo } from "#lib/reference/index.ts";

const runs = process.env.LONG ? 5000 : 400;

describe("what is typed is answered, or said to be unknown", () => {
  test("no text makes it throw, and an answer without a sentence has figures or a table", () => {
    const words = fc.constantFrom(
      "1/4",
      "BSF",
      "spanner",
      "26 tpi",
      "M",
      "H7/g6",
      "drill",
      "8.8",
      "brown",
      "in",
      "25",
    );
    const text = fc.oneof(
      fc.string({ maxLength: 60 }),
      fc.array(words, { maxLength: 6 }).map((all) => all.join(" ")),
    );
    fc.assert(
      fc.property(text, (typed) => {
        const reply = replyTo(typed);
        for (const { says, figures, beside } of reply.entries)
          expect(Boolean(says) || figures.length > 0 || beside !== undefined).toBe(true);
        if (typed.trim() !== "" && reply.entries.length === 0) expect(reply.nothing).toBeTruthy();
      }),
      { numRuns: runs },
    );
  });

  test("every thread and every bearing of the tables is answered by its own name, with a source to each figure", () => {
    for (const { name } of [...allThreads, ...bearings.map(({ number }) => ({ name: number }))]) {
      const [entry] = replyTo(name).entries;
      expect(entry, name).toBeDefined();
      for (const { source } of entry?.figures ?? []) expect(source.standard.length).toBeGreaterThan(3);
    }
  });

  test("a long text is refused with words that say what was found and what is read", () => {
    expect(replyTo("M6 ".repeat(100)).nothing).toContain("299 characters; up to 200");
  });

  test("every row of every table has as many cells as columns, and a source", () => {
    for (const { tables } of book)
      for (const { title, columns, rows } of tables)
        for (const { cells, sources } of rows()) {
          expect(cells.length, title).toBe(columns.length);
          expect(sources.length, title).toBeGreaterThan(0);
        }
  });
});

describe("questions a restorer asks", () => {
  const says = (text: string): string => replyTo(text).entries[0]?.says ?? "";

  test("a fit without a size, a class that is not in the standard: nothing is made up", () => {
    expect(replyTo("H7/g6").nothing).toContain("without a size");
    expect(replyTo("600 H7").entries).toEqual([]);
  });

  test("a metre-long shaft that is warmed (definition of the coefficient, OpenStax 12e-6)", () => {
    expect(says("1000 mm steel shaft 100 K warmer, expansion")).toContain("1.2\u00a0mm");
  });

  test("two pitches of one diameter are told apart (ISO 724)", () => {
    expect(says("M8 x 1 and M8x1.25")).toContain("do not go together");
    expect(says("7.95 mm, 1 mm pitch")).toContain("M8x1");
  });

  test("the head of an M10 is 16 mm, and 17 mm on an old one (ISO 272, DIN 931)", () => {
    expect(says("M10 spanner")).toContain("spanner 16 mm");
    expect(says("M10 spanner")).toContain("17 mm");
  });

  test("1-8 UNC is the inch bolt (ASME B1.1)", () => {
    expect(replyTo("1-8 UNC").entries[0]?.title).toBe("1-8 UNC");
  });
});
