import { characteristics, instruments, roleWords, sourceWords } from "../../lexicon/value-roles.ts";
import type { Amount } from "../amount.ts";
import { type Context, clauseAt, nounAfter, nounBefore, sentenceAt } from "../context.ts";
import { PhraseBook } from "../phrase.ts";
import type { MeasurementFields } from "../types.ts";

type Role = MeasurementFields["role"];
type Source = NonNullable<MeasurementFields["source"]>;

const roleNames: Record<keyof typeof roleWords, Role> = {
  limit: "limit",
  specified: "specified",
  fitted: "asFitted",
  found: "asFound",
};
const roles = new PhraseBook<Role>(
  (Object.keys(roleWords) as (keyof typeof roleWords)[]).flatMap((name) =>
    roleWords[name].map((text) => [text, roleNames[name]] as const),
  ),
);
const sources = new PhraseBook<Source>(
  (Object.keys(sourceWords) as Source[]).flatMap((name) =>
    sourceWords[name].map((text) => [text, name] as const),
  ),
);
const kinds = new PhraseBook<string>(characteristics);
const tools = new PhraseBook<string>(instruments);

/** Which of the four values of a characteristic is said; as found where nothing shows it. */
export function roleOf(context: Context, amount: Amount, limited: boolean): Role {
  if (limited) return "limit";
  const sentence = sentenceAt(context, amount.from);
  const near = nearest(
    roles,
    context,
    amount,
    Math.max(sentence.from, amount.from - 10),
    Math.min(sentence.to, amount.to + 4),
  );
  return near ?? "asFound";
}

/** Where the value comes from, as far as the words show. */
export function sourceOf(context: Context, amount: Amount): Source | undefined {
  const sentence = sentenceAt(context, amount.from);
  const from = Math.max(sentence.from, amount.from - 14);
  return nearest(sources, context, amount, from, Math.min(sentence.to, amount.to + 10)) ?? undefined;
}

/** The instrument named in the sentence. */
export function instrumentOf(context: Context, amount: Amount): string | undefined {
  const sentence = sentenceAt(context, amount.from);
  const from = Math.max(sentence.from, amount.from - 16);
  return nearest(tools, context, amount, from, Math.min(sentence.to, amount.to + 12)) ?? undefined;
}

function nearest<T>(
  book: PhraseBook<T>,
  context: Context,
  amount: Amount,
  from: number,
  to: number,
): T | null {
  let best: T | null = null;
  let distance = Number.POSITIVE_INFINITY;
  for (const found of book.all(context.tokens, from, to)) {
    const away = found.to <= amount.from ? amount.from - found.to : Math.max(0, found.from - amount.to) * 1.5;
    if (away > distance) continue;
    distance = away;
    best = found.entry;
  }
  return best;
}

/** What is measured, as a name: the part, and the characteristic. */
export function measuredOf(context: Context, amount: Amount): string {
  const { tokens } = context;
  const sentence = sentenceAt(context, amount.from);
  const clause = clauseAt(context, amount.to - 1);
  const behind =
    tokens[amount.to - 1]?.stop === ""
      ? nounAfter(context, amount.to, Math.min(amount.to + 4, clause.to))
      : null;
  const direct = behind && behind.from <= amount.to + 1 ? behind : null;
  const noun = direct ?? nounBefore(context, amount.from - 1, 30);
  const kind =
    kinds.at(tokens, amount.to, sentence.to)?.entry ??
    nearest(
      kinds,
      context,
      amount,
      Math.max(sentence.from, amount.from - 12),
      Math.min(sentence.to, amount.to + 6),
    );
  if (amount.designation !== undefined) return noun ? `${noun.name} thread` : "thread";
  const words = [noun?.name, kind].filter(
    (word) => word !== undefined && word !== null && !noun?.name.endsWith(word),
  );
  const name = words.length > 0 ? words.join(" ") : noun?.name;
  return name ?? amount.dimension ?? "value";
}
