import { describe, expect, test } from "vitest";
import { quantitiesOf, type Reading, read } from "#lib/quantity/index.ts";

/** What is read, as value and UCUM code; a question says all its readings. Units: ucum.org, NIST SP 811 (2008). */
function said(text: string): string {
  const words = (reading: Reading): string => {
    if (reading.kind === "list") return reading.parts.map(words).join(" | ");
    if (reading.kind === "question") return `? ${reading.candidates.map(words).join(" / ")}`;
    if (reading.kind === "designation") return reading.designation.name;
    const all = quantitiesOf(reading).map(
      ({ value, high, ucum }) =>
        `${Number(value.number.toPrecision(7))}${high ? `..${high.number}` : ""} ${ucum}`,
    );
    return all.length > 0 ? all.join(reading.kind === "product" ? " x " : " = ") : reading.kind;
  };
  return words(read(text, { decimal: "." }));
}

/** Ways of writing met in workshops: common practice, no source, but where one is named. */
const written: [text: string, meaning: string][] = [
  // ASME B1.1: no numbered screw is coarser than 24 threads to the inch
  ["1-8 UNC", "1-8 UNC"],
  ["2-4.5 UNC", "2-4.5 UNC"],
  ["10-32 UNF", "#10-32 UNF"],
  ["25:1 in 5 L", "25 1 | 5 L"],
  ["2.2k", "2.2 kOhm"],
  ["4k7", "4.7 kOhm"],
  ["47k 1/2 W", "47 kOhm | 0.5 W"],
  ["3 x 0.010 in", "3 {off} | 0.01 [in_i]"],
  ["10 thou x 3", "10 [mil_i] | 3 {off}"],
  ["28 x 1½ in", "28 [in_i] x 1.5 [in_i]"],
  ["1/4 x 3/16 x 1 in", "0.25 [in_i] x 0.1875 [in_i] x 1 [in_i]"],
  ["3/4 in and 1/2 in", "0.75 [in_i] | 0.5 [in_i]"],
  ["12 and 15 thou", "12 [mil_i] | 15 [mil_i]"],
  ["between 12 and 15 thou", "12..15 [mil_i]"],
  ["3/5 thou", "3 [mil_i] | 5 [mil_i]"],
  ["3/4 thou", "0.75 [mil_i]"],
  ["5/6 ft lbs", "5 [lbf_av].[ft_i] | 6 [lbf_av].[ft_i]"],
  ["11 st", "11 [stone_av]"],
  ["1st", "unread"],
  // NIST SP 811 (2008), appendix B.8: torr, poundal, slug, centistokes; Weights and Measures Act 1985: acre, 4840 sq yd
  ["5 torr", "5 mm[Hg]"],
  ["3 poundals", "3 [lb_av].[ft_i]/s2"],
  ["2 slugs", "2 [lbf_av].s2/[ft_i]"],
  ["100 cSt", "100 mm2/s"],
  ["2 acres", "2 43560.[sft_i]"],
  ["3.5 kVA", "3.5 kV.A"],
  ["4.75 cm/s", "4.75 cm/s"],
  ["1 7/8 ips", "1.875 [in_i]/s"],
  ["72 beats/min", "72 /min"],
  ["18,000 bph", "18000 /h"],
  ["+12 s/d", "12 s/d"],
  ["350-0-350 V", "350 V | 350 V"],
  ["6.3-0-6.3 V", "6.3 V | 6.3 V"],
  ["240 V a.c.", "240 V"],
  ["1.28 s.g.", "1.28 1"],
  ["0.002–0.004 in", "0.002..0.004 [in_i]"],
  ["12,7 mm", "12.7 mm"],
  ["4' 8½\"", "56.5 [in_i]"],
  ["7'-6 1/2\"", "90.5 [in_i]"],
  ["two and a half thou", "2.5 [mil_i]"],
  ["half a turn", "0.5 circ"],
  ['15/64" BTDC', "0.234375 [in_i]"],
  ["14½°", "14.5 deg"],
  ["60 lb/in", "60 [lbf_av]/[in_i]"],
  ["15 kg/cm²", "15 kgf/cm2"],
  ["455 kc/s", "455 kHz"],
  ["50 mmfd", "50 pF"],
  ["33⅓ rpm", "33.33333 {rev}/min"],
  ["1 in 20", "0.05 1"],
  ["1/4 in per ft", "0.25 [in_i]/[ft_i]"],
  ["5 cwt", "? 5 [lcwt_av] / 5 [scwt_av]"],
  ["1/3 HP", "? 0.3333333 [HP] / 0.3333333 75.kgf.m/s"],
  // a unit over another that is not known together is neither of them
  ["4 oz/in²", "4 1"],
  ["1000 ohms per volt", "1000 1"],
];

describe("how restorers write", () => {
  test.each(written)("%s is %s", (text, meaning) => {
    expect(said(text)).toBe(meaning);
  });

  test("poundal, slug and acre are as large as published", () => {
    const si = (text: string) => quantitiesOf(read(text))[0]?.si ?? 0;
    // NIST SP 811 (2008), appendix B.8
    expect(si("1 poundal")).toBeCloseTo(0.138255, 6);
    expect(si("1 slug")).toBeCloseTo(14.5939, 4);
    expect(si("1 torr")).toBeCloseTo(133.3224, 3);
    expect(si("1 cSt")).toBeCloseTo(1e-6, 12);
    expect(si("1 acre")).toBeCloseTo(4046.8564, 3);
  });
});
