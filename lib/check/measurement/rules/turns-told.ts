import { near, plain } from "../figures.ts";
import type { EntryRule, Remark } from "../rule.ts";
import { type Fact, relatedFacts, type Sight } from "../sight.ts";
import { type RatioTold, ratioTold } from "../told-ratio.ts";
import { roleOf, startsInWords, termsOf, wheelsIn, wheelsOf } from "../wheels.ts";
import { trainOf } from "./compound-train.ts";

/** "Wheel turns per crank turn": which of two wheels turns how often for a turn of the other. */
export const turnsTold: EntryRule = {
  id: "turns-for-a-turn",
  title: "Turns of the one for a turn of the other",
  explanation:
    "Of two wheels in mesh or on one chain the one with more teeth turns less often. Said as so many turns of the one to a turn of the other, it is clear which turns faster, and the teeth must bear it out.",
  source: "arithmetic",
  check: (sight) => {
    const said = saidIn(sight);
    if (!said || !(said.times > 0)) return [];
    const values = [...relatedFacts(sight), ...startsInWords(sight)];
    const remark = knownPair(said, sight);
    if (remark) return remark;
    const pair = twoWheels(values, "count", said) ?? twoWheels(values, "length", said);
    if (pair && pair.subject.si > 0)
      return against(said, pair.other.si / pair.subject.si, [pair.subject, pair.other]);
    const train = trainOf(sight);
    const [subject, other] = [roleFor(said.subject), roleFor(said.other)];
    if (train === null || subject === other || (subject !== "driven" && other !== "driver")) return [];
    return against(said, 1 / train, relatedFacts(sight));
  },
  examples: [
    {
      says: "46 by 18 teeth turn the wheel faster",
      entry: {
        text: "2.56",
        what: "wheel turns per crank turn",
        context: {
          related: [
            { what: "chainwheel", text: "46 teeth" },
            { what: "sprocket", text: "18 teeth" },
          ],
        },
      },
      finds: 0,
    },
    {
      says: "and not slower",
      entry: {
        text: "0.39",
        what: "wheel turns per crank turn",
        context: {
          related: [
            { what: "chainwheel", text: "46 teeth" },
            { what: "sprocket", text: "18 teeth" },
          ],
        },
      },
      finds: 1,
    },
    {
      says: "a crank that goes slower than its cam",
      entry: {
        text: "the crankshaft turns once for two of the camshaft",
        what: "timing",
        context: { part: "four-stroke engine" },
      },
      finds: 1,
    },
    {
      says: "a worm turns sixty times, and not its wheel",
      entry: {
        text: "wheel turns 60 times to one of the worm",
        what: "worm reduction",
        context: {
          related: [
            { what: "worm", text: "single start" },
            { what: "wheel", text: "60 teeth" },
          ],
        },
      },
      finds: 1,
    },
    {
      says: "the hour hand is the slow one",
      entry: { text: "hour wheel makes 12 turns to one of the cannon pinion", what: "motion work" },
      finds: 1,
    },
    {
      says: "back gear slows the spindle",
      entry: {
        text: "spindle turns at 4 times cone speed",
        what: "back gear in",
        context: {
          related: [
            { what: "cone pinion / back wheel", text: "25 / 50" },
            { what: "back pinion / spindle wheel", text: "25 / 50" },
          ],
        },
      },
      finds: 1,
    },
  ],
};

/** What is told against what the wheels give: turns of the subject for one of the other. */
function against({ subject, other, times }: RatioTold, should: number, wheels: Fact[]): Remark[] {
  if (near(times, should, 0.03)) return [];
  const words = wheels.map((wheel) => `${wheel.name} ${wheel.raw}`).join(", ");
  return [
    {
      severity: "wrong",
      found: `${subject}: ${plain(times, 3)} turns to one of ${other}; ${words}.`,
      expected: `${plain(should, 3)} turns.`,
      meant: near(times, 1 / should, 0.03) ? "turned about?" : `${plain(should, 3)}?`,
    },
  ];
}

const perTurn =
  /^(.*?) ?(?:turns?|revs?|revolutions?) (?:per|for (?:each|every|one|a)|to (?:one|each|every|1|a)|in (?:one|a))(?: ?(?:turns?|revs?|revolutions?)\b)?(?: of)?(?: the| its)? (?:\d+[- ]?(?:tooth|teeth|t|in|inch|mm)\.? )?([a-z][a-z -]*)$/;
const namedBoth =
  /^(?:ratio of )?([a-z]+)(?: turns| revs)? (?:to|:|\/) ([a-z]+) (?:turns|revs|revolutions)(?: ratio)?$/;

