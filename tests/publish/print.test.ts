import { readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { toPdf } from "#lib/publish/index.ts";
import { codePoints, printCoverage } from "#lib/publish/pdf/coverage.ts";
import { fontFiles } from "#lib/publish/pdf/fonts.ts";
import type { PrintOrder } from "#lib/publish/pdf/order.ts";
import { print } from "#lib/publish/pdf/print.ts";
import { breakable, printCleaner } from "#lib/publish/pdf/printable.ts";
import { qrCode } from "#lib/publish/pdf/qr.ts";
import { projectRoot } from "#lib/publish/root.ts";
import { readPdf, unspaced } from "./read-pdf.ts";
import { checked, options, procedure, step } from "./sample.ts";

function order(text: string): PrintOrder {
  const { words } = fontFiles();
  return {
    workspace: join(projectRoot(), "no-such-folder"),
    main: "main.typ",
    sources: [{ name: "main.typ", text }],
    data: [],
    fonts: words,
  };
}

test("a print that fails says what was found and what to do", async () => {
  await expect(print(order('#panic("BROKEN")'))).rejects.toThrow(
    /could not be set: .*BROKEN.*Nothing is lost/,
  );
});

test("a print that does not end is stopped", async () => {
  const endless = "#for a in range(100000) { for b in range(100000) { let c = a * b } }";
  await expect(print(order(endless), 1500)).rejects.toThrow(/not done after 1\.5 seconds and was stopped/);
});

test("a print reads no file but those it was given", async () => {
  await expect(print(order('#read("/etc/passwd")'))).rejects.toThrow(/could not be set/);
  await expect(print(order('#read("../package.json")'))).rejects.toThrow(/could not be set/);
});

test("text that PDF/UA does not allow is printed tagged, with the reason", async () => {
  const untitled = await print(order('#set text(font: "Source Sans 3")\nNo title'));
  expect(untitled.standard).toBe("tagged-1.7");
  expect(untitled.why).toContain("PDF/UA-1");
  expect((await readPdf(new Uint8Array(untitled.pdf))).marked).toBe(true);
});

// Against the typesetter's own check: it refuses PDF/UA-1 for a sign that no font has.
test("what the fonts are said to have, they print: every fourth sign of them", async () => {
  const covers = printCoverage();
  const signs = Array.from({ length: 0x20000 }, (_, code) => code)
    .filter(
      (code) =>
        /[\p{L}\p{N}\p{P}\p{S}]/u.test(String.fromCodePoint(code)) && covers(String.fromCodePoint(code)),
    )
    .filter((_, index) => index % 4 === 0)
    .map((code) => String.fromCodePoint(code));
  expect(signs.length).toBeGreaterThan(1000);
  const details = [{ mark: "d", text: signs.join(" ") }];
  const output = await toPdf(checked(procedure([step(1, "All of them", { details })])), options());
  expect([output.standard, output.losses]).toEqual(["ua-1", []]);
  const { nodes } = await readPdf(output.files[0]?.bytes as Uint8Array);
  // One glyph may serve several code points, such as µ and μ, and a few are read back in pieces.
  const printed = unspaced(nodes.map(({ text }) => text).join("")).normalize("NFKD");
  const absent = signs.filter((sign) => !printed.includes(unspaced(sign.normalize("NFKD"))));
  expect(absent.length).toBeLessThan(signs.length / 100);
});

test("the signs of the sheet are among them", () => {
  const covers = printCoverage();
  for (const sign of "⚠⌀☐▯–−·×±°µΩ½⅜№éßŁЖΩ") expect(covers(sign)).toBe(true);
  expect(covers("中")).toBe(false);
  expect(codePoints(readFileSync(fontFiles().words[0] as string)).has(0x41)).toBe(true);
});

test("a letter whose accent no one font has keeps the letter, and names the accent", () => {
  const replaced = new Map<number, number>();
  const clean = printCleaner((text) => /^[a-z\u25af]*$/.test(text), replaced);
  expect(clean("ab\u0300c中d\u200d")).toBe("ab▯c▯d");
  expect([...replaced]).toEqual([
    [0x300, 1],
    [0x4e2d, 1],
  ]);
});

test("long words may break, ranges after their dash, and they lose no letter", () => {
  expect(breakable("0.0015–0.0025\u00a0in", 12)).toBe("0.0015–\u200b0.0025\u00a0in");
  expect(breakable("12.611\u00a0mm", 12)).toBe("12.611\u00a0mm");
  expect(breakable("short words stay", 12)).toBe("short words stay");
  const broken = breakable(`a ${"x".repeat(100)} b`, 12);
  expect(broken.replaceAll("\u200b", "")).toBe(`a ${"x".repeat(100)} b`);
  expect(Math.max(...broken.split(/[\s\u200b]/).map((piece) => piece.length))).toBeLessThanOrEqual(12);
});

// ISO/IEC 18004: a quiet zone of four modules; finder patterns of 7 × 7 modules in three corners.
test("codes keep a quiet zone of four modules, begin at three corners, and are large enough to print", () => {
  for (const address of ["https://a.example/", "https://film.example/watch?v=ostrey-pump&t=784"]) {
    const code = qrCode(address);
    const modules = code?.modules ?? 0;
    const dark = new Set(
      [...(code?.svg ?? "").matchAll(/M(\d+),(\d+)h10/g)].map(
        ([, x, y]) => `${Number(x) / 10},${Number(y) / 10}`,
      ),
    );
    expect(code?.svg).toContain(`viewBox="0 0 ${modules * 10} ${modules * 10}"`);
    for (const place of dark) {
      for (const at of place.split(",").map(Number)) {
        expect(at).toBeGreaterThanOrEqual(4);
        expect(at).toBeLessThan(modules - 4);
      }
    }
    const last = modules - 11;
    for (const [x, y] of [
      [4, 4],
      [last, 4],
      [4, last],
    ] as const) {
      for (let step = 0; step < 7; step++) {
        expect(dark.has(`${x + step},${y}`)).toBe(true);
        expect(dark.has(`${x},${y + step}`)).toBe(true);
      }
    }
    // Printed 28 mm wide with its quiet zone: the code itself is 20 mm or more (common practice, no source).
    expect((28 * (modules - 8)) / modules).toBeGreaterThanOrEqual(20);
  }
});
