import { near, plain, sayIn } from "../figures.ts";
import { type EntryRule, firstOf, type Remark } from "../rule.ts";
import type { Fact, Sight } from "../sight.ts";

/** Beats from the escape wheel, and the length of a pendulum from its beat. */
export const clockTrain: EntryRule = {
  id: "clock-train",
  title: "Beats, escape wheel and pendulum",
  explanation:
    "Each tooth of an escape wheel gives two beats, so that beats an hour are twice its teeth by its turns in an hour. A pendulum's beat follows from its length; one that beats seconds is about 994 mm long.",
  source: "arithmetic; T = 2π √(l / g) with g = 9.80665 m/s² (NIST SP 811)",
  check: (sight) => firstOf(sight, fromWheel, fromLength, beats, inSeconds),
  examples: [
    {
      says: "30 teeth once a minute are 3600 beats an hour",
      entry: {
        text: "7200 bph",
        what: "beats an hour",
        context: {
          related: [
            { what: "escape wheel", text: "30 teeth" },
            { what: "escape wheel speed", text: "1 rpm" },
          ],
        },
      },
      finds: 1,
    },
    {
      says: "and no other number",
      entry: {
        text: "3600 bph",
        what: "beats an hour",
        context: {
          related: [
            { what: "escape wheel", text: "30 teeth" },
            { what: "escape wheel speed", text: "1 rpm" },
          ],
        },
      },
      finds: 0,
    },
    {
      says: "a seconds pendulum of 39.1 in",
      entry: {
        text: "39.1 in",
        what: "pendulum length",
        context: { related: [{ what: "beat", text: "3600 beats an hour" }] },
      },
      finds: 0,
    },
    {
      says: "a half-seconds pendulum is a quarter as long",
      entry: {
        text: "39.1 in",
        what: "pendulum length",
        context: { related: [{ what: "beat", text: "7200 beats an hour" }] },
      },
      finds: 1,
    },
    {
      says: "half seconds are 7200 in the hour",
      entry: {
        text: "3600 beats per hour",
        what: "rate of the clock",
        context: { related: [{ what: "pendulum beats", text: "half seconds" }] },
      },
      finds: 1,
    },
    {
      says: "a seconds pendulum of 99.4 cm",
      entry: { text: "99.4 cm", what: "pendulum length", context: { spec: "beats seconds" } },
      finds: 0,
    },
  ],
};

const beatsIn = (facts: Fact[]): Fact | undefined =>
  facts.find(
    (fact) => fact.dimension === "frequency" && fact.si > 0 && !/h?z|cycle/i.test(fact.quantity.unit),
  );

function fromWheel({ facts, all }: Sight): Remark[] {
  const teeth = facts.find(
    (fact) =>
      (fact.dimension === "count" || fact.dimension === "number") && /\bescape (?:wheel)?/.test(fact.name),
  );
  const speed = facts.find((fact) => fact.dimension === "rotational speed" && /\bescape\b/.test(fact.name));
  const beats = beatsIn(facts);
  if (!teeth || !speed || !beats || /\b(?:duplex|chronometer|detent|cylinder)\b/.test(all)) return [];
  const expected = 2 * teeth.si * speed.si;
  if (near(expected, beats.si, 0.01)) return [];
  return [
    {
      severity: "wrong",
      found: `${beats.raw}, from ${teeth.raw} at ${speed.raw}.`,
      expected: `${sayIn(expected, beats.quantity)}: two beats a tooth.`,
      meant: `${sayIn(expected, beats.quantity)}?`,
    },
  ];
}

function fromLength({ facts, all }: Sight): Remark[] {
  if (
    !/\bpendulum\b/.test(all) ||
    /\b(?:torsion|compound|400[- ]day|metronome|overall|with (?:the )?bob)\b/.test(all)
  )
    return [];
  const length = facts.find(
    (fact) =>
      fact.dimension === "length" &&
      /\bpendulum\b.{0,14}\b(?:length|long)\b|\blength of (?:the )?pendulum\b/.test(fact.label),
  );
  const counted = beatsIn(facts);
  const perSecond = counted?.si ?? beatsInWords(all);
  if (!length || !perSecond) return [];
  const expected = 9.80665 / (Math.PI * perSecond) ** 2;
  if (length.si > expected * 0.9 && length.si < expected * 1.3) return [];
  return [
    {
      severity: "doubtful",
      found: `${length.name} ${length.raw}, ${counted?.raw ?? `a beat of ${plain(1 / perSecond)} s`}.`,
      expected: `About ${sayIn(expected, length.quantity, 3)} to its centre of oscillation, ${plain(expected * 1000, 3)} mm.`,
    },
  ];
}

const beatWords: [RegExp, number][] = [
  [/\bbeats? (?:in )?half[- ]seconds?\b|\bhalf[- ]seconds? (?:beat|pendulum)/, 2],
  [/\bbeats? (?:in )?quarter[- ]seconds?\b/, 4],
  [/\bbeats? (?:in )?(?:three[- ]quarter|3\/4)[- ]seconds?\b/, 4 / 3],
  [/\bbeats? (?:in )?two[- ]seconds?\b|\btwo[- ]seconds? (?:beat|pendulum)/, 1 / 2],
  [
    /\bbeats? (?:in )?(?:whole |full )?seconds\b|(?<![a-z]-|[a-z] )\bseconds (?:beat|pendulum)\b|\broyal pendulum\b/,
    1,
  ],
];

/** "Beats half seconds": beats in a second, from words; null where none are. */
function beatsInWords(all: string): number | null {
  const told =
    /\b(?:pendulum )?beats?\b ?;? ?(?:are |is )?((?:half|quarter|three[- ]quarter|two|whole )?[- ]?seconds)\b/.exec(
      all,
    );
  const text = told ? `beats ${told[1]}` : all;
  return beatWords.find(([words]) => words.test(text))?.[1] ?? null;
}

/** Beats an hour or a minute, against a beat told in seconds. */
function inSeconds({ facts, all }: Sight): Remark[] {
  const counted = beatsIn(facts);
  const told = counted ? beatsInWords(all) : null;
  if (!counted || told === null || near(counted.si, told, 0.03)) return [];
  return [
    {
      severity: "wrong",
      found: `${counted.raw}, and a beat of ${plain(1 / told)} s.`,
      expected: sayIn(told, counted.quantity, 5),
      meant: `${sayIn(told, counted.quantity, 5)}?`,
    },
  ];
}

/** Beats an hour and beats a second of a clock. */
function beats(sight: Sight): Remark[] {
  if (!/\b(?:beats|vibrations|ticks|bph|vph)\b/.test(sight.all)) return [];
  const hour = Number(
    /\b(\d{1,2}[ ,]?\d{3}) ?(?:beats|vibrations|bph|vph|a\/h|vibr)\b(?! ?per second)/
      .exec(sight.all)?.[1]
      ?.replace(/[ ,]/g, "") ?? Number.NaN,
  );
  const second = Number(
    /\b(\d{1,2}(?:\.\d{1,3})?) ?(?:beats|ticks|vibrations)? ?(?:per|a|\/|each) ?(?:second|s|sec)\b/.exec(
      sight.all,
    )?.[1] ?? Number.NaN,
  );
  if (!(hour > 0) || !(second > 0) || near(hour, second * 3600, 0.01)) return [];
  return [
    {
      severity: "wrong",
      found: `${hour} beats an hour and ${second} a second.`,
      expected: `${plain(hour / 3600)} a second.`,
    },
  ];
}
