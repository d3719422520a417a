import { consumables as consumableNames, tools as toolNames } from "../lexicon/tools.ts";
import type { Context } from "./context.ts";
import { PhraseBook } from "./phrase.ts";
import type { DraftRule } from "./rule.ts";
import { quoteOf, spanOf } from "./stream.ts";
import type { Draft } from "./types.ts";
import { wordSets } from "./word-sets.ts";

const toolBook = new PhraseBook(toolNames, wordSets);
const consumableBook = new PhraseBook(consumableNames, wordSets);

/** The rule for tools. */
export const tools: DraftRule = {
  explains: "Tools and instruments that are named, each once.",
  examples: [
    { said: "I'm using the heat gun on it.", gives: ["heat gun"] },
    { said: "The tool post is worn.", gives: [] },
  ],
  find: (context) => named(context, "tool", toolBook),
};

/** The rule for what is used up. */
export const consumables: DraftRule = {
  explains:
    "Oils, greases, sealants, solvents and abrasives that are named, each once; not those that are warned against.",
  examples: [
    { said: "It had a weekend in paraffin.", gives: ["paraffin"] },
    { said: "Don't put engine oil in it.", gives: [] },
  ],
  find: (context) => named(context, "consumable", consumableBook),
};

const against = new Set("not never no without nothing".split(" "));

function named(context: Context, kind: "tool" | "consumable", book: PhraseBook<string>): Draft[] {
  const { tokens, stream, parts } = context;
  const seen = new Set<string>();
  const drafts: Draft[] = [];
  for (const sentence of parts.sentences) {
    for (const found of book.all(tokens, sentence.from, sentence.to)) {
      const refused = tokens
        .slice(Math.max(sentence.from, found.from - 7), found.from)
        .some((token) => against.has(token.word));
      if (seen.has(found.entry) || refused) continue;
      seen.add(found.entry);
      const { start, end } = spanOf(stream, found.from, found.to);
      const quote = quoteOf(stream, found.from, found.to);
      drafts.push({
        kind,
        start,
        end,
        quote,
        fields: { name: found.entry },
        reason: `“${quote}” is named.`,
        sureness: "likely",
        from: found.from,
        to: found.to,
      });
    }
  }
  return drafts;
}
