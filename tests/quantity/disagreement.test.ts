import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { convert, disagreement, rational, read, toPlaces } from "#lib/quantity/index.ts";

describe("two figures for one value", () => {
  /** Right: the second is the first rounded, or a nominal size rounded the other way. Arithmetic. */
  it.each([
    "7/8 in (22.2 mm)",
    "0.002 in (0.051 mm)",
    "4 psi (0.28 bar)",
    "212 °F (100 °C)",
    "9 lbf ft (12.2 N·m)",
    "33:1 (30 ml to the litre)",
    "2 in (50 mm)",
    "100 psi (690 kPa)",
    "100 psi (700 kPa)",
    "34.9 mm (1-3/8 in)",
    "13 mm (1/2 in)",
    "10–12 lbf ft (14–16 N·m)",
    "26 tpi (0.977 mm)",
    "1-3/8 in / 34.9 mm",
    "1 thou (0.03 mm)",
    "20 mm (about 3/4 in)",
    "5/16 in = 7.94 mm",
    "1.5 bar (22 psi)",
    "90 min (1.5 h)",
    "180 °C (350 °F)",
  ])("%s agrees", (text) => {
    const reading = read(text);
    expect(reading).toMatchObject({ kind: "quantity", quantities: [{}, {}] });
    expect(disagreement(reading)).toBeNull();
  });

  /** Wrong by arithmetic: the right figure stands beside it. */
  it.each([
    ["2-1/4 in (54.0 mm)", "57.15\u00a0mm"],
    ["25 lbf ft (22 N·m)", "33.90\u00a0N·m"],
    ["3 in (70 mm)", "76.20\u00a0mm"],
    ["0.5000 in (12.71 mm)", "12.70\u00a0mm"],
    ["180 °C (320 °F)", "356.0\u00a0°F"],
    ["10–12 lbf ft (14–18 N·m)", "13.56–16.27\u00a0N·m"],
    ["90 min (1.9 h)", "1.500\u00a0h"],
    ["26 tpi (0.9 mm)", "0.9769\u00a0mm"],
    ["20:1 (30 ml to the litre)", "20.00\u00a0ml to the litre"],
  ])("%s does not", (text, expected) => {
    const found = disagreement(read(text));
    if (!text.includes(":1")) expect(found?.expected).toBe(expected);
    expect(found).not.toBeNull();
  });

  it("the ratio tells the slip: ten, twelve, or an inch for a millimetre", () => {
    expect(disagreement(read("30 psi (21 bar)"))?.ratio).toBeCloseTo(10.15, 1);
    expect(disagreement(read("25 lbf ft (2.8 N·m)"))?.ratio).toBeCloseTo(1 / 12.1, 2);
  });

  it("a right conversion, rounded at any place, never disagrees", () => {
    const pair = fc.constantFrom<[string, string, string, string]>(
      ["in", "[in_i]", "mm", "mm"],
      ["lbf ft", "[lbf_av].[ft_i]", "N·m", "N.m"],
      ["psi", "[psi]", "bar", "bar"],
      ["°F", "[degF]", "°C", "Cel"],
      ["lb", "[lb_av]", "kg", "kg"],
      ["US gallons", "[gal_us]", "l", "L"],
    );
    fc.assert(
      fc.property(
        pair,
        fc.integer({ min: 1, max: 99_999 }),
        fc.integer({ min: 0, max: 3 }),
        fc.integer({ min: 0, max: 5 }),
        ([from, a, to, b], n, places, shown) => {
          const first = toPlaces(rational(`${n}/${10 ** places}`), places);
          const second = toPlaces(rational(convert(first, a, b)), shown);
          expect(
            disagreement(read(`${first} ${from} (${second} ${to})`)),
            `${first} ${from} (${second} ${to})`,
          ).toBeNull();
        },
      ),
      { seed: 7, numRuns: 1000 },
    );
  });

  it("a figure ten times out, or half as much again, always disagrees", () => {
    fc.assert(
      fc.property(fc.integer({ min: 100, max: 99_999 }), fc.constantFrom("10", "1/10", "3/2"), (n, slip) => {
        const { n: top, d } = rational(convert(`${n}/1000`, "[in_i]", "mm"));
        const factor = rational(slip);
        const wrong = toPlaces({ n: top * factor.n, d: d * factor.d }, 3);
        expect(disagreement(read(`${toPlaces(rational(`${n}/1000`), 3)} in (${wrong} mm)`))).not.toBeNull();
      }),
      { seed: 8, numRuns: 1000 },
    );
  });
});
