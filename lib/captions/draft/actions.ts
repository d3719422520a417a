import { beforeDeed, workVerbs } from "../lexicon/work-verbs.ts";
import { type Context, clauseAt, hasWord, nounAfter, sentenceAt } from "./context.ts";
import type { DraftRule } from "./rule.ts";
import { quoteOf, spanOf } from "./stream.ts";
import type { Draft } from "./types.ts";

/** The rule for work that begins a step. */
export const actions: DraftRule = {
  explains:
    "Work on a named part, told or ordered, that can begin a step. A second one on the same part at once is left out.",
  examples: [
    { said: "So you slack off the clamp screw and you move it up.", gives: ["slacken clamp screw"] },
    { said: "Now undo the drain plug.", gives: ["undo drain plug"] },
    { said: "Don't ream the bush.", gives: [] },
    { said: "The drain plug is on the left.", gives: [] },
  ],
  find: actionsIn,
};

const reach = 7;
const apart = 30;
const refused = new Set("not never if would could can should".split(" "));

/** Every deed that can begin a step. */
function actionsIn(context: Context): Draft[] {
  const { tokens, stream } = context;
  const drafts: Draft[] = [];
  for (let place = 0; place < tokens.length; place++) {
    const word = tokens[place]?.word ?? "";
    const verb = Object.hasOwn(workVerbs, word) ? workVerbs[word] : undefined;
    if (verb === undefined || !isDeed(context, place)) continue;
    const noun = nounAfter(
      context,
      place + 1,
      Math.min(tokens.length, place + reach, sentenceAt(context, place).to),
    );
    if (!noun) continue;
    const name = `${verb} ${noun.name}`;
    const last = drafts.at(-1);
    if (last && place - last.to < apart && "name" in last.fields && last.fields.name.endsWith(noun.name))
      continue;
    const to = Math.max(noun.to, Math.min(clauseAt(context, place).to, place + 20));
    const { start, end } = spanOf(stream, place, to);
    drafts.push({
      kind: "action",
      start,
      end,
      quote: quoteOf(stream, place, to),
      fields: { name },
      reason: `“${word}” with a part behind it is work that can begin a step.`,
      sureness: "unsure",
      from: place,
      to,
    });
  }
  return drafts;
}

function isDeed(context: Context, place: number): boolean {
  const { tokens, parts } = context;
  const before = tokens[place - 1];
  const opens = before?.stop !== "" || parts.sentenceOf[place - 1] !== parts.sentenceOf[place];
  if (hasWord(tokens, Math.max(0, place - 3), place, refused)) return false;
  return opens || beforeDeed.has(before.word);
}
