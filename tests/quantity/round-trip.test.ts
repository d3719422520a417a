import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { format, hardSpace, type Reading, read, units } from "#lib/quantity/index.ts";

/** 1,000 texts in the ordinary run; LONG=1 runs the full count. */
const numRuns = process.env.LONG ? 100_000 : 1000;
const seed = 20_260_503;

/**
 * Spellings that stand for one unit only behind any number. Left out: those that are asked about, W (which
 * asks behind a fraction: watts or Whitworth), "a minute" (half a minute is a time), and the marks that are feet and inches unless degrees stand before.
 */
const plainUnits = units.flatMap((unit) =>
  unit.spellings
    .filter((spelling) => read(`7 ${spelling}`).kind === "quantity")
    .filter((spelling) => !/^(?:′|″|W|an? .*)$/.test(spelling))
    .map((spelling) => ({ spelling, ucum: unit.ucum, dimension: unit.dimension })),
);

interface Written {
  text: string;
  exact: string;
}

const whole = fc.integer({ min: 0, max: 99_999 }).map((n): Written => ({ text: `${n}`, exact: `${n}` }));
const decimals = fc
  .tuple(
    fc.integer({ min: 0, max: 999 }),
    fc.integer({ min: 0, max: 99_999 }),
    fc.integer({ min: 1, max: 5 }),
  )
  .map(([n, part, places]): Written => {
    const digits = `${part}`.padStart(places, "0").slice(0, places);
    return { text: `${n}.${digits}`, exact: lowest(BigInt(`${n}${digits}`), 10n ** BigInt(places)) };
  });
/** In lowest terms, as fractions are written: "8/16 V" is two voltages. */
const eighths = fc
  .tuple(
    fc.integer({ min: 0, max: 40 }),
    fc.constantFrom(2, 4, 8, 16, 32, 64),
    fc.nat(),
    fc.constantFrom("-", " "),
  )
  .map(([n, over, part, join]): Written => {
    const top = 1 + 2 * (part % (over / 2));
    return {
      text: n === 0 ? `${top}/${over}` : `${n}${join}${top}/${over}`,
      exact: lowest(BigInt(n * over + top), BigInt(over)),
    };
  });

function lowest(n: bigint, d: bigint): string {
  const gcd = (a: bigint, b: bigint): bigint => (b === 0n ? a : gcd(b, a % b));
  const common = gcd(n, d) || 1n;
  return d / common === 1n ? `${n / common}` : `${n / common}/${d / common}`;
}

const number = fc.oneof(whole, decimals, eighths);
const unit = fc.constantFrom(...plainUnits);
const lead = fc.constantFrom("", "", "", "about ", "at least ", "at most ", "max. ", "min ", "approx. ", "~");

describe("reading and writing again", { timeout: 600_000 }, () => {
  it("gives the value and the unit that were written", () => {
    fc.assert(
      fc.property(lead, number, unit, (before, { text, exact }, { spelling, ucum }) => {
        const reading = read(`${before}${text} ${spelling}`);
        const [quantity] = "quantities" in reading ? reading.quantities : [];
        expect(quantity?.value.exact, `${before}${text} ${spelling}`).toBe(exact);
        expect(quantity?.ucum, `${before}${text} ${spelling}`).toBe(ucum);
      }),
      { seed, numRuns },
    );
  });

  it("reads what it wrote as the same quantity", () => {
    fc.assert(
      fc.property(lead, number, unit, (before, { text }, { spelling }) =>
        same(`${before}${text} ${spelling}`),
      ),
      { seed: seed + 1, numRuns },
    );
  });

  it("reads ranges and tolerances that it wrote as the same", () => {
    const end = fc.constantFrom<(n: string, m: string, u: string) => string>(
      (n, m, u) => `${n} to ${m} ${u}`,
      (n, m, u) => `between ${n} and ${m} ${u}`,
      (n, m, u) => `${n} ${u} to ${m} ${u}`,
      (n, _m, u) => `${n} ±0.02 ${u}`,
      (n, _m, u) => `${n} ${u} +0.02/-0.01`,
      (n, _m, u) => `${n} ${u} max`,
    );
    const lengths = fc.constantFrom("mm", "in", '"', "thou", "N·m", "lbf ft", "psi", "°C", "V", "rpm");
    fc.assert(
      fc.property(end, number, number, lengths, (write, n, m, u) => same(write(n.text, m.text, u))),
      { seed: seed + 2, numRuns },
    );
  });

  it("never lets a line break part number and unit", () => {
    fc.assert(
      fc.property(number, unit, ({ text }, { spelling }) => {
        const shown = format(read(`${text} ${spelling}`));
        expect(shown).not.toMatch(/ /);
        expect(shown.includes(hardSpace) || /["'°]$/.test(shown), shown).toBe(true);
      }),
      { seed: seed + 3, numRuns },
    );
  });
});

/** What is read from the text as written again is what was read from the text. */
function same(text: string): void {
  const first = read(text);
  const again = read(format(first));
  expect(withoutWords(again), text).toEqual(withoutWords(first));
}

const withoutWords = (reading: Reading): object => ({ ...reading, words: undefined });
