import { describe, expect, test } from "vitest";
import { draft, readCaptionText, toDraftMarks } from "#lib/captions/index.ts";
import { kindOf } from "#lib/mark/index.ts";
import { type Reading, read } from "#lib/quantity/index.ts";
import { cuesOf, known, saying } from "./helpers.ts";

const typed = (text: string, english?: "GB" | "US") =>
  draft(readCaptionText(saying(text)).cues, english ? { english } : {}).flatMap((one) =>
    one.kind === "measurement" ? [one.fields.typed] : [],
  );

describe("laws that hold for every recording", () => {
  test.each(known.map((recording) => [recording.name, recording] as const))("%s", (_, recording) => {
    const cues = cuesOf(recording);
    const drafts = draft(cues);
    const text = cues.map((cue) => cue.text).join(" ");
    expect(drafts).toEqual(draft(cues));
    for (const [i, one] of drafts.entries()) {
      expect(one.start).toBeGreaterThanOrEqual(drafts[i - 1]?.start ?? 0);
      expect(text, "the quote is what was said").toContain(one.quote);
      expect(one.quote.length).toBeGreaterThan(0);
      const within = cues.filter((cue) => cue.start < one.end && cue.end > one.start).map((cue) => cue.text);
      expect(within.join(" "), "and was said within the span").toContain(one.quote);
      expect(one.reason).toMatch(/\.$/);
    }
  });
  test.each(known.map((recording) => [recording.name, recording] as const))(
    "%s: what is typed is what was meant",
    (_, recording) => {
      for (const one of draft(cuesOf(recording))) {
        if (
          one.kind !== "measurement" ||
          one.fields.designation !== undefined ||
          /\/day|spoons/.test(one.fields.typed)
        )
          continue;
        const [first] = quantities(read(one.fields.typed, { region: "GB", decimal: "." }));
        expect(first?.si, one.fields.typed).toBeCloseTo(one.fields.valueSi, 9);
      }
    },
  );
  test.each(known.map((recording) => [recording.name, recording] as const))(
    "%s: marks are of the form that is stored",
    (_, recording) => {
      for (const one of toDraftMarks(cuesOf(recording), { recordingId: "r" })) {
        expect(kindOf(one.kind).stored.safeParse(one.fields).success, JSON.stringify(one.fields)).toBe(true);
        expect(one.until).toBeGreaterThanOrEqual(one.at);
      }
    },
  );
  test("one recording in two shapes gives the same drafts", () => {
    const plain = (name: string) =>
      draft(cuesOf(known.find((one) => one.name === name) as (typeof known)[number])).map((one) => [
        one.kind,
        one.quote,
        one.fields,
      ]);
    expect(plain("lathe-apron.srt")).toEqual(plain("lathe-apron.vtt"));
  });
});

function quantities(reading: Reading) {
  return "quantities" in reading ? reading.quantities : [];
}

/** Sizes, values and names of units as the tables of lib/quantity have them; the ways to say them are common practice, no source. */
describe("numbers as they are said", () => {
  test.each([
    ["It measures three thirty seconds of an inch.", ["3/32 in"]],
    ["It measures nine sixty fourths.", ["9/64 in"]],
    ["It's an inch and seven eighths long.", ["1-7/8 in"]],
    ["It's two foot six inches long.", ["30 in"]],
    ["It's three inch and nine thou.", ["3.009 in"]],
    ["It reads four seventy k, and the volts are low, the ohms are high, the amps are fine.", ["470 kΩ"]],
    ["It's two meg two by the ohms, the volts, the amps.", ["2.2 MΩ"]],
    ["The i f is four five five kilocycles.", ["455 kHz"]],
    ["It beats eighteen thousand beats an hour.", ["18000 /h"]],
    ["It turns at sixteen hundred rpm.", ["1600 rpm"]],
    ["It's a hundred and sixty volts.", ["160 V"]],
    ["The gap is two point two millimetres.", ["2.2 mm"]],
    ["The gap is point nine of a millimetre.", ["0.9 mm"]],
    ["It's half an inch thick.", ["1/2 in"]],
    ["About a thou or two of shake.", ["about 1 to 2 thou"]],
    ["It wants between 40 and 60 grams.", ["40 to 60 g"]],
    ["It's 15, 20 thousands deep.", ["15 to 20 thou"]],
    ["It sticks up 1 and 15/16, give or take a 32nd.", ["1-15/16 in ± 1/32 in"]],
    ["Mine's 12 thou, plus or minus two thou.", ["12 thou ± 2 thou"]],
    ["It's no more than six thou.", ["at most 6 thou"]],
    ["You need at least 8 psi.", ["at least 8 psi"]],
    ["They're 10-32 screws.", ["#10-32"]],
    ["They're two BA.", ["2 BA"]],
    ["It's 22 by 10 millimetres.", ["22 mm", "10 mm"]],
    ["It's losing forty seconds a day.", ["40 s/day"]],
    ["The ratio's 4 to 1.", ["4:1"]],
  ])("%s", (text, expected) => {
    expect(typed(text)).toEqual(expected);
  });
});

