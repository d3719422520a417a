import type { Finding } from "#lib/finding/index.ts";
import { instructions, type Passage } from "../passages.ts";
import type { View } from "../rule.ts";

const plain = (text: string) =>
  text
    .toLowerCase()
    .replace(/\bcallipers?\b/g, "caliper")
    .replace(/[’']/g, "'");

/**
 * Things of a list that texts of the steps say are used and that no step lists: "with the torque wrench", "use a
 * soft mallet". What is ruled out ("use no scraper", "never with a bar") is not used. One at its first mention.
 */
export function unlisted(
  view: View,
  names: RegExp,
  listed: readonly { name: string }[],
  say: (passage: Passage, name: string) => Finding,
): Finding[] {
  const known = listed.map(({ name }) => plain(name));
  const said = new Set<string>();
  return instructions(view).flatMap((passage) => {
    const used = [...passage.text.matchAll(names)]
      .filter((match) => !denied.test(passage.text.slice(0, match.index)))
      .map((match) => ({ name: match[1] as string, head: plain(match[2] as string) }))
      .filter(({ head }) => !said.has(head) && !known.some((one) => one.includes(head.replace(/s$/, ""))));
    const [first] = used;
    if (!first) return [];
    said.add(first.head);
    return say(passage, first.name);
  });
}

const denied = /\b(?:no|not|never|don't|without|nor)\b[^.;]*$/i;

/** A pattern for "with the long ring spanner": group 1 is the thing as written, group 2 its name. */
export function usedThing(names: string): RegExp {
  return new RegExp(
    `\\b(?:with|using|use|by means of|take)\\s+(?:the\\s+|an?\\s+)?(?:(?:touch|smear|drops?|dab|little|film)\\s+of\\s+(?:the\\s+)?)?((?:(?!(?:its|their|your|no|his|her)\\b)[\\p{L}\\d/-]+\\s+){0,3}?(${names}))\\b`,
    "giu",
  );
}
