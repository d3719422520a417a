import { describe, expect, it } from "vitest";
import {
  boundsOf,
  disagreement,
  format,
  otherSystem,
  read,
  readerVersion,
  say,
} from "#lib/quantity/index.ts";
import { quantity } from "./helpers.ts";

/** Text, UCUM code, exact value: what anyone in the trade would say it means. Arithmetic and definitions only. */
const truths: [string, string, string][] = [
  ["1-3/8 in", "[in_i]", "11/8"],
  ["1 3/8 in", "[in_i]", "11/8"],
  ["1⅜ in", "[in_i]", "11/8"],
  ["1-⅜ in", "[in_i]", "11/8"],
  ["1 and 3/8 inches", "[in_i]", "11/8"],
  ['13/16"', "[in_i]", "13/16"],
  ["13/16″", "[in_i]", "13/16"],
  ["13/16''", "[in_i]", "13/16"],
  ["11/8 in", "[in_i]", "11/8"],
  [".015 in", "[in_i]", "3/200"],
  ["15 thou", "[mil_i]", "15"],
  ["1½ thou", "[mil_i]", "3/2"],
  ["half a thou", "[mil_i]", "1/2"],
  ["15 thousandths of an inch", "[mil_i]", "15"],
  ["25mm", "mm", "25"],
  ["25 MM", "mm", "25"],
  ["12 µm", "um", "12"],
  ["12 μm", "um", "12"],
  ["12 microns", "um", "12"],
  ["5'3\"", "[in_i]", "63"],
  ["5 ft 3 in", "[in_i]", "63"],
  ["5' 3-1/2\"", "[in_i]", "127/2"],
  ["an inch and three quarters", "[in_i]", "7/4"],
  ["three thirty seconds of an inch", "[in_i]", "3/32"],
  ["1 1/2 turns out", "circ", "3/2"],
  ["one and a half turns out", "circ", "3/2"],
  ["quarter of a turn", "circ", "1/4"],
  ["2 flats", "60.deg", "2"],
  ["12°30'", "'", "750"],
  ["12° 30' 15\"", "''", "45015"],
  ["12 deg 30 min", "'", "750"],
  ["25 lbf ft", "[lbf_av].[ft_i]", "25"],
  ["25 ft-lb", "[lbf_av].[ft_i]", "25"],
  ["25 ft.lbs.", "[lbf_av].[ft_i]", "25"],
  ["25 foot pounds", "[lbf_av].[ft_i]", "25"],
  ["90 lb in", "[lbf_av].[in_i]", "90"],
  ["60 inch pounds", "[lbf_av].[in_i]", "60"],
  ["2.5 kgf m", "kgf.m", "5/2"],
  ["2.5 kg-m", "kgf.m", "5/2"],
  ["45 N·m", "N.m", "45"],
  ["45 Nm", "N.m", "45"],
  ["45 NM", "N.m", "45"],
  ["45 nm", "nm", "45"],
  ["30 psi", "[psi]", "30"],
  ["28 lb/sq in", "[psi]", "28"],
  ["2.2 bar", "bar", "11/5"],
  ["150 kPa", "kPa", "150"],
  ["15 inHg", "[in_i'Hg]", "15"],
  ["15 inches of mercury", "[in_i'Hg]", "15"],
  ["6 inH2O", "[in_i'H2O]", "6"],
  ['6" w.g.', "[in_i'H2O]", "6"],
  ["-20 °C", "Cel", "-20"],
  ["−20 °C", "Cel", "-20"],
  ["minus 20 °C", "Cel", "-20"],
  ["350F", "[degF]", "350"],
  ["68 deg F", "[degF]", "68"],
  ["2.1 l", "L", "21/10"],
  ["500cc", "cm3", "500"],
  ["1 imperial gallon", "[gal_br]", "1"],
  ["1.5 US quarts", "[qt_us]", "3/2"],
  ["1440 rpm", "{rev}/min", "1440"],
  ["1440 r.p.m.", "{rev}/min", "1440"],
  ["20,000 rpm", "{rev}/min", "20000"],
  ["60 a minute", "/min", "60"],
  ["18000 bph", "/h", "18000"],
  ["12 V DC", "V", "12"],
  ["250 mA", "mA", "250"],
  ["4.7 kΩ", "kOhm", "47/10"],
  ["4k7", "kOhm", "47/10"],
  ["4K7", "kOhm", "47/10"],
  ["R47", "Ohm", "47/100"],
  ["2M2", "MOhm", "11/5"],
  ["470R", "Ohm", "470"],
  ["1 meg", "MOhm", "1"],
  ["8 mfd", "uF", "8"],
  ["50 mmfd", "pF", "50"],
  ["50 µµF", "pF", "50"],
  ["4n7", "nF", "47/10"],
  ["0.1 µF", "uF", "1/10"],
  ["3 PS", "75.kgf.m/s", "3"],
  ["40 W", "W", "40"],
  ["1 h 30 min", "min", "90"],
  ["1h 20m", "min", "80"],
  ["1:30:00", "s", "5400"],
  ["PT1H30M", "min", "90"],
  ["half an hour", "h", "1/2"],
  ["two days", "d", "2"],
  ["2 lb 3 oz", "[oz_av]", "35"],
  ["12 lb/in", "[lbf_av]/[in_i]", "12"],
  ["2.5 N/mm", "N/mm", "5/2"],
  ["26 tpi", "/[in_i]", "26"],
  ["26 threads per inch", "/[in_i]", "26"],
  ["20 teeth", "{tooth}", "20"],
  ["5 % w/v", "%", "5"],
  ["12,5 mm", "mm", "25/2"],
  ["0,05 mm", "mm", "1/20"],
  ["1.234,5 mm", "mm", "2469/2"],
  ["1,234.5 mm", "mm", "2469/2"],
  ["1.5e-3 m", "m", "3/2000"],
  ["bands brown, black, green", "MOhm", "1"],
];