describe("units that depend on who speaks, and of what", () => {
  test.each([
    ["It's 12 mil across the bore.", "GB", ["12 mm"]],
    ["It's 12 mil across the bore.", "US", ["12 thou"]],
    ["It holds 190 mil of oil.", "GB", ["190 ml"]],
    ["It holds a pint of oil.", "GB", ["1 imp pt"]],
    ["It holds a pint of oil.", "US", ["1 US pt"]],
    ["The water got to 38 degrees.", "GB", ["38 °C"]],
    ["The water got to 140 degrees.", "US", ["140 °F"]],
    ["The timing is 12 degrees before top dead centre.", "GB", ["12 deg (angle)"]],
    ["It holds about 11 ounces of oil.", "US", ["about 11 US fl oz"]],
    ["Pump the tyres up to 55 pounds.", "GB", ["55 psi"]],
    ["It weighs 40 pounds.", "GB", ["40 lb"]],
    ["It cost me 40 pounds.", "GB", []],
  ] as const)("%s (%s)", (text, english, expected) => {
    const [first, ...more] = typed(text, english);
    expect(more).toEqual([]);
    if (expected.length === 0) expect(first).toBeUndefined();
    else expect(expected).toContain(first);
  });
});

describe("units that go on into the next sentence", () => {
  test.each([
    [
      "I'm getting 18 thou of backlash. Book says anything over 12, chuck them.",
      ["18 thou", "at most 12 thou"],
    ],
    ["I'll take it up to 10 psi. Don't go over 15.", ["10 psi", "at most 15 psi"]],
    ["It was about five thou of slop and I'll be wanting it under two.", ["about 5 thou", "at most 2 thou"]],
    ["I make it 0.631 at one end and 0.640 at the other.", ["0.631 in", "0.640 in"]],
    ["It's eight mil inside, twelve outside.", ["8 mm", "12 mm"]],
    ["It should open at 1800 psi. Mine opened at 1,350.", ["1800 psi", "1350 psi"]],
    ["The shaft is .996 and the bore is 1.003, so it's 7 loose.", ["0.996 in", "1.003 in", "7 thou"]],
    ["It's two thou out. Three of them are like that.", ["2 thou"]],
    ["It's two thou out. There's another nine.", ["2 thou"]],
    ["It's two thou out. That's on both springs.", ["2 thou"]],
  ])("%s", (text, expected) => {
    expect(typed(text, "GB")).toEqual(expected);
  });
});

describe("what is no measurement", () => {
  test.each([
    "It was made in 1958, I want to say '58, might be a '59.",
    "There are 12 of you watching.",
    "That's a 10 cent part.",
    "It's a 90 weight gear lube.",
    "I cut them twice and it took me three hours.",
    "Two weeks, I'll have the head on.",
    "She's 71 and I'm 63.",
    "You put 60 foot pounds on that and you're going to be shopping for a gear case.",
    "It's a hundred year old casting.",
    "It goes two and a half, no, sorry, that's the wrong one.",
    "If we hit 10,000 I'll print everybody a coaster.",
    "Ten to one odds it's the coil.",
  ])("%s", (text) => {
    expect(typed(text)).toEqual([]);
  });
});
