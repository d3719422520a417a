import fc from "fast-check";
import { expect, test } from "vitest";
import { canonicalJson, contentHash, sheetState } from "#lib/publish/index.ts";
import { checked, finding, procedure, smallJob, step } from "./sample.ts";

// RFC 8785, 3.2.2: the example of serialising primitive types.
test("writes numbers, texts and literals as RFC 8785 does", () => {
  const example = JSON.parse(
    String.raw`{"numbers":[333333333.33333329,1E30,4.50,2e-3,0.000000000000000000000000001],"string":"\u20ac$\u000F\u000aA'\u0042\u0022\u005c\\\"\/","literals":[null,true,false]}`,
  );
  expect(canonicalJson(example)).toBe(
    String.raw`{"literals":[null,true,false],"numbers":[333333333.3333333,1e+30,4.5,0.002,1e-27],"string":"€$\u000f\nA'B\"\\\\\"/"}`,
  );
});

// RFC 8785, 3.2.3: the example of sorting keys.
test("sorts keys by their UTF-16 code units as RFC 8785 does", () => {
  const example = {
    "\u20ac": "Euro Sign",
    "\r": "Carriage Return",
    "\ufb33": "Hebrew Letter Dalet With Dagesh",
    "1": "One",
    "\ud83d\ude00": "Emoji: Grinning Face",
    "\u0080": "Control",
    "\u00f6": "Latin Small Letter O With Diaeresis",
  };
  expect(Object.values(JSON.parse(canonicalJson(example))).length).toBe(7);
  const order = [...canonicalJson(example).matchAll(/:"([^"]+)"/g)].map(([, value]) => value);
  expect(order).toEqual([
    "Carriage Return",
    "One",
    "Control",
    "Latin Small Letter O With Diaeresis",
    "Euro Sign",
    "Emoji: Grinning Face",
    "Hebrew Letter Dalet With Dagesh",
  ]);
});

test("is JSON that reads back as the same value, whatever order the keys came in", () => {
  fc.assert(
    fc.property(fc.jsonValue(), (value) => {
      const text = canonicalJson(value);
      expect(canonicalJson(JSON.parse(text))).toBe(text);
      expect(JSON.parse(text)).toEqual(JSON.parse(JSON.stringify(value)));
    }),
    { seed: 11, numRuns: 200 },
  );
});

test("the hash is of the procedure alone, and any word of it changes the hash", async () => {
  const job = await smallJob();
  const hash = contentHash(checked(job));
  expect(hash).toMatch(/^[0-9a-f]{64}$/);
  expect(contentHash(checked(job, [finding()]))).toBe(hash);
  const reversed = Object.fromEntries(Object.entries(job).reverse()) as unknown as typeof job;
  expect(contentHash(checked(reversed))).toBe(hash);
  expect(contentHash(checked({ ...job, summary: `${job.summary} ` }))).not.toBe(hash);
});

test("the standing counts open findings alone", () => {
  const job = checked(procedure([step(1, "Look")]), [finding(), finding({ answer: "as it was" }), finding()]);
  const state = sheetState(job, { printedOn: "2026-05-03" }, "0123456789abcdef");
  expect(state.line).toBe("Unreleased · 2 open findings · 3 May 2026 · 01234567");
  const released = sheetState(
    job,
    { printedOn: "2026-05-03", release: { revision: "C", date: "2026-06-01" } },
    "ab",
  );
  expect(released.line).toBe("Revision C · 2 open findings · 1 June 2026 · ab");
});
