import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import {
  convert,
  disagreement,
  otherSystem,
  rational,
  read,
  toDigits,
  toPlaces,
} from "#lib/quantity/index.ts";
import { quantity } from "./helpers.ts";

/** Values read in or reckoned from published sources; each row of the file names its own. */
interface Row {
  id: string;
  topic: string;
  input: {
    text: string;
    value?: number | string;
    from?: string;
    to?: string;
    kind?: string;
    denominator?: number;
  };
  expected: Record<string, number | string | boolean | null>;
  tolerance: { exact?: boolean; rel?: number };
  source: string;
}
const rows: Row[] = JSON.parse(readFileSync(new URL("data/published-values.json", import.meta.url), "utf8"));
const topic = (name: string) =>
  rows.filter((row) => row.topic === name).map((row) => [row.input.text, row] as const);

/** Names of units in the rows that are descriptions rather than what a restorer writes. */
const spelt: Record<string, string> = {
  "thou (mil, 0.001 in)": "thou",
  "pound-force (lbf)": "lbf",
  "kilogram-force (kgf)": "kgf",
  "pound avoirdupois": "lb",
  "ounce avoirdupois": "oz",
  "inch of mercury, conventional": "inHg",
  "standard atmosphere": "atm",
  "technical atmosphere (kgf/cm2)": "kgf/cm2",
  "horsepower (550 ft lbf/s)": "hp (mechanical)",
  "horsepower, metric (PS)": "PS",
  "revolution (turn)": "turn",
  cm3: "cc",
  hp: "hp (mechanical)",
  "hex flat": "flat",
};
const target: Record<string, string> = {
  "N m": "N.m",
  "lbf ft": "[lbf_av].[ft_i]",
  psi: "[psi]",
  "US gallon": "[gal_us]",
  L: "L",
  mL: "mL",
  in3: "[cin_i]",
  degC: "Cel",
  kW: "kW",
  hp: "[HP]",
  g: "g",
  kg: "kg",
  deg: "deg",
  in: "[in_i]",
  mm: "mm",
  thou: "[mil_i]",
  m: "m",
  N: "N",
  Pa: "Pa",
  m3: "m3",
  W: "W",
  rad: "rad",
  bar: "bar",
  kPa: "kPa",
};

describe("conversions", () => {
  it.each(topic("conversions").filter(([, row]) => row.input.from !== "turn at 20 tpi"))(
    "%s",
    (_text, row) => {
      const { value, from = "", to = "", kind = "" } = row.input;
      const text = typeof value === "string" ? value : `${value} ${spelt[from] ?? from}`;
      const read = quantity(kind === "temperature difference" ? `a rise of ${text}` : text);
      const { n, d } = rational(convert(read.value.exact, read.ucum, target[to] ?? to, read.role));
      const expected = Number(row.expected.value);
      const share = row.tolerance.exact ? 1e-12 : (row.tolerance.rel ?? 0);
      expect(Math.abs(Number(n) / Number(d) - expected), row.source).toBeLessThanOrEqual(
        share * Math.abs(expected),
      );
    },
  );

  it("a quarter turn of a 20 tpi screw moves it 0.0125 in (arithmetic)", () => {
    const [turn, pitch] = [quantity("1/4 turn"), quantity("20 tpi")];
    const inches = turn.value.number / pitch.value.number;
    expect(inches).toBeCloseTo(0.0125, 12);
  });
});

describe("values written twice", () => {
  it.each(topic("dual-written"))("%s", (text, row) => {
    expect(disagreement(read(text)) === null, row.source).toBe(row.expected.consistent);
  });

  it("the pint that agrees with its litres is imperial", () => {
    expect(quantity("2 pints (1.14 L)").ucum).toBe("[pt_br]");
    expect(quantity("2 pints (0.946 L)").ucum).toBe("[pt_us]");
  });
});

describe("fractions of an inch", () => {
  it.each(topic("fractions").filter(([text]) => !text.includes("nearest")))("%s", (text, row) => {
    const read = quantity(text);
    expect(read.value.number, row.source).toBe(row.expected.decimal_in);
    const { n, d } = rational(convert(read.value.exact, read.ucum, "mm"));
    expect(Number(n) / Number(d), row.source).toBe(row.expected.mm);
  });
});

describe("rounding, ties to even, in one step", () => {
  it("SP 811, B.7.1: printed examples", () => {
    expect(toDigits(rational("6.9749515"), 3)).toBe("6.97");
    expect(toDigits(rational("6.9749515"), 5)).toBe("6.9750");
    expect(toDigits(rational("6.9749515"), 7)).toBe("6.974952");
  });

  it("SP 811, B.7.2: 36 ft is 10.9728 m, given as 11.0 m", () => {
    expect(toPlaces(rational(convert("36", "[ft_i]", "m")), 4)).toBe("10.9728");
    expect(otherSystem(quantity("36 ft"))).toBe("11.0\u00a0m");
  });

  it("NIST PS 20-20: 2-1/2 in is 64 mm and 1-1/2 in is 38 mm, to whole millimetres", () => {
    expect(toPlaces(rational(convert("5/2", "[in_i]", "mm")), 0)).toBe("64");
    expect(toPlaces(rational(convert("3/2", "[in_i]", "mm")), 0)).toBe("38");
  });

  it("ISO 80000-1, annex B (from memory): 12.25 is 12.2, 12.251 is 12.3", () => {
    expect(toPlaces(rational("12.25"), 1)).toBe("12.2");
    expect(toPlaces(rational("12.251"), 1)).toBe("12.3");
    expect(toPlaces(rational("-12.25"), 1)).toBe("-12.2");
    expect(toPlaces(rational("12.35"), 1)).toBe("12.4");
  });

  it("IS 2:1960, rule II: 12.545001 is 12.55", () => {
    expect(toPlaces(rational("12.545001"), 2)).toBe("12.55");
  });
});
