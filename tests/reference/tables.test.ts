import { describe, expect, test } from "vitest";
import {
  allDrills,
  allJaws,
  allThreads,
  baFormula,
  bandsFor,
  bearing,
  bearings,
  colourBands,
  compareThreads,
  drillsNear,
  gaugeSize,
  gaugeText,
  hexagonsOf,
  isPreferred,
  limitsOf,
  nearestPreferred,
  pairing,
  preferredSeries,
  saySource,
  seriesNames,
  spannersNear,
  strengthClasses,
  tapDrillFor,
  threadsLike,
  threadsNamed,
  toleranceGrade,
  whitworthForm,
} from "#lib/reference/index.ts";

const sizes = [
  2, 3, 5, 6, 8, 10, 14, 16, 18, 22, 25, 30, 35, 45, 50, 60, 80, 95, 120, 150, 180, 250, 315, 400, 500,
];

describe("threads", () => {
  test("no two rows have one name, and every row says where it was seen", () => {
    expect(new Set(allThreads.map(({ name }) => name)).size).toBe(allThreads.length);
    for (const thread of allThreads) expect(saySource(thread.source).length).toBeGreaterThan(10);
  });

  test("core, effective and outside diameter lie in this order, the effective in the middle (ISO 68-1, BS 84, BS 93)", () => {
    for (const { name, minor, effective, major, form } of allThreads) {
      if (minor === undefined || effective === undefined) continue;
      expect(minor, name).toBeLessThan(effective);
      expect(effective, name).toBeLessThan(major);
      if (form !== "60° flat (ISO)") expect((minor + major) / 2, name).toBeCloseTo(effective, 2);
    }
  });

  test("the BA table is the formula p = 0.9ⁿ, D = 6 p^1.2, rounded (BS 93)", () => {
    for (const { system, size, major, pitch } of allThreads) {
      if (system !== "BA") continue;
      const formula = baFormula(Number(size));
      expect(Math.abs(formula.pitch - pitch)).toBeLessThan(0.0051);
      expect(Math.abs(formula.major - major)).toBeLessThan(0.051);
    }
  });

  test("ISO 228-1 gives core diameters of the Whitworth form to the last place that it prints", () => {
    for (const { series, name, major, minor = 0, tpi = 1 } of allThreads) {
      if (series === "BSP")
        expect(Math.abs(whitworthForm(major, 25.4 / tpi).minor - minor), name).toBeLessThan(0.002);
    }
  });

  test("every thread is found by its own name", () => {
    for (const thread of allThreads) {
      expect(
        threadsNamed(thread.name).map(({ name }) => name),
        thread.name,
      ).toContain(thread.name);
    }
  });

  test("every thread is among the first for its own diameter and pitch", () => {
    for (const thread of allThreads) {
      const [best, ...rest] = threadsLike({ diameter: thread.major, pitch: thread.pitch });
      const misfit = [best, ...rest].find((like) => like?.thread === thread)?.misfit;
      expect(misfit, thread.name).toBe(best?.misfit);
    }
  });

  test("a comparison says the same either way round, and a thread belongs to itself", () => {
    for (const thread of allThreads.slice(0, 200)) {
      expect(compareThreads(thread, thread).interchangeable).toBe(true);
      for (const other of allThreads.slice(200, 260)) {
        const [one, back] = [compareThreads(thread, other), compareThreads(other, thread)];
        expect(back.interchangeable).toBe(one.interchangeable);
        expect(back.willStart).toBe(one.willStart);
        expect([...back.same].sort()).toEqual([...one.same].sort());
      }
    }
  });
});

describe("drills and spanners", () => {
  test("number drills grow smaller as the number grows, letter drills larger with the letter (ASME B94.11M)", () => {
    const of = (set: string) => allDrills.filter((drill) => drill.set === set).map(({ mm }) => mm);
    expect(of("number")).toEqual([...of("number")].sort((a, b) => b - a));
    expect(of("letter")).toEqual([...of("letter")].sort((a, b) => a - b));
    expect(of("number")).toHaveLength(80);
    expect(of("letter")).toHaveLength(26);
  });

  test("a drill is the nearest to its own diameter", () => {
    for (const drill of allDrills) expect(drillsNear(drill.mm, 1)[0]?.mm).toBe(drill.mm);
  });

  test("a tapping drill is smaller than the thread and leaves between three fifths and all of it", () => {
    for (const thread of allThreads) {
      const tapping = tapDrillFor(thread);
      if (!tapping) continue;
      expect(tapping.drill.mm, thread.name).toBeLessThan(thread.major);
      if (tapping.percent !== undefined) {
        expect(tapping.percent, thread.name).toBeGreaterThan(60);
        expect(tapping.percent, thread.name).toBeLessThanOrEqual(100);
      }
    }
  });

  test("a spanner fits its own hexagon, and one that is smaller does not go on", () => {
    for (const jaw of allJaws) {
      const near = spannersNear(jaw.mm, 20);
      expect(near.find((one) => one.jaw === jaw)?.verdict, jaw.name).toBe("fits");
      for (const { play, verdict } of near) if (play < -0.1) expect(verdict).toBe("too small");
    }
  });

  test("a BSF head is a size smaller than the old Whitworth head of the same bolt (BS 190)", () => {
    for (const size of ["1/4", "5/16", "3/8", "7/16", "1/2", "9/16", "5/8", "3/4"]) {
      const [whitworth] = hexagonsOf(threadsNamed(`${size} BSW`)[0] ?? never());
      const [fine] = hexagonsOf(threadsNamed(`${size} BSF`)[0] ?? never());
      expect(fine?.mm).toBeLessThan(whitworth?.mm ?? 0);
    }
  });
});

