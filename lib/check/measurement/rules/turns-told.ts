import { near, numberIn, plain } from "../figures.ts";
import type { EntryRule, Remark } from "../rule.ts";
import { type Fact, relatedFacts, type Sight } from "../sight.ts";
import { roleOf, startsInWords, termsOf, wheelsIn, wheelsOf } from "../wheels.ts";

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
    const cam = camAndCrank(said, sight);
    if (cam) return cam;
    const pair = twoWheels(values, "count", said) ?? twoWheels(values, "length", said);
    if (!pair || !(pair.subject.si > 0)) return [];
    const should = pair.other.si / pair.subject.si;
    if (near(said.times, should, 0.03)) return [];
    return [
      {
        severity: "wrong" as const,
        found: `${said.subject}: ${plain(said.times)} turns to one of ${said.other}; ${pair.subject.name} ${pair.subject.raw}, ${pair.other.name} ${pair.other.raw}.`,
        expected: `${plain(should, 3)} turns.`,
        meant: near(said.times, 1 / should, 0.03) ? "turned about?" : `${plain(should, 3)}?`,
      },
    ];
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
  ],
};

interface Said {
  subject: string;
  other: string;
  /** Turns of the subject for one of the other. */
  times: number;
}

const count = "(\\d+(?:\\.\\d+)?(?:[- ]\\d+\\/\\d+)?|two|three|four|five|six|eight|ten|twelve|twenty)";
const for1 = "(?:per|for (?:each|every|one|a)|to (?:one|each|every|1|a)|in (?:one|a))";
const turn = "(?: ?(?:turns?|revs?|revolutions?)\\b)?";
const sized = "(?:\\d+[- ]?(?:tooth|teeth|t|in|inch|mm)\\.? )?";
const tail = `(?: of)?(?: the| its)? ${sized}([a-z][a-z -]*)`;
const perTurn = new RegExp(`^(.*?) ?(?:turns?|revs?|revolutions?) ${for1}${turn}${tail}$`);
const spoken = new RegExp(
  `(?:the )?([a-z][a-z -]*?) (?:turns?|makes?|does|goes|revolves) ${count} (?:times|turns|revs|revolutions)? ?${for1}${turn}${tail}`,
);
const counted = new RegExp(
  `${count} (?:turns|revs|revolutions) of(?: the)? ${sized}([a-z][a-z -]*?) (?:make|give|turn|to|for|per|move)s? (?:one|1|a|each|every)${turn}${tail}`,
);
const reversed = new RegExp(
  `(?:one|1|a|each) turn of(?: the)? ([a-z][a-z -]*?) (?:makes?|gives?|turns?|is|to)(?: the)? ?([a-z -]*?) ?${count} ?(?:turns|revs|revolutions|times)(?: of(?: the)? ([a-z][a-z -]*))?`,
);

const onceFor = new RegExp(
  `(?:the )?([a-z][a-z -]*?) (?:turns?|goes round|revolves) once (?:for|to|in) (?:every |each )?${count}${turn}${tail}`,
);
const namedBoth =
  /^(?:ratio of )?([a-z]+)(?: turns| revs)? (?:to|:|\/) ([a-z]+) (?:turns|revs|revolutions)(?: ratio)?$/;

function saidIn({ entry, what, main }: Sight): Said | null {
  const text = entry.text.toLowerCase();
  if (
    text.length > 160 ||
    what.length > 160 ||
    !/\b(?:turns?|revs?|revolutions?|revolves|makes|speeds?)\b/.test(`${text} ${what}`)
  )
    return null;
  const once = onceFor.exec(text);
  if (once) return { subject: once[1] ?? "", times: 1 / numberIn(once[2] ?? ""), other: once[3] ?? "" };
  const hit = spoken.exec(text);
  if (hit) return { subject: hit[1] ?? "", times: numberIn(hit[2] ?? ""), other: hit[3] ?? "" };
  const many = counted.exec(text);
  if (many) return { subject: many[2] ?? "", times: numberIn(many[1] ?? ""), other: many[3] ?? "" };
  const back = reversed.exec(text);
  if (back)
    return { subject: back[4] ?? back[2] ?? "", times: numberIn(back[3] ?? ""), other: back[1] ?? "" };
  const terms = main?.quantity.terms?.length === 2 ? main && termsOf(main) : null;
  const ofBoth = terms ? namedBoth.exec(what) : null;
  if (terms && ofBoth) return { subject: ofBoth[1] ?? "", times: terms, other: ofBoth[2] ?? "" };
  const label = main && !main.quantity.terms ? perTurn.exec(what) : null;
  const plainValue = main && ["number", "ratio", "angle", "count"].includes(main.dimension);
  return label && plainValue
    ? {
        subject: label[1] ?? "",
        times: main.quantity.value.number,
        other: (label[2] ?? "").replace(/ ?(?:turns?|revs?|revolutions?)$/, ""),
      }
    : null;
}

/** The cam of a four-stroke turns once for two turns of its crank. */
function camAndCrank(said: Said, { all }: Sight): Remark[] | null {
  const [cam, crank] = [/\bcam|half[- ]time|\bmagneto/, /\bcrank|\bengine/];
  const should =
    cam.test(said.subject) && crank.test(said.other)
      ? 0.5
      : crank.test(said.subject) && cam.test(said.other)
        ? 2
        : null;
  if (
    should === null ||
    /\bmagneto\b/.test(`${said.subject} ${said.other}`) ||
    !/\b(?:four|4)[- ]stroke\b|\botto\b|\btiming\b/.test(all)
  )
    return null;
  if (near(said.times, should, 0.02) || /\b(?:two|2)[- ]stroke\b|\bsteam\b/.test(all)) return [];
  return [
    {
      severity: "wrong",
      found: `${said.subject}: ${plain(said.times)} turns to one of ${said.other}.`,
      expected: `${plain(should)} turns: the cam of a four-stroke goes half as fast as its crank.`,
      meant: "turned about?",
    },
  ];
}

/** The wheels that are spoken of: by their own names, else by what drives and what is driven. */
function twoWheels(
  values: Fact[],
  kind: "count" | "length",
  said: Said,
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