describe("what a text means", () => {
  it.each(truths)("%s", (text, ucum, exact) => {
    const read = quantity(text);
    expect([read.ucum, read.value.exact]).toEqual([ucum, exact]);
  });

  it("has a version, which is stored with what was read", () => {
    expect(Number.isInteger(readerVersion)).toBe(true);
  });

  it("keeps what is different apart, however alike the units", () => {
    expect(quantity("25 N·m").dimension).toBe("torque");
    expect(quantity("25 J").dimension).toBe("energy");
    expect(quantity("18 °F").role).toBeUndefined();
    expect(quantity("a rise of 18 °F").role).toBe("difference");
    expect(quantity("30 psig").role).toBe("gauge");
    expect(quantity("30 psi gauge").role).toBe("gauge");
    expect(quantity("2 bar abs").role).toBe("absolute");
    expect(quantity("15 inHg vacuum").role).toBe("vacuum");
  });

  it("gives SI values as the nearest double", () => {
    expect(quantity("1-3/8 in").si).toBe(0.034925);
    expect(quantity("0.1 mm").si).toBe(0.0001);
    expect(quantity("68 °F").si).toBe(293.15);
    expect(quantity("a rise of 18 °F").si).toBe(10);
    expect(quantity("1/2 turn").si).toBe(Math.PI);
    expect(quantity("60 rpm").si).toBe(1);
  });

  it("says how exact a figure was written", () => {
    expect(quantity("1-3/8 in").value.step).toBe("1/8");
    expect(quantity("0.3130 in").value.step).toBe("1/10000");
    expect(quantity("25 mm").value.step).toBe("1");
    expect(quantity("4k7").value.step).toBe("1/10");
  });
});

