import { numberIn } from "./figures.ts";

/** "The wheel turns 2.5 times to one of the crank": how often the one turns for a turn of the other. */
export interface RatioTold {
  subject: string;
  other: string;
  /** Turns of the subject for one of the other. */
  times: number;
}

const shares: Record<string, string> = {
  half: "1/2",
  third: "1/3",
  quarter: "1/4",
  fifth: "1/5",
  sixth: "1/6",
  eighth: "1/8",
  tenth: "1/10",
  twelfth: "1/12",
  twentieth: "1/20",
};
const counts: Record<string, string> = {
  one: "1",
  two: "2",
  three: "3",
  four: "4",
  five: "5",
  six: "6",
  seven: "7",
  eight: "8",
  nine: "9",
  ten: "10",
  twelve: "12",
  twenty: "20",
  sixty: "60",
};
const often: Record<string, string> = {
  once: "1 times",
  twice: "2 times",
  double: "2 times",
  thrice: "3 times",
  treble: "3 times",
};

const wordCount = new RegExp(`\\b(${Object.keys(counts).join("|")})\\b(?!-)`, "g");
const wordShare = new RegExp(`\\b(?:(\\d+) |a |an )?(${Object.keys(shares).join("|")})s?\\b`, "g");
const wordOften = new RegExp(`\\b(${Object.keys(often).join("|")})\\b`, "g");

/** The numbers in figures: "twice" is "2 times", "two thirds" is "2/3", "40-tooth" goes. */
const inFigures = (text: string): string =>
  text
    .toLowerCase()
    .replace(/\b\d+[- ]?(?:tooth|teeth|t|in|inch|mm)\b\.? /g, "")
    .replace(wordCount, (_, word: string) => counts[word] ?? word)
    .replace(wordShare, (_, many: string | undefined, word: string) =>
      (shares[word] ?? word).replace(/^1/, many ?? "1"),
    )
    .replace(wordOften, (_, word: string) => often[word] ?? word)
    .replace(/\bone and a half\b/g, "1.5");

const n = "(\\d+(?:\\.\\d+)?(?:(?:[- ]\\d+)?\\/\\d+)?)";
const name = "(?:the |its |a )?([a-z][a-z -]*?)";
const turn = "(?:turns?|revs?|revolutions?|rotations?)";
const verb =
  "(?:turns?|runs?|goes|makes?|does|revolves?|rotates?|spins?|has|is driven|is geared|moves?)(?: round| over)?(?: at)?";
const end = `(?: ?(?:'s)? (?:speed|${turn}|rpm|does|goes|makes|turns))?(?=$|[,;.:(])`;

/** "The cam turns at half the speed of the crank", "the saw runs 3 times as fast as the motor". */
const asFast = new RegExp(
  `${name} ${verb} ${n}(?: times| x)?(?:(?: the| of the)? (?:speed|${turn}|number of ${turn}) of| as (?:fast|quick|quickly|slow|slowly|often|many ${turn}) as| (faster|slower) than| of)?(?: that of)? ${name}${end}`,
);
/** "The wheel makes 2.5 turns to one of the crank", "goes round once for every 12 of the other". */
const toOne = new RegExp(
  `${name} ${verb} ${n}(?: times| ${turn})?(?: round)? (?:to|for|per|in|while|with|on)(?: each| every)?(?: (?:a|an|${n}))?(?: times)?(?: ${turn})?(?: of| on| by)? ${name}(?: ${verb} (?:round )?${n}(?: times)?| ${turn})?(?=$|[,;.:(])`,
);
/** "3 turns of the motor to one of the saw", "one turn of the crank gives 2.5 of the wheel". */
const turnsOf = new RegExp(
  `${n} ${turn} (?:of|on) ${name} (?:to|for|per|make|give|turn|move|is|are|equal)s?(?: each| every)?(?: (?:a|an|${n}))?(?: times)?(?: ${turn})?(?: of| on)? ${name}(?: ${n} (?:times|${turn}))?(?=$|[,;.:(])`,
);

/** "The magneto turns at engine speed." */
const atItsSpeed = new RegExp(
  `${name} ${verb} (?:the )?(?:same )?speed (?:of|as) ${name}${end}|${name} (?:turns?|runs?|goes|rotates?|is driven) at ${name} speed\\b`,
);

/** A number in figures; one where none is written: "to a turn of the crank". */
const number = (text: string | undefined): number => (text === undefined ? 1 : numberIn(text));

/** How many turns of the one are told for a turn of the other; null where the text tells none. */
export function ratioTold(text: string): RatioTold | null {
  if (text.length > 160 || !/\b(?:turn|rev|run|goes|make|do|rotat|spin|has|driven|geared|move)/i.test(text))
    return null;
  const words = inFigures(text);
  const turns = toOne.exec(words);
  if (turns) return told(turns[1], number(turns[2]) / (number(turns[3]) * number(turns[5])), turns[4]);
  const speed = asFast.exec(words);
  if (speed) {
    const times = number(speed[2]);
    return told(speed[1], speed[3] === "slower" ? 1 / times : times, speed[4]);
  }
  const counted = turnsOf.exec(words);
  if (counted)
    return told(counted[2], number(counted[1]) / (number(counted[3]) * number(counted[5])), counted[4]);
  const same = atItsSpeed.exec(words);
  return same ? told(same[1] ?? same[3], 1, same[2] ?? same[4]) : null;
}

/** What turns for an inch, a minute or as so many rpm is no ratio of two turns. */
const noWheel =
  /^(?:as|too|out|in|rpm|turns?|revs?|per|inch(?:es)?|in|mm|cm|foot|feet|travel|(?:minute|second|hour|day)s?$)\b/;

const told = (subject = "", times: number, other = ""): RatioTold | null =>
  times > 0 && Number.isFinite(times) && subject !== other && !noWheel.test(other)
    ? { subject, times, other }
    : null;
