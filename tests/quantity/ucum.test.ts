import { UcumLhcUtils } from "@lhncbc/ucum-lhc";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { convert, rational, units } from "#lib/quantity/index.ts";

/**
 * Agreement with an independent library, @lhncbc/ucum-lhc 7.1.10. It knows every code of the table as it
 * stands; mercury columns differ by 3e-6, since UCUM rounds the density (NIST SP 811, B.8 has 3386.389 Pa).
 */
const reference = UcumLhcUtils.getInstance();
const known = units.filter((unit) => reference.validateUnitString(unit.ucum).status === "valid");
/** UCUM's {rev} is a mere remark, so that it has no factor of two pi between rad/s and {rev}/min. */
const joined = (from: string, to: string) => (from === "rad/s") === (to === "rad/s");
const pairs = known.flatMap((from) =>
  known
    .filter((to) => to.dimension === from.dimension && joined(from.ucum, to.ucum))
    .map((to) => [from, to] as const),
);

describe("conversions agree with a reference library", () => {
  it("knows all codes of the table", () => {
    const unknown = units.filter((unit) => !known.includes(unit)).map((unit) => unit.ucum);
    expect(unknown).toEqual([]);
  });

  it("over 2,000 random conversions", () => {
    const pair = fc.constantFrom(...pairs);
    const value = fc
      .integer({ min: -999_999, max: 999_999 })
      .map((n) => ({ exact: `${n}/1000`, number: n / 1000 }));
    fc.assert(
      fc.property(pair, value, ([from, to], { exact, number }) => {
        const theirs = reference.convertUnitTo(from.ucum, number, to.ucum).toVal;
        const { n, d } = rational(convert(exact, from.ucum, to.ucum));
        const ours = Number(n) / Number(d);
        const share = /Hg/.test(from.ucum + to.ucum) ? 5e-6 : 1e-12;
        const size = Math.max(Math.abs(theirs), /Cel|degF|K/.test(from.ucum + to.ucum) ? 500 : 0);
        expect(Math.abs(ours - theirs), `${exact} ${from.ucum} in ${to.ucum}`).toBeLessThanOrEqual(
          share * size,
        );
      }),
      { seed: 1864, numRuns: 2000 },
    );
  });

  it("and goes there and back without loss", () => {
    fc.assert(
      fc.property(fc.constantFrom(...pairs), fc.integer(), ([from, to], n) => {
        const there = convert(`${n}/64`, from.ucum, to.ucum);
        expect(convert(there, to.ucum, from.ucum)).toBe(convert(`${n}/64`, from.ucum, from.ucum));
      }),
      { seed: 1865, numRuns: 2000 },
    );
  });
});
