import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { csv, isFormula } from "#lib/publish/csv.ts";
import { toPartsCsv } from "#lib/publish/index.ts";
import { readCsv } from "./read-csv.ts";
import { checked, options, part, procedure, smallJob, step } from "./sample.ts";

const decoder = new TextDecoder();

describe("the reader used here", () => {
  // The examples of RFC 4180, section 2, rules 1, 5, 6 and 7.
  test.each([
    [
      "aaa,bbb,ccc\r\nzzz,yyy,xxx\r\n",
      [
        ["aaa", "bbb", "ccc"],
        ["zzz", "yyy", "xxx"],
      ],
    ],
    [
      '"aaa","bbb","ccc"\r\nzzz,yyy,xxx',
      [
        ["aaa", "bbb", "ccc"],
        ["zzz", "yyy", "xxx"],
      ],
    ],
    [
      '"aaa","b\r\nbb","ccc"\r\nzzz,yyy,xxx',
      [
        ["aaa", "b\r\nbb", "ccc"],
        ["zzz", "yyy", "xxx"],
      ],
    ],
    ['"aaa","b""bb","ccc"', [["aaa", 'b"bb', "ccc"]]],
  ])("reads %j", (text, records) => {
    expect(readCsv(text)).toEqual(records);
  });
});

test("any table reads back as it was, but for the apostrophe before what a spreadsheet would run", () => {
  const cell = fc.oneof(
    fc.string({ unit: "binary" }),
    fc.constantFrom("=1+1", "-5", '"', ",", "\r\n", "@a", "\tx"),
  );
  fc.assert(
    fc.property(
      fc.array(fc.array(cell, { minLength: 2, maxLength: 5 }), { minLength: 1, maxLength: 6 }),
      (rows) => {
        const read = readCsv(csv(rows).slice(1));
        expect(read).toEqual(rows.map((row) => row.map((one) => (isFormula(one) ? `'${one}` : one))));
        for (const one of read.flat()) expect(one).not.toMatch(/^[=+\-@\t\r]/);
      },
    ),
    { seed: 4180, numRuns: 300 },
  );
});

test("the parts list: every part once, with its number, how many, and where it is met", async () => {
  const [file] = (await toPartsCsv(checked(await smallJob()), options())).files;
  expect(file?.name).toBe("parts.csv");
  const [heads, ...rows] = readCsv(decoder.decode(file?.bytes));
  expect(heads?.slice(0, 4)).toEqual(["No.", "Part", "Quantity", "Part number"]);
  expect(rows.map((row) => row.slice(0, 4))).toEqual([
    ["1", "Drain cock", "1", "OB-101"],
    ["2", "Impeller", "1", "OB-102"],
    ["3", "Jacking screw, 1/4 in BSW", "2", "OB-103"],
    ["4", "Gland nut", "1", "OB-104"],
    ["5", "Cover", "1", "OB-105"],
    ["6", "Cover nut", "4", "OB-106"],
  ]);
  expect(rows.every((row) => row.length === heads?.length)).toBe(true);
  expect(rows.every((row) => row.at(-1)?.startsWith("Unreleased · 2 open findings · 3 May 2026 · "))).toBe(
    true,
  );
});

// OWASP, "CSV Injection": a cell that begins with = + - @ or a tab may be run by a spreadsheet.
test("a name that looks like a formula keeps its text behind an apostrophe, and the losses say so", async () => {
  const name = '=HYPERLINK("http://evil.example","x")';
  const { files, losses } = await toPartsCsv(
    checked(procedure([step(1, "a", { parts: [part(1, name)] })])),
    options(),
  );
  expect(readCsv(decoder.decode(files[0]?.bytes))[1]?.[1]).toBe(`'${name}`);
  expect(losses.join(" ")).toContain("1 cell begins with a sign that a spreadsheet would take for a formula");
});