/** What is told in the text, else by what the value is called. */
const saidIn = (sight: Sight): RatioTold | null => ratioTold(sight.entry.text) ?? saidByName(sight);

function saidByName({ what, main }: Sight): RatioTold | null {
  if (!main || what.length > 160) return null;
  const terms = main.quantity.terms?.length === 2 ? termsOf(main) : null;
  const ofBoth = terms ? namedBoth.exec(what) : null;
  if (terms && ofBoth) return { subject: ofBoth[1] ?? "", times: terms, other: ofBoth[2] ?? "" };
  const label = main.quantity.terms ? null : perTurn.exec(what);
  if (!label || !["number", "ratio", "angle", "count"].includes(main.dimension)) return null;
  const other = (label[2] ?? "").replace(/ ?(?:turns?|revs?|revolutions?)$/, "");
  return { subject: label[1] ?? "", times: main.quantity.value.number, other };
}

/** Two that turn in a ratio which needs no teeth to be known. */
interface Known {
  one: RegExp;
  other: RegExp;
  /** Turns of the one for a turn of the other. */
  times: number;
  why: string;
  /** Said only where the entry speaks of this, and not of that. */
  where?: RegExp;
  not?: RegExp;
}

const minuteHand = /\bminute hand|\bcannon pinion|\bcent(?:re|er) (?:wheel|arbor|pinion)/;
const known: readonly Known[] = [
  {
    one: /\bcam|\bhalf[- ]time/,
    other: /\bcrank|\bengine/,
    times: 1 / 2,
    why: "the cam of a four-stroke goes half as fast as its crank",
    where: /\b(?:four|4)[- ](?:stroke|cycle)\b|\botto\b|\btiming\b/,
    not: /\b(?:two|2)[- ](?:stroke|cycle)\b|\bsteam\b/,
  },
  {
    one: /\bhour (?:hand|wheel|pipe)/,
    other: minuteHand,
    times: 1 / 12,
    why: "the hour hand goes round once in twelve hours",
    not: /\b24[- ]hour\b/,
  },
  {
    one: /\bseconds? hand/,
    other: minuteHand,
    times: 60,
    why: "the seconds hand goes round sixty times in an hour",
    not: /\b(?:chronograph|stop ?watch|sweep|half[- ]minute)\b/,
  },
];

function knownPair({ subject, other, times }: RatioTold, { all }: Sight): Remark[] | null {
  for (const pair of known) {
    const straight = pair.one.test(subject) && pair.other.test(other);
    const turned = pair.one.test(other) && pair.other.test(subject);
    if (straight === turned || pair.not?.test(all) || (pair.where && !pair.where.test(all))) continue;
    const should = straight ? pair.times : 1 / pair.times;
    if (near(times, should, 0.02)) return [];
    return [
      {
        severity: "wrong",
        found: `${subject}: ${plain(times)} turns to one of ${other}.`,
        expected: `${plain(should)} turns: ${pair.why}.`,
        meant: near(times, 1 / should, 0.02) ? "turned about?" : `${plain(should)}?`,
      },
    ];
  }
  return null;
}

/** The wheels that are spoken of: by their own names, else by what drives and what is driven. */
function twoWheels(
  values: Fact[],
  kind: "count" | "length",
  said: RatioTold,
): { subject: Fact; other: Fact } | null {
  const [a, b, ...more] = wheelsIn(values, kind);
  if (!a || !b || more.length > 0) return null;
  const called =
    share(said.subject, a) + share(said.other, b) - share(said.subject, b) - share(said.other, a);
  if (called !== 0) return called > 0 ? { subject: a, other: b } : { subject: b, other: a };
  const pair = wheelsOf(values, kind);
  const role = roleFor(said.subject);
  if (!pair || !role || role === roleFor(said.other)) return null;
  return role === "driver"
    ? { subject: pair.driver, other: pair.driven }
    : { subject: pair.driven, other: pair.driver };
}

/** How many words of a name stand in a wheel's own. */
const share = (name: string, { name: own }: Fact): number =>
  (name.match(/[a-z]{3,}/g) ?? []).filter((word) => own.split(/[^a-z]+/).includes(word)).length;

function roleFor(name: string): "driver" | "driven" | null {
  if (/\b(?:crank|pedal|handle|treadle|motor|engine)s?\b/.test(name)) return "driver";
  if (/\b(?:wheel|drum|road wheel|spindle|hub|output|chuck|load)\b/.test(name)) return "driven";
  return roleOf(name);
}
