import { describe, expect, test } from "vitest";
import { draft, draftRules, gistOf, readCaptionText } from "#lib/captions/index.ts";
import { saying } from "./helpers.ts";

/** The examples that stand beside each rule: what a restorer says, and what is proposed. */
for (const [kind, rule] of Object.entries(draftRules)) {
  describe(`${kind}: ${rule.explains}`, () => {
    test.each(rule.examples.map((example) => [example.said, example] as const))("%s", (_, example) => {
      const { cues } = readCaptionText(saying(example.said));
      const gists = draft(cues, example.english ? { english: example.english } : {})
        .filter((one) => one.kind === kind)
        .map(gistOf);
      expect(gists.length, gists.join(" | ")).toBe(example.gives.length);
      for (const [i, gives] of example.gives.entries()) {
        expect(gists[i]?.startsWith(gives), `“${gists[i]}” does not begin with “${gives}”`).toBe(true);
      }
    });
  });
}