describe("qualifiers, ranges and tolerances", () => {
  const cases: [string, string, string, string | undefined][] = [
    ["about 5 mm", "about", "5", undefined],
    ["~5 mm", "about", "5", undefined],
    ["5 mm or so", "about", "5", undefined],
    ["at least 5 psi", "at least", "5", undefined],
    ["≥ 5 psi", "at least", "5", undefined],
    ["min. 5 psi", "at least", "5", undefined],
    ["5 psi min", "at least", "5", undefined],
    ["5 min", "exact", "5", undefined],
    ["not more than 0.002 in", "at most", "1/500", undefined],
    ["0.05 mm max", "at most", "1/20", undefined],
    ["up to 10 psi", "at most", "10", undefined],
    ["within 2 thou", "at most", "2", undefined],
    ["±0.02 mm", "either way", "1/50", undefined],
    ["0.35-0.45 mm", "range", "7/20", "9/20"],
    ["0.35–0.45 mm", "range", "7/20", "9/20"],
    ["0.35 mm - 0.45 mm", "range", "7/20", "9/20"],
    ["between 5 and 10 thou", "range", "5", "10"],
    ["10 to 12 lbf ft", "range", "10", "12"],
    ["six or seven pounds", "range", "6", "7"],
    ["-5 to +10 °C", "range", "-5", "10"],
    ["1-1/4 to 1-1/2 in", "range", "5/4", "3/2"],
    ["15-12 thou", "range", "15", "12"],
  ];
  it.each(cases)("%s", (text, qualifier, value, high) => {
    const read = quantity(text);
    expect([read.qualifier, read.value.exact, read.high?.exact]).toEqual([qualifier, value, high]);
  });

  const tolerances: [string, string, string][] = [
    ["25 ±0.02 mm", "1/50", "-1/50"],
    ["25 mm ±0.02", "1/50", "-1/50"],
    ["25 mm +/- 0.02 mm", "1/50", "-1/50"],
    ["25 +0.02/-0.00 mm", "1/50", "0"],
    ["25 +0.02 −0.01 mm", "1/50", "-1/100"],
    ["25 -0.01/-0.02 mm", "-1/100", "-1/50"],
    ["25 -0.02 mm", "0", "-1/50"],
    ["25 +0.021/0 mm", "21/1000", "0"],
    ["100 Ω 10%", "10", "-10"],
    ["4K7J", "5", "-5"],
    ["brown black red gold", "5", "-5"],
  ];
  it.each(tolerances)("%s", (text, plus, minus) => {
    const { tolerance } = quantity(text);
    if (tolerance?.kind === "class" || !tolerance) throw new Error("no tolerance in figures");
    expect([tolerance.plus.exact, tolerance.minus.exact]).toEqual([plus, minus]);
  });

  it("a tolerance in another unit keeps its own", () => {
    expect(quantity("25 mm ± 2 thou").tolerance).toMatchObject({ ucum: "[mil_i]" });
    expect(quantity("25 mm H7").tolerance).toEqual({ kind: "class", name: "H7" });
  });

  it("bounds are in SI, whichever way they were written", () => {
    const close = (text: string, low: number | null, high: number | null) => {
      const bounds = boundsOf(quantity(text));
      expect(
        [bounds.low, bounds.high].map((one) => one && Number(one.toPrecision(9))),
        text,
      ).toEqual([low, high]);
    };
    close("25 +0.02/-0.01 mm", 0.02499, 0.02502);
    close("15-12 thou", 0.0003048, 0.000381);
    close("at most 0.05 mm", null, 0.00005);
    close("100 Ω 10%", 90, 110);
    close("±0.02 mm", -0.00002, 0.00002);
    close("1 in ± 1 mm", 0.0244, 0.0264);
  });
});

describe("products, sums, ratios and lists", () => {
  it("names the factors by the legend, in the unit that is written last", () => {
    const read25 = read("25 x 52 x 15 mm (bore x OD x width)");
    if (read25.kind !== "product") throw new Error(read25.kind);
    expect(read25.names).toEqual(["bore", "OD", "width"]);
    expect(read25.quantities.map((one) => [one.value.exact, one.ucum])).toEqual([
      ["25", "mm"],
      ["52", "mm"],
      ["15", "mm"],
    ]);
  });

  it("leaves a product without a unit without one", () => {
    const seal = read("5/8 x 1-1/8 x 1/4");
    expect(seal).toMatchObject({
      kind: "product",
      quantities: [{ ucum: "1" }, { ucum: "1" }, { ucum: "1" }],
    });
  });

  it("adds up, and says where a total is not the sum", () => {
    expect(disagreement(read("0.040 + 0.015 + 0.003 = 0.058 in"))).toBeNull();
    expect(disagreement(read("1.250 - 0.003 = 1.247 in"))).toBeNull();
    expect(disagreement(read("0.75 + 0.50 + 0.25 = 1.75 in"))).toMatchObject({
      found: "1.75\u00a0in",
      expected: "1.50\u00a0in",
    });
  });

  it.each([
    ["50:1", "50"],
    ["four to one", "4"],
    ["1 in 40", "1/40"],
    ["3 times as fast", "3"],
    ["4.5:1", "9/2"],
  ])("%s", (text, exact) => {
    expect(quantity(text)).toMatchObject({ dimension: "ratio", value: { exact } });
  });

  it("reads several things in one text, each with its words", () => {
    const reading = read("3/4 BSP, 26.4 mm OD, 14 tpi");
    expect(reading).toMatchObject({
      kind: "list",
      parts: [
        { kind: "designation", designation: { name: "3/4 BSP" } },
        { kind: "quantity", words: "OD" },
        { kind: "quantity", quantities: [{ ucum: "/[in_i]" }] },
      ],
    });
  });

  it("gives the figures of a short list the unit at its end", () => {
    expect(read("12, 15 thou")).toMatchObject({
      parts: [{ quantities: [{ ucum: "[mil_i]" }] }, { quantities: [{ ucum: "[mil_i]" }] }],
    });
    expect(read("110/240 V")).toMatchObject({
      parts: [{ quantities: [{ ucum: "V" }] }, { quantities: [{ ucum: "V" }] }],
    });
  });
});

