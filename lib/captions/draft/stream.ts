import { contractions, endings } from "../lexicon/contractions.ts";
import { hesitations } from "../lexicon/hesitations.ts";
import type { Cue } from "../read/types.ts";

/** One word as the rules see it: lower case, without signs around it, contractions taken apart. */
export interface Token {
  word: string;
  /** Its letters in the text of the stream: half-open. The words of one contraction share theirs. */
  start: number;
  end: number;
  /** The cue it stands in. */
  cue: number;
  /** The sign behind it, if one stands there: "," "." "?" "!" ";" ":" or "–". */
  stop: string;
  /** Silence before it, in seconds, where the cues show one. */
  pause: number;
  /** Whether somebody else speaks from here on. */
  turn: boolean;
  /** What joins it to the word before it where no blank does: "" in "3/8in", "-" in "half-inch". Null after a blank. */
  joint: string | null;
  /** Whether it began with a capital. */
  capital: boolean;
  /** Whether it is a figure, as opposed to a word. */
  figure: boolean;
  /** Whether a minus sign stands before the figure. */
  minus: boolean;
}

/** The whole of what was said: one text, and its words. */
export interface Stream {
  cues: readonly Cue[];
  text: string;
  tokens: Token[];
}

/** Puts the words of all cues in one row. What stands in brackets ("[Music]") is not said, and left out. */
export function streamOf(cues: readonly Cue[]): Stream {
  const pieces: string[] = [];
  const tokens: Token[] = [];
  const silence = silences(cues);
  let offset = 0;
  let voice: string | undefined;
  let lastEnd = 0;
  for (const [i, cue] of cues.entries()) {
    let pause = i === 0 ? 0 : Math.max(0, cue.start - lastEnd, silence[i - 1] ?? 0);
    lastEnd = Math.max(lastEnd, cue.end);
    let inBrackets = false;
    for (const said of cue.words) {
      const opens = /^[[(♪♫]/.test(said.text) && !/\d/.test(said.text);
      if (opens) inBrackets = true;
      const quiet = inBrackets;
      if (/[\])♪♫][.,]?$/.test(said.text)) inBrackets = false;
      if (!quiet) {
        const turn = said.voice !== voice || /^(?:>>|[-–—]$)/.test(said.text);
        voice = said.voice;
        const before = tokens.length;
        pushTokens(tokens, said.text, offset, i);
        const first = tokens[before];
        if (first) {
          first.pause = pause;
          first.turn = turn;
          pause = 0;
        }
      }
      pieces.push(said.text);
      offset += said.text.length + 1;
    }
  }
  return { cues, text: pieces.join(" "), tokens };
}

/** A cue that is this much longer than its words take, in seconds, ends in silence. */
const leastSilence = 1.3;

/**
 * Silence at the end of each cue, where cues follow each other without a gap (plain timed text gives no ends): what a
 * cue lasts beyond the time its letters take at the speaker's usual pace. None is made up where the cues show gaps.
 */
function silences(cues: readonly Cue[]): number[] {
  const gapless = cues.every((cue, i) => i === 0 || cue.start - (cues[i - 1] as Cue).end < 0.25);
  if (!gapless || cues.length < 8) return [];
  const pace = cues.map((cue) => (cue.end - cue.start) / Math.max(1, cue.text.length)).sort((a, b) => a - b);
  const usual = pace[Math.floor(pace.length / 2)] ?? 0;
  return cues.map((cue) => {
    const rest = cue.end - cue.start - usual * cue.text.length;
    return rest >= leastSilence ? rest : 0;
  });
}