describe("gauges", () => {
  test("wire grows thinner as the number grows, in either gauge", () => {
    for (const system of ["AWG", "SWG"] as const) {
      const all = Array.from({ length: 50 }, (_, index) => gaugeSize(system, gaugeText(index - 3))?.mm ?? 0);
      expect(all).toEqual([...all].sort((a, b) => b - a));
    }
  });
});

describe("limits and fits (ISO 286-1)", () => {
  test("tolerances grow with the grade and with the size", () => {
    const grades = Array.from({ length: 18 }, (_, index) => index + 1);
    for (const size of sizes) {
      const row = grades.map((grade) => toleranceGrade(size, grade)?.um ?? 0);
      expect(row).toEqual([...row].sort((a, b) => a - b));
    }
    for (const grade of grades) {
      const column = sizes.map((size) => toleranceGrade(size, grade)?.um ?? 0);
      expect(column).toEqual([...column].sort((a, b) => a - b));
    }
  });

  test("from grade 6 on, five grades coarser is ten times as wide, as the standard builds them", () => {
    for (const size of sizes)
      for (let grade = 6; grade <= 13; grade += 1) {
        const [fine, coarse] = [
          toleranceGrade(size, grade)?.um ?? 0,
          toleranceGrade(size, grade + 5)?.um ?? 0,
        ];
        expect(Math.abs(coarse / fine / 10 - 1), `IT${grade} at ${size}`).toBeLessThan(0.07);
      }
  });

  test("a fit on the basic shaft is the same fit as on the basic hole: H7/k6 and K7/h6, H7/p6 and P7/h6", () => {
    for (const size of sizes.filter((one) => one > 3))
      for (const letter of ["f", "g", "h", "k", "m", "n", "p", "r", "s", "u"]) {
        const hole = (name: string) => limitsOf(size, name) ?? never();
        const onHole = pairing(hole("H7"), hole(`${letter}6`));
        const onShaft = pairing(hole(`${letter.toUpperCase()}7`), hole("h6"));
        expect(onShaft, `${size} ${letter}`).toEqual(onHole);
      }
  });

  test("each letter from g to u lies tighter than the one before", () => {
    for (const size of sizes) {
      const lower = ["e", "f", "g", "h", "k", "m", "n", "p", "r", "s", "u"].map(
        (letter) => limitsOf(size, `${letter}6`)?.lower ?? 0,
      );
      expect(lower).toEqual([...lower].sort((a, b) => a - b));
    }
  });

  test("nothing is made up beyond the table", () => {
    expect(limitsOf(501, "H7")).toBeUndefined();
    expect(limitsOf(60, "fg6")).toBeUndefined();
    expect(limitsOf(0, "H7")).toBeUndefined();
  });
});

describe("bearings (ISO 15)", () => {
  test("bore follows the number from 04 on, five millimetres a step; the ring is thicker than nothing", () => {
    for (const { number, bore, outside, width } of bearings) {
      expect(bore).toBeLessThan(outside);
      expect(width).toBeGreaterThan(0);
      const code = Number(number.slice(-2));
      if (number.length >= 4 && code >= 4) expect(bore, number).toBe(code * 5);
    }
  });

  test("within one bore, 60 is smaller than 62 and 62 smaller than 63", () => {
    for (const code of ["00", "01", "02", "03", "04", "05", "06", "08", "10", "20"]) {
      const outside = ["60", "62", "63"].map((series) => bearing(`${series}${code}`)?.outside ?? 0);
      expect(outside).toEqual([...outside].sort((a, b) => a - b));
      expect(new Set(outside).size).toBe(3);
    }
  });

  test("a suffix changes nothing of the size, and a number that is in no table gives nothing", () => {
    expect(bearing("6205-2RS C3")).toBe(bearing("6205"));
    expect(bearing("6299")).toBeUndefined();
    expect(bearing("6205 mm")).toBeUndefined();
  });
});

describe("fasteners and electrics", () => {
  test("proof below yield below tensile, in every class", () => {
    for (const row of strengthClasses) {
      expect(row.proof, row.name).toBeLessThan(row.yield);
      expect(row.yield, row.name).toBeLessThan(row.tensile);
    }
  });

  test("preferred values: so many a decade, and each coarser series lies in the next finer, up to E24 (IEC 60063)", () => {
    for (const series of seriesNames) expect(preferredSeries[series]).toHaveLength(Number(series.slice(1)));
    for (const [coarse, fine] of [
      ["E3", "E6"],
      ["E6", "E12"],
      ["E12", "E24"],
    ] as const)
      for (const value of preferredSeries[coarse]) expect(isPreferred(value * 100, fine)).toBe(true);
    for (const value of preferredSeries.E96) expect(nearestPreferred(value * 10, "E96")).toBe(value * 10);
  });

  test("bands of every E24 value read back as that value (IEC 60062)", () => {
    for (const digits of preferredSeries.E24)
      for (const power of [-1, 0, 1, 2, 3, 4, 5]) {
        const ohms = Number(`${digits}e${power}`);
        const bands = bandsFor(ohms, 5) ?? [];
        expect(colourBands(bands.join(" "))?.ohms, bands.join(" ")).toBeCloseTo(ohms, 6);
      }
  });
});

function never(): never {
  throw new Error("the row is missing");
}