describe("what is not a quantity", () => {
  it.each([
    "drops in by hand",
    "snug",
    "12/03/2024",
    "part no 12-345-67",
    "3rd gear",
    "half nuts",
    "A1073",
    "5/0 mm",
  ])("%s", (text) => {
    expect(read(text)).toMatchObject({ kind: "unread", why: expect.any(String) });
  });

  it("an empty text is empty, and a number alone is bare", () => {
    expect(read("  \n").kind).toBe("empty");
    expect(read("25").kind).toBe("bare");
    expect(read("no more than six")).toMatchObject({ kind: "bare", quantities: [{ qualifier: "at most" }] });
  });

  it("a unit that is part of an unknown one is not read as the known part", () => {
    expect(quantity("5 kg/kW")).toMatchObject({ ucum: "1", unit: "" });
  });
});

describe("saying and writing again", () => {
  it.each([
    ["1-3/8 in", "1-3/8 in = 34.925 mm, written to 1/8 in"],
    ["1 1/2 turns out", "1 1/2 turns = 540°, written to 1/2 turn"],
    ["25 ft-lb", "25 lbf ft = 34 N·m (torque)"],
    ["-40 °F", "-40 °F = -40 °C"],
    ["a rise of 18 °F", "18 °F difference = 10 °C difference"],
    ["26 tpi", "26 tpi = 0.977 mm pitch"],
    ["about 1000 psi", "about 1000 psi = about 69 bar"],
    ["4 psi", "4 psi = 0.28 bar"],
    ["0.004 in", "0.004 in = 0.10 mm"],
    ["25 ±0.02 mm", "25 ±0.02 mm = 0.9843 ±0.0008 in"],
    ["snug", "not read: no number in it"],
  ])("%s: %s", (text, said) => {
    expect(say(read(text)).replaceAll("\u00a0", " ")).toBe(said);
  });

  it("writes in the writer's own style", () => {
    for (const text of [
      "1-3/8 in",
      "1 3/8 in",
      "1⅜ in",
      '13/16"',
      "12,50 mm",
      ".015 in",
      "4k7",
      "25 ft-lb",
      "5' 3-1/2\"",
      "12° 30'",
    ]) {
      expect(format(read(text)).replaceAll("\u00a0", " ")).toBe(text);
    }
  });

  it("shows the other system with the decimal sign of the build, and the pints of the region", () => {
    expect(otherSystem(quantity("1-3/8 in"), { decimal: "," })).toBe("34,925\u00a0mm");
    expect(otherSystem(quantity("2 l"), { region: "GB" })).toBe("3.52\u00a0imp\u00a0pt");
    expect(otherSystem(quantity("2 l"), { region: "US" })).toBe("2.11\u00a0US\u00a0qt");
    expect(otherSystem(quantity("12 V"))).toBeNull();
  });
});

describe("a tube, a washer, a screw (common practice, no source)", () => {
  it("1-3/8 in and 1-1/2 in tube are 34.9 and 38.1 mm", () => {
    expect(quantity("1-3/8 in").si).toBeCloseTo(0.0349, 4);
    expect(quantity("1-1/2 in").si).toBeCloseTo(0.0381, 6);
    expect(disagreement(read("1-3/8 in (34.9 mm)"))).toBeNull();
    expect(disagreement(read("1-3/8 in (38.1 mm)"))).not.toBeNull();
  });
  it("a 1/16 in washer is 1.59 mm", () => expect(quantity("1/16 in").si).toBeCloseTo(0.00159, 5));
  it("one and a half turns out is 540 degrees", () => {
    expect(otherSystem(quantity("one and a half turns out"))).toBe("540°");
  });
});
