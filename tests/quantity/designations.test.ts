import { describe, expect, it } from "vitest";
import { type Designation, format, read } from "#lib/quantity/index.ts";

function designation(text: string): Designation {
  const reading = read(text);
  if (reading.kind !== "designation") throw new Error(`“${text}” was read as ${reading.kind}`);
  return reading.designation;
}

/** Forms of writing: ISO 261/965, ASME B1.1, BS 84, BS 93, BS 811, ISO 228-1, ISO 7-1, ASME B1.20.1, in secondary copies. */
describe("threads", () => {
  it.each<[string, object]>([
    ["M6", { system: "ISO metric", diameter: "6", ucum: "mm" }],
    ["M6x0.75", { diameter: "6", pitch: "3/4" }],
    ["M6 × 0,75", { diameter: "6", pitch: "3/4" }],
    ["M8 x 1.5", { diameter: "8", pitch: "3/2" }],
    ["M10-1.5", { diameter: "10", pitch: "3/2" }],
    ["M6 by one", { diameter: "6", pitch: "1" }],
    ["M6 x 20", { diameter: "6", length: { value: { exact: "20" }, ucum: "mm" } }],
    ["M8x1.25x30 8.8", { pitch: "5/4", length: { value: { exact: "30" } }, strength: "8.8" }],
    ["M5, 8.8", { diameter: "5", strength: "8.8" }],
    ["M6x1-6g LH", { fitClass: "6g", hand: "left" }],
    ["1/4-20 UNC", { system: "UN", series: "UNC", diameter: "1/4", tpi: "20", ucum: "[in_i]" }],
    ["1/4-20", { system: "unstated", diameter: "1/4", tpi: "20" }],
    ["quarter twenty", { system: "unstated", diameter: "1/4", tpi: "20" }],
    ["3/8 16", { system: "unstated", diameter: "3/8", tpi: "16" }],
    ["10-32", { system: "UN", size: "#10", tpi: "32", diameter: "19/100" }],
    ["#10-32 UNF", { series: "UNF", size: "#10", tpi: "32" }],
    ["No. 8-32 UNC", { series: "UNC", size: "#8", diameter: "41/250" }],
    ["1/4 BSF", { system: "BSF", diameter: "1/4" }],
    ['1/4" BSF', { system: "BSF", diameter: "1/4" }],
    ["quarter BSF", { system: "BSF", diameter: "1/4" }],
    ["five sixteenths by 22", { diameter: "5/16", tpi: "22" }],
    ["3/16 BSW", { system: "BSW", diameter: "3/16" }],
    ["3/8 Whitworth", { system: "BSW", diameter: "3/8" }],
    ["9/16 in x 16 tpi BSF", { system: "BSF", diameter: "9/16", tpi: "16" }],
    ["2 BA", { system: "BA", size: "2" }],
    ["2BA", { system: "BA", size: "2" }],
    ["BA 2", { system: "BA", size: "2" }],
    ["6 BA x 1/2 in", { size: "6", length: { value: { exact: "1/2" }, ucum: "[in_i]" } }],
    ["1/2 BSP", { system: "BSP", size: "1/2" }],
    ["G 1/2", { system: "BSP", series: "G", size: "1/2" }],
    ["G 1 1/4", { system: "BSP", size: "1-1/4" }],
    ["R 1/2", { system: "BSP", series: "R", size: "1/2" }],
    ["1/8-27 NPT", { system: "NPT", size: "1/8", tpi: "27" }],
    ["1/4 x 26 BSC", { system: "BSC", diameter: "1/4", tpi: "26" }],
    ["26 tpi cycle", { system: "BSC", size: "", tpi: "26" }],
  ])("%s", (text, expected) => {
    expect(designation(text)).toMatchObject({ type: "thread", ...expected });
  });

  it("a pair with a unit behind it is a range and no thread", () => {
    expect(read("10-32 mm")).toMatchObject({ kind: "quantity", quantities: [{ qualifier: "range" }] });
    expect(read("1/4-20 thou").kind).not.toBe("designation");
  });

  it("diameters of numbered sizes are 0.060 + 0.013 n in (GNU units 2.22, screwgauge)", () => {
    expect(designation("#8-32 UNC")).toMatchObject({ diameter: "41/250" });
    expect(designation("#0-80 UNF")).toMatchObject({ diameter: "3/50" });
  });
});

