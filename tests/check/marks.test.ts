import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { describe, expect, test } from "vitest";
import { check, checkEntry, drawSketch, type Entry, entryRules, type Sketch } from "#lib/check/index.ts";
import { measurementRules } from "#lib/check/measurement/over-marks.ts";
import { readFolder } from "#lib/folder/index.ts";
import { compile } from "#lib/procedure/index.ts";

const about = (rule: string, sketch: Sketch, decimal: "." | "," = ".") => {
  const document = drawSketch(sketch);
  document.build.decimal = decimal;
  return check(compile(document), document).findings.filter((one) => one.rule === rule);
};
const typed = (text: string) => ({ typed: text });
type Marks = NonNullable<Sketch["marks"]>;
const endFloat = {
  words: "end float",
  item: "shaft",
  specified: typed("8 to 12 thou"),
  limit: typed("at most 20 thou"),
};

/** An entry as marks: its part with material and thread, its value, its related values. */
function asMarks({ text, what, context }: Entry, field = "asFound"): Marks {
  const { part = "the part", material, fastener, instrument, spec, limit, verdict, related = [] } = context;
  return [
    [1, "part", { item: part, event: "inspected", material, size: fastener }],
    [
      2,
      "measurement",
      {
        words: what,
        item: part,
        [field]: typed(text),
        ...(spec && { specified: typed(spec) }),
        ...(limit && { limit: typed(limit) }),
        instrument,
        note: verdict,
      },
    ],
    ...related.map((one, i): Marks[number] => [
      3 + i,
      "measurement",
      { words: one.what, item: part, asFitted: typed(one.text) },
    ]),
  ];
}

describe("a measured value of a mark", () => {
  const cases = ["development", "held-out"].flatMap((name): (Entry & { id: string })[] =>
    JSON.parse(readFileSync(new URL(`./cases/${name}.json`, import.meta.url), "utf8")),
  );

  test("has the findings that its entry has, and they lead back to it", () => {
    const lost = cases.filter((entry) => {
      const alone = checkEntry({ ...entry, context: { part: "the part", ...entry.context } });
      const document = drawSketch({ marks: asMarks(entry) });
      const { findings } = check(compile(document), document);
      const own = findings.filter((one) => one.place.mark === "measurement@2" && one.place.field);
      const rules = new Set(own.map((one) => one.rule));
      return alone.some((one) => !rules.has(one.rule));
    });
    expect(lost.map((one) => `${one.id} ${one.text}`)).toEqual([]);
  });

  test("says of its four fields which one is meant", () => {
    const [one] = about("units-disagree", {
      marks: [
        [
          1,
          "measurement",
          { words: "tube", asFound: typed("34.9 mm"), specified: typed("1-3/8 in (38.1 mm)") },
        ],
      ],
    });
    expect(one?.place).toEqual({ mark: "measurement@1", field: "specified" });
  });

  test("is read with the decimal sign of its build", () => {
    const sketch: Sketch = {
      marks: [[1, "measurement", { words: "Rohr", asFound: typed("1,375 in (34,9 mm)") }]],
    };
    expect(about("units-disagree", sketch, ",")).toEqual([]);
  });
});

describe("as found", () => {
  test("between specification and limit it still serves", () => {
    expect(
      about("outside-limits", { marks: [[1, "measurement", { ...endFloat, asFound: typed("15 thou") }]] }),
    ).toEqual([]);
  });

  test("beyond its limit it is asked about, if nothing was done", () => {
    const marks: Marks = [[5, "measurement", { ...endFloat, asFound: typed("23 thou") }]];
    const [one] = about("outside-limits", { marks });
    expect(one?.place).toEqual({ mark: "measurement@5", field: "asFound" });
    expect(
      about("outside-limits", { marks: [[1, "part", { item: "shaft", event: "replaced" }], ...marks] }),
    ).toHaveLength(1);
  });

  test.each([
    ["it was fitted otherwise", [[9, "measurement", { ...endFloat, asFitted: typed("11 thou") }]]],
    ["the part was repaired", [[9, "part", { item: "shaft", event: "repaired" }]]],
    ["the part was scrapped", [[9, "part", { item: "shaft", event: "scrapped" }]]],
  ] as [string, Marks][])("beyond its limit it is in order when later %s", (_, later) => {
    const marks: Marks = [[5, "measurement", { ...endFloat, asFound: typed("23 thou") }], ...later];
    expect(about("outside-limits", { marks })).toEqual([]);
  });

  test("as fitted beyond its limit is asked about whatever was done before", () => {
    const marks: Marks = [
      [1, "measurement", { ...endFloat, asFound: typed("25 thou"), asFitted: typed("23 thou") }],
      [2, "part", { item: "shaft", event: "repaired" }],
    ];
    expect(about("outside-limits", { marks }).map((one) => one.place.field)).toEqual(["asFitted"]);
  });
});

describe("a finding about two values", () => {
  const pair = (shaft: string, bore: string): Marks => [
    [1, "measurement", { words: "pin diameter", item: "pump", asFitted: typed(shaft), note: "sliding fit" }],
    [2, "measurement", { words: "reamed hole", item: "pump", asFitted: typed(bore), note: "sliding fit" }],
  ];

  test("is said once", () => {
    expect(about("fit-impossible", { marks: pair("0.3130 in", "0.3120 in") })).toHaveLength(1);
  });

  test("goes when either is corrected, though the other mark is the same object", () => {
    const document = drawSketch({ marks: pair("0.3130 in", "0.3120 in") });
    const count = (marks: typeof document.marks) => {
      const now = { ...document, marks };
      return check(compile(now), now).findings.filter((one) => one.rule === "fit-impossible").length;
    };
    expect(count(document.marks)).toBe(1);
    const mended = drawSketch({ marks: pair("0.3130 in", "0.3135 in") }).marks.slice(1);
    expect(count([...document.marks.slice(0, 1), ...mended])).toBe(0);
    expect(count(document.marks)).toBe(1);
  });
});

test("every rule about entries is put to marks", () => {
  expect(measurementRules.map((rule) => rule.id)).toEqual(entryRules.map((rule) => rule.id));
});

test("the demonstration has nothing open about its numbers", async () => {
  const read = await readFolder(fileURLToPath(new URL("../../content-demo/ostrey-pump", import.meta.url)));
  if (!("document" in read)) throw new Error("The demonstration cannot be read.");
  const ids = new Set(measurementRules.map((rule) => rule.id));
  const { findings } = check(compile(read.document), read.document);
  expect(findings.filter((one) => ids.has(one.rule) && one.answer === undefined)).toEqual([]);
});
