import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { disagreement, find, format, longestText, read, say } from "#lib/quantity/index.ts";

/** 10,000 strings in the ordinary run; LONG=1 runs the full million. */
const numRuns = process.env.LONG ? 1_000_000 : 10_000;

/** Pieces that lead a reader on: half numbers, signs, units, marks and letters of every kind. */
const piece = fc.constantFrom(
  ..."0 1 7 12 25.4 1/2 1-3/8 ½ . , - – + ± / : x × ( ) = \" ' ° % # No. mm in thou lbf ft N·m psi °C M6 BSF UNC 1/4-20 2 BA H7 g6 4k7 R47 to and or about max minus a an half quarter turns red brown black gold between P T H 1e9 NaN Infinity __proto__ \u0000 \u200b \ud800 🔧 é ".split(
    " ",
  ),
  " ",
  "\u00a0",
);
const text = fc.oneof(
  fc.string({ unit: "binary", maxLength: 60 }),
  fc.array(piece, { maxLength: 14 }).map((pieces) => pieces.join("")),
  fc.array(piece, { maxLength: 14 }).map((pieces) => pieces.join(" ")),
);

describe("any text at all", () => {
  it(`never throws, over ${numRuns} texts, and is plain JSON`, { timeout: 1_200_000 }, () => {
    fc.assert(
      fc.property(text, (written) => {
        const reading = read(written);
        say(reading);
        format(reading);
        disagreement(reading);
        expect(find(written).every(({ start, end }) => start < end && end <= written.length)).toBe(true);
        expect(JSON.parse(JSON.stringify(reading))).toEqual(reading);
      }),
      { seed: 99, numRuns },
    );
  });

  it("is refused with a reason when it is too long, and not cut", () => {
    expect(read("1".repeat(longestText + 1))).toMatchObject({
      kind: "unread",
      why: expect.stringContaining("501"),
    });
    expect(read("25 mm".padEnd(longestText, " ")).kind).toBe("quantity");
    expect(read(`${"9".repeat(31)} mm`)).toMatchObject({
      kind: "unread",
      why: expect.stringContaining("30 digits"),
    });
  });
});
