import { warnings } from "../lexicon/cautions.ts";
import { consequenceBook } from "./caution-reach.ts";
import { type Context, hasWord, sentenceAt } from "./context.ts";
import { type Trigger, trigger, weak } from "./orders.ts";
import { PhraseBook } from "./phrase.ts";
import type { Token } from "./stream.ts";
import { whatIf } from "./what-if.ts";
import { wordSets } from "./word-sets.ts";

const warningBook = new PhraseBook(
  warnings.map((text) => [text, text] as const),
  wordSets,
);

const echoes = new Set(["i mean it", "i am not kidding", "i am not joking", "no joke", "you will regret it"]);

const denying = new Set("not never nobody".split(" "));

const harming = /kill|bite|shock|lethal|toxic|poison|live|take your|have your/;

/** Phrases that tell what happens: what is warned of stands before them. */
const consequential =
  /^(?:how you|it\/|take your|have your|take the|will|could|can|lose|is a bomb|through your|go through)/;

const hazards =
  /live|charge|asbestos|lead|mercury|radium|tension|wound|hot side|mains|flammable|lethal|pressure$/;

/** The phrases of the lexicon. */
export function warning(context: Context, place: number, limit: number): Trigger | null {
  const found = warningBook.at(context.tokens, place, limit);
  if (!found) return null;
  const { word } = context.tokens[place] as { word: string };
  const before = context.tokens[place - 1]?.word ?? "";
  if (
    (word === "mind" || word === "watch") &&
    ["you", "i", "we", "to", "not", "never", "just"].includes(before)
  )
    return null;
  if (context.tokens[found.from - 1]?.word === "not" && !found.entry.startsWith("be")) return null;
  if (hasWord(context.tokens, place - 4, place, denying) && harming.test(found.entry)) return null;
  const start = consequential.test(found.entry)
    ? Math.max(sentenceAt(context, place).from, place - 25)
    : place;
  const one = trigger(start, found.to, `“${found.entry.replace(/[{}*\d?]+/g, "…")}” warns`);
  if (hazards.test(found.entry)) return { ...one, hazard: true };
  return echoes.has(found.entry) ? { ...one, echo: true } : one;
}

/** "No oil at all on the wheel teeth. … It makes grinding paste"; "not the torch". Counts with a consequence. */
export function nothingOf({ tokens, parts }: Context, place: number, limit: number): Trigger | null {
  const word = tokens[place]?.word;
  if ((word !== "no" && word !== "not") || tokens[place]?.stop !== "" || place + 2 >= limit) return null;
  const before = tokens[place - 1];
  const open = before?.stop !== "" || parts.sentenceOf[place - 1] !== parts.sentenceOf[place];
  if (word === "no" && !open && !["and", "but", "so", "with", "please", "no"].includes(before.word))
    return null;
  const next = tokens[place + 1]?.word ?? "";
  const why = "advice against something, with what happens otherwise";
  if (word === "not") {
    const ends =
      !open && next === "the" && consequenceBook.first(tokens, place + 3, Math.min(limit, place + 11));
    if (ends) return weak(place, place + 3, why);
    if (!open && !["and", "but", "so", "with", "please", "no"].includes(before.word)) return null;
    const named = ["the", "wd", "any", "a", "in", "on", "near", "with"].includes(next);
    if (named) return weak(place, place + 3, why);
    if (open && spoilsIt(tokens, place + 1, limit)) return weak(place, place + 2, why);
    // "Not steel, because you'll catch the edge."
    const because = tokens[place + 1]?.stop === "," && tokens[place + 2]?.word === "because" && open;
    return because ? trigger(place, place + 3, "advice against something, with its reason") : null;
  }
  for (let i = place + 2; i < Math.min(limit, place + 7); i++) {
    if (["on", "in", "near", "anywhere", "around"].includes(tokens[i]?.word ?? ""))
      return weak(place, i + 1, why);
  }
  return null;
}

/** "Not wheel bearing grease, that'll melt": a thing named, and behind a comma what it does. */
function spoilsIt(tokens: readonly Token[], from: number, limit: number): boolean {
  for (let i = from; i < Math.min(limit - 1, from + 5); i++) {
    if (tokens[i]?.stop === ",") return ["that", "it", "they", "you"].includes(tokens[i + 1]?.word ?? "");
  }
  return false;
}

/** "You put stainless in there, you hit a stump, and the gear breaks"; "if you put grease on the pawls, they stick". */
export function supposed({ tokens, parts }: Context, place: number, limit: number): Trigger | null {
  const start = tokens[place]?.word === "if" ? place + 1 : place;
  if (tokens[start]?.word !== "you" || tokens[start + 2]?.word === "not" || start + 2 >= limit) return null;
  const before = tokens[place - 1];
  const open =
    start > place || !before || before.stop !== "" || parts.sentenceOf[place - 1] !== parts.sentenceOf[place];
  if (!open || !risky.has(tokens[start + 1]?.word ?? "")) return null;
  return weak(place, start + 2, supposition);
}

/** "If you oil the racks they pick up lint." */
export function condition(context: Context, place: number, limit: number): Trigger | null {
  const found = whatIf(context, place, limit);
  const toViewer =
    found && (context.tokens[place]?.word !== "if" || context.tokens[place + 1]?.word === "you");
  return found && toViewer ? { ...trigger(found.from, found.to, supposition), sure: false } : null;
}

const supposition = "what happens if it is done wrong";

const risky = new Set(
  "put set do use go fill tighten over overtighten force run get leave turn lean hit start let forget crank heat oil grease pull drop wind pour push open rush hurry".split(
    " ",
  ),
);
