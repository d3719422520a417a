import { describe, expect, it } from "vitest";
import { questionsOf, type ReadOptions, read, say } from "#lib/quantity/index.ts";
import { offered, quantity } from "./helpers.ts";

describe("what may mean several things is asked about", () => {
  it.each([
    ["8 mil", ["[mil_i]", "mm", "mL"]],
    ["2 pints", ["[pt_br]", "[pt_us]"]],
    ["1 quart", ["[qt_br]", "[qt_us]"]],
    ["1 gallon", ["[gal_br]", "[gal_us]"]],
    ["1 gill", ["[gil_br]", "[gil_us]"]],
    ["8 fl oz", ["[foz_br]", "[foz_us]"]],
    ["2 tons", ["[lton_av]", "[ston_av]", "t"]],
    ["1 cwt", ["[lcwt_av]", "[scwt_av]"]],
    ["10 hp", ["[HP]", "75.kgf.m/s"]],
    ["38 degrees", ["deg", "Cel", "[degF]"]],
    ["5 tenths", ["10*-4.[in_i]", "10*-1.mm", "10*-1.[in_i]"]],
    ["8 mF", ["uF", "mF"]],
    ["5 gr", ["g", "[gr]"]],
    ["20 K", ["K", "kOhm"]],
    ["1 M", ["MOhm", "m"]],
    ["25 lb/ft", ["[lbf_av].[ft_i]", "[lbf_av]/[ft_i]"]],
    ["250 kg/cm", ["kgf.cm", "kgf/cm2"]],
    ["1,234 mm", ["mm", "mm"]],
  ])("%s", (text, codes) => {
    const reading = read(text);
    expect(offered(reading)).toEqual(codes);
    expect(say(reading)).toMatch(/may be .*\?$/);
  });

  it("designations too: gauge, a lone number, a pair that may be a thread, W for watts or Whitworth", () => {
    for (const text of ["18 gauge", "No. 7", "9/64 x 40", "1/4 W", "1:10 dilution", "12 500 rpm"]) {
      expect(read(text).kind, text).toBe("question");
    }
  });

  it("1,234 is 1234 or 1.234, and a build that writes decimal commas settles it", () => {
    const reading = read("1,234 mm");
    if (reading.kind !== "question") throw new Error(reading.kind);
    expect(reading.candidates.map((one) => "quantities" in one && one.quantities[0]?.value.exact)).toEqual([
      "1234",
      "617/500",
    ]);
    expect(quantity("1,234 mm", { decimal: "," }).value.exact).toBe("617/500");
    expect(read("1,234 mm", { decimal: "." }).kind).toBe("question");
    expect(read("1.234 mm", { decimal: "," }).kind).toBe("question");
    expect(quantity("1.234 mm", { decimal: "." }).value.exact).toBe("617/500");
  });
});

describe("what settles it", () => {
  const cases: [string, ReadOptions, string][] = [
    ["2 pints", { region: "GB" }, "[pt_br]"],
    ["2 pints", { region: "US" }, "[pt_us]"],
    ["8 mil", { region: "US" }, "[mil_i]"],
    ["8 mil", { region: "GB", expect: "length" }, "mm"],
    ["190 mil", { region: "GB", expect: "volume" }, "mL"],
    ["2 tons", { region: "GB" }, "[lton_av]"],
    ["10 hp", { region: "US" }, "[HP]"],
    ["11 ounces", { region: "US", expect: "volume" }, "[foz_us]"],
    ["11 ounces", {}, "[oz_av]"],
    ["38 degrees", { expect: "angle" }, "deg"],
    ["140 degrees", { expect: "temperature", region: "US" }, "[degF]"],
    ["38 degrees", { expect: "temperature", region: "GB" }, "Cel"],
    ["12 degrees BTDC", {}, "deg"],
    ["rise of 40 K", {}, "K"],
  ];
  it.each(cases)("%s %o", (text, options, ucum) => {
    expect(quantity(text, options).ucum).toBe(ucum);
  });

  it("a torque in pounds alone is asked about, feet or inches", () => {
    expect(offered(read("40 lb", { expect: "torque" }))).toEqual(["[lbf_av].[ft_i]", "[lbf_av].[in_i]"]);
  });
});

describe("no nagging", () => {
  /** Ordinary texts of several trades, made up: none of them raises a question. */
  it.each(
    `40.03 mm|0.445 in A/F|25 x 52 x 15 mm (bore x OD x width)|5 lbf in|2.1 l|0.35-0.45 mm|M12 x 1.75|6-32 UNC|10-32 UNF|5/16-24 UNF|1BA
1440 rpm|33:1|1 MΩ|bands brown, black, orange|20 teeth|212 °F (100 °C)|top ring gap 0.012 in|30 deg BTDC|oven at 120 °C for 20 minutes|3/8 AF
22 SWG|No. 43 drill|letter F|6203-2RS|G3/8|1/8 BSP|25 H7/g6|M8x1.25x30 8.8|47k|0.22 µF 400 V|12 V 21 W lamp|3 A fuse|26 tpi cycle
1.234 in|2 lb 3 oz|6 ft|90 s|48 hours|0.05 mm max|15 thou|about 3/4 in|Ø25.4 mm|465 kc/s|20,000 rpm|half a turn|4 off M6 x 20
220/240 V|1/2 in (13 mm)|two to four thou|1.250 - 0.003 = 1.247 in|5 % w/v|2 kgf/cm²|32 °F|quarter twenty|five sixteenths by 22`
      .split(/[|\n]/)
      .map((text) => [text]),
  )("%s", (text) => {
    expect(questionsOf(read(text))).toEqual([]);
  });
});