describe("other designations", () => {
  it.each<[string, object]>([
    ["No. 7 drill", { type: "drill", scale: "number", size: "7" }],
    ["drill #29", { type: "drill", scale: "number", size: "29" }],
    ["letter F drill", { type: "drill", scale: "letter", size: "F" }],
    ["18 AWG", { type: "wire gauge", system: "AWG", size: "18" }],
    ["AWG 18", { type: "wire gauge", system: "AWG", size: "18" }],
    ["4/0 AWG", { type: "wire gauge", size: "4/0" }],
    ["AWG 0000", { type: "wire gauge", size: "4/0" }],
    ["22swg", { type: "wire gauge", system: "SWG", size: "22" }],
    ["6205-2RS", { type: "bearing", number: "6205", suffix: "2RS" }],
    ["ball bearing 6205", { type: "bearing", number: "6205" }],
    ["NU 205", { type: "bearing", number: "NU 205" }],
    ["25 H7/g6", { type: "fit", nominal: "25", hole: "H7", shaft: "g6" }],
    ["25k6", { type: "fit", nominal: "25", shaft: "k6" }],
    ["H7/g6", { type: "fit", hole: "H7", shaft: "g6" }],
    ["No. 8 wood screw", { type: "screw gauge", size: "8" }],
    ["No. 2 taper pin", { type: "taper pin", size: "2" }],
    ["2MT", { type: "taper", system: "Morse", size: "2" }],
    ["class 8.8", { type: "strength", scheme: "ISO 898-1", grade: "8.8" }],
    ["A2-70", { type: "strength", scheme: "ISO 3506", grade: "A2-70" }],
    ["grade 5", { type: "strength", scheme: "SAE J429", grade: "5" }],
  ])("%s", (text, expected) => {
    expect(designation(text)).toMatchObject(expected);
  });

  it("reads its own spelling of a designation as the same", () => {
    for (const text of [
      "M6x0.75 LH",
      "M8x1.25x30 8.8",
      "1/4-20 UNC x 3/4 in",
      "#10-32",
      "2 BA",
      "G 1 1/4",
      "5/16 BSF",
      "26 tpi cycle",
      "No. 7 drill",
      "letter F",
      "4/0 AWG",
      "6205-2RS",
      "25 H7/g6",
      "2MT",
      "class 8.8",
    ]) {
      expect(designation(format(read(text))), text).toEqual(designation(text));
    }
  });
});

describe("colour bands (IEC 60062; rows of resistor codes checked against resistor-data 1.1.1)", () => {
  it.each<[string, number, number | null]>([
    ["brown black red gold", 1000, 5],
    ["yellow violet orange gold", 47_000, 5],
    ["red red brown silver", 220, 10],
    ["brown black black red brown", 10_000, 1],
    ["bands brown, black, green", 1_000_000, null],
    ["bands brown, black, orange", 10_000, null],
  ])("%s", (text, ohms, percent) => {
    const reading = read(text);
    if (reading.kind !== "quantity") throw new Error(reading.kind);
    const [resistor] = reading.quantities;
    expect(resistor?.si).toBe(ohms);
    expect(resistor?.tolerance && "plus" in resistor.tolerance ? resistor.tolerance.plus.number : null).toBe(
      percent,
    );
  });

  it("colours of wires are no bands", () => {
    expect(read("red, black and green wires 5 A")).toMatchObject({
      kind: "quantity",
      quantities: [{ ucum: "A" }],
    });
  });
});
