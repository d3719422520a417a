import { finding } from "#lib/finding/index.ts";
import type { Rule } from "../rule.ts";
import { cautions, cautionsOf } from "./of-steps.ts";

const injury =
  /\b(?:injur\w+|hurts?|wounds?|burns? (?:the |your )?(?:skin|hands?|fingers?)|fingers?(?!-)|(?:your|the|a) (?:hand|eye|skin)\b|hands\b|eyes\b|skin\b|lungs?|breath\w*|poison\w*|death|deadly|fatal|kills?|electric shock|cancer|faint|blind(?:s|ness)?)\b/i;

/** A caution said to harm things only, that speaks of people. */
export const noticeOfInjury: Rule = {
  id: "notice-of-injury",
  title: "NOTICE, and somebody hurt",
  explanation:
    "NOTICE is for damage to things alone. A message that speaks of fingers, eyes or lungs under that word is read as if only paint were at stake.",
  source: "ANSI Z535.6, from public summaries: NOTICE for property damage only",
  check: (view) =>
    cautionsOf(view)
      .filter(({ caution }) => caution.signal === "NOTICE")
      .flatMap(({ caution, step }) => {
        const match = injury.exec(`${caution.hazard} ${caution.consequence}`);
        if (!match) return [];
        return finding({
          rule: "notice-of-injury",
          severity: "doubtful",
          place: { mark: caution.mark, field: "harms" },
          evidence: `${caution.hazard}\n${caution.consequence}`,
          found: `Step ${step.number}, NOTICE “${caution.hazard}” speaks of “${match[0]}”.`,
          expected: "CAUTION, WARNING or DANGER where a person can be hurt.",
          todo: "Say in the mark that it harms a person, how badly and how surely.",
          source: noticeOfInjury.source,
        });
      }),
  examples: [
    { says: "fingers", sketch: thing("The gear traps fingers."), finds: 1 },
    { says: "eyes", sketch: thing("The spring flies out.", "It hits the eyes."), finds: 1 },
    { says: "breath", sketch: thing("Dust that is breathed in."), finds: 1 },
    { says: "burns", sketch: thing("Hot glue burns the skin."), finds: 1 },
    { says: "a thing", sketch: thing("A lever breaks the brass vanes.", "The impeller is scrap."), finds: 0 },
    { says: "finger-tight", sketch: thing("More than finger-tight strips the thread."), finds: 0 },
    { says: "second-hand", sketch: thing("The second hand bends."), finds: 0 },
    { says: "paint", sketch: thing("Stripper burns the varnish."), finds: 0 },
    {
      says: "rated for a person",
      sketch: cautions([
        { words: "The gear traps fingers.", harms: "person", severity: "minor", likelihood: "could" },
      ]),
      finds: 0,
    },
  ],
};

function thing(words: string, consequence = "") {
  return cautions([{ words, consequence, harms: "thing", severity: "damage", likelihood: "could" }]);
}