/** A figure ("3/8", "1,350", ".015", "50:1"), a word with its apostrophes and figures, or one sign that matters. */
const piece =
  /\d{1,3}(?:,\d{3})+(?:\.\d+)?(?![\d,])|\d+:\d+(?![\d:])|\d+\/\d+(?:ths?|nds?|rds?)?(?![\d/])|\d*\.\d+|\d+(?:st|nd|rd|th)s?(?![\p{L}\d])|\d+|[½¼¾⅓⅔⅛⅜⅝⅞]|[\p{L}]['’\p{L}\d]*|[%°"″#$£€±×Ω]|['’](?=\d\ds?\b)|['’]\p{L}[\p{L}]*/gu;

/** A plain word with at most one sign behind it: nine words in ten. */
const plainWord = /^([A-Za-z]+)([.,?!;:]?)$/;

function pushPlain(tokens: Token[], raw: string, stop: string, offset: number, cue: number): boolean {
  const word = raw.toLowerCase();
  if (Object.hasOwn(contractions, word)) return false;
  tokens.push({
    word,
    start: offset,
    end: offset + raw.length,
    cue,
    stop,
    pause: 0,
    turn: false,
    joint: null,
    capital: raw.charCodeAt(0) < 97,
    figure: false,
    minus: false,
  });
  return true;
}

function pushTokens(tokens: Token[], text: string, offset: number, cue: number): void {
  const plain = plainWord.exec(text);
  if (plain && hesitations.has((plain[1] ?? "").toLowerCase())) {
    closeBefore(tokens, plain[2] ?? "");
    return;
  }
  if (plain && pushPlain(tokens, plain[1] ?? "", plain[2] ?? "", offset, cue)) return;
  let end = -1;
  const first = tokens.length;
  for (const found of text.matchAll(piece)) {
    const place = found.index;
    const raw = found[0];
    const last = tokens.length > first ? tokens.at(-1) : undefined;
    let joint = last ? text.slice(end, place) : null;
    if (last && joint) last.stop = stopIn(joint);
    const minus = place > 0 && !last && /[-−]/.test(text.charAt(place - 1));
    for (const word of expand(raw)) {
      tokens.push({
        word,
        start: offset + place,
        end: offset + place + raw.length,
        cue,
        stop: "",
        pause: 0,
        turn: false,
        joint,
        capital: /^\p{Lu}/u.test(raw),
        figure: /^[\d.½¼¾⅓⅔⅛⅜⅝⅞]/.test(raw),
        minus,
      });
      joint = "";
    }
    end = place + raw.length;
  }
  const last = tokens.at(-1);
  if (end >= 0 && last && tokens.length > first) last.stop = stopIn(text.slice(end));
}

/** A hesitation is left out; the full stop behind it stays. */
function closeBefore(tokens: Token[], stop: string): void {
  const last = tokens.at(-1);
  if (last && (last.stop === "" || /[.?!]/.test(stop))) last.stop = stop;
}

function stopIn(between: string): string {
  return /[.,?!;:…–—]/.exec(between)?.[0] ?? "";
}

/** The words a word stands for. */
function expand(raw: string): string[] {
  const word = raw.toLowerCase().replaceAll("’", "'");
  if (/^[a-z]+$/.test(word) && !Object.hasOwn(contractions, word)) return [word];
  const whole = Object.hasOwn(contractions, word) ? contractions[word] : undefined;
  if (whole !== undefined) return whole.split(" ");
  const ending = /n't$|'(?:re|ve|ll|d|m|s)$/.exec(word)?.[0];
  if (ending === undefined || ending.length === word.length) return [word];
  return [word.slice(0, -ending.length), endings[ending] ?? ending];
}

/** The letters from one word to another, as they stand in the captions; signs behind the last word are left off. */
export function quoteOf(stream: Stream, from: number, to: number): string {
  const first = stream.tokens[from];
  const last = stream.tokens[to - 1];
  return first && last ? stream.text.slice(first.start, last.end) : "";
}

/** When the words from one to another were said: from the start of the cue of the first to the end of the last's. */
export function spanOf(stream: Stream, from: number, to: number): { start: number; end: number } {
  const first = stream.cues[stream.tokens[from]?.cue ?? 0];
  const last = stream.cues[stream.tokens[to - 1]?.cue ?? 0];
  return { start: first?.start ?? 0, end: last?.end ?? first?.end ?? 0 };
}
