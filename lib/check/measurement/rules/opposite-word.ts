import { type EntryRule, firstOf, type Remark } from "../rule.ts";
import { relatedFacts, type Sight } from "../sight.ts";

/** A word that says the opposite of the figure. */
export const oppositeWord: EntryRule = {
  id: "opposite-word",
  title: "A word against its figure",
  explanation:
    "A circuit that shows ohms is not open, a shutter that stays open longer than it should is slow, and a raised bob makes a clock go faster. Where word and figure are opposites, one of them is mistaken.",
  source: "what the words mean",
  check: (sight) => firstOf(sight, circuit, shutter, pendulum, level),
  examples: [
    {
      says: "412 ohms in an open circuit",
      entry: { text: "412 Ω", what: "primary, DC resistance", context: { verdict: "open circuit, rewind" } },
      finds: 1,
    },
    {
      says: "no end to the ohms",
      entry: { text: "0.3 Ω", what: "primary, DC resistance", context: { verdict: "shorted turns, rewind" } },
      finds: 0,
    },
    {
      says: "a sixtieth where it should be a hundred and twenty-fifth",
      entry: {
        text: "1/60 s",
        what: "measured at the 1/125 setting",
        context: { part: "shutter", verdict: "runs fast" },
      },
      finds: 1,
    },
    {
      says: "is slow",
      entry: {
        text: "1/60 s",
        what: "measured at the 1/125 setting",
        context: { part: "shutter", verdict: "slow by a stop" },
      },
      finds: 0,
    },
    {
      says: "a raised bob does not slow a clock",
      entry: {
        text: "bob raised 1.0 mm",
        what: "correction made",
        context: { part: "pendulum", related: [{ what: "rate before", text: "gains 2 min a day" }] },
      },
      finds: 1,
    },
    {
      says: "a lowered one does",
      entry: {
        text: "bob lowered 1.0 mm",
        what: "correction made",
        context: { part: "pendulum", related: [{ what: "rate before", text: "gains 2 min a day" }] },
      },
      finds: 0,
    },
  ],
};

const said = ({ entry: { text, context } }: Sight): string =>
  [text, context.verdict, ...(context.related ?? []).map((one) => one.text)].join("; ").toLowerCase();

const doubt = (sight: Sight, expected: string): Remark[] => [
  { severity: "doubtful", found: `${sight.what}: ${said(sight)}.`, expected },
];

/** Ohms of an open circuit, and many of them in a short one. */
function circuit(sight: Sight): Remark[] {
  const { main, what } = sight;
  if (main?.dimension !== "resistance" || main.quantity.qualifier === "at least") return [];
  const words = said(sight).replace(/\b(?:no|not|nor|neither|without)(?: an?)? (?:open|short)\S*/g, "");
  if (
    /\b(?:other|before|after|until|when|intermittent\w*|hot|insulation|between|earth|leak\w*|should)\b/.test(
      `${words} ${what}`,
    )
  )
    return [];
  if (
    /\bopen[- ]circuit(?:ed)?\b|\bbroken winding\b|\bno continuity\b/.test(words) &&
    main.si > 0 &&
    main.si < 1e6
  )
    return doubt(sight, `An open circuit shows no end of ohms; ${main.raw} is continuity.`);
  if (
    /\b(?:dead )?short[- ]circuit(?:ed)?\b|\bdead short\b|\bshorted (?:out|to)\b/.test(words) &&
    main.si > 1e5
  )
    return doubt(sight, `A short circuit shows next to no ohms, and not ${main.raw}.`);
  return [];
}

/** A shutter's measured time against its setting, and what is said of it. */
function shutter(sight: Sight): Remark[] {
  const { main, all, what } = sight;
  if (main?.dimension !== "time" || !/\b(?:shutter|exposure)\b/.test(all)) return [];
  const marked = /\b1\/(\d{1,4})\b/.exec(what.replace(/,/g, ""))?.[1];
  const set = marked
    ? 1 / Number(marked)
    : relatedFacts(sight).find(
        (fact) => fact.dimension === "time" && /\b(?:set(?:ting)?|marked|dial|nominal)\b/.test(fact.name),
      )?.si;
  if (!set) return [];
  const [fast, slow] = [/\bfast(?:er)?\b/, /\bslow(?:er)?\b/].map((word) => word.test(said(sight)));
  if (fast === slow || /\b(?:not|no longer|was|before|after)\b/.test(said(sight))) return [];
  if (fast && main.si > set * 1.03) return doubt(sight, "Open longer than its setting: slow.");
  if (slow && main.si < set * 0.97) return doubt(sight, "Open shorter than its setting: fast.");
  return [];
}

/** A clock that gains wants a longer pendulum, one that loses a shorter. */
function pendulum(sight: Sight): Remark[] {
  if (!/\b(?:pendulum|bob|rating nut)\b/.test(sight.all)) return [];
  const words = `${said(sight)} ${sight.what}`;
  const [up, down] = [
    /\b(?:bob|nut|pendulum)\b.{0,24}\b(?:raised|up|shortened|lifted)\b|\b(?:raised|shortened|lifted)\b.{0,16}\b(?:bob|nut|pendulum)\b/,
    /\b(?:bob|nut|pendulum)\b.{0,24}\b(?:lowered|down|lengthened|dropped|let down)\b|\b(?:lowered|lengthened|let down)\b.{0,16}\b(?:bob|nut|pendulum)\b/,
  ].map((way) => way.test(words));
  const [gains, loses] = [
    /\bgain(?:s|ed|ing)?\b|\b(?:runs?|going|goes|was) fast\b|\bto slow (?:it|her|the)\b/,
    /\blos(?:es|t|ing|e)\b|\b(?:runs?|going|goes|was) slow\b|\bto (?:quicken|speed)\b/,
  ].map((rate) => rate.test(words));
  if (up === down || gains === loses || /\b(?:too far|now|then|after(?:wards)?|result)\b/.test(words))
    return [];
  if (up && gains)
    return doubt(sight, "A shorter pendulum swings faster: a clock that gains wants its bob lower.");
  if (down && loses)
    return doubt(sight, "A longer pendulum swings slower: a clock that loses wants its bob higher.");
  return [];
}

/** A rise where the foresight is the larger. */
function level(sight: Sight): Remark[] {
  const of = (name: RegExp) =>
    sight.facts.find((fact) => name.test(fact.label) && fact.si > 0)?.quantity.value.number;
  const [back, fore] = [of(/\bb\.?s\b|\bback-?sight\b/), of(/\bf\.?s\b|\bfore-?sight\b/)];
  if (back === undefined || fore === undefined || back === fore) return [];
  const words = `${said(sight)} ${sight.what}`;
  const [rise, fall] = [/\brises?\b/, /\bfalls?\b/].map((way) => way.test(words));
  if (rise === fall || rise === back > fore) return [];
  return doubt(sight, back > fore ? "A smaller foresight is a rise." : "A larger foresight is a fall.");
}
