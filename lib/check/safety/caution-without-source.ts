import { finding } from "#lib/finding/index.ts";
import { stepsOf } from "#lib/procedure/index.ts";
import type { Rule } from "../rule.ts";
import { cautions } from "./of-steps.ts";

/** A caution about people that does not say who says so. */
export const cautionWithoutSource: Rule = {
  id: "caution-without-source",
  title: "A caution with no source",
  explanation:
    "What to do against a hazard is believed, and copied. A reader weighs “the data sheet says” otherwise than “I was told”. “Common practice, no source” is a source too.",
  source: "common practice, no source",
  check: ({ procedure }) =>
    stepsOf(procedure).flatMap((step) =>
      step.cautions
        .filter((caution) => caution.source === "" && caution.avoid !== "" && caution.signal !== "NOTICE")
        .map((caution) =>
          finding({
            rule: "caution-without-source",
            severity: "advice",
            place: { mark: caution.mark, field: "sourceNote" },
            evidence: `${caution.hazard}\n${caution.avoid}`,
            found: `Step ${step.number}, “${caution.hazard}”: nobody is named for how to avoid it.`,
            expected: "Who says so, and where; or “common practice, no source”.",
            todo: "Write the source to the caution.",
            source: cautionWithoutSource.source,
          }),
        ),
    ),
  examples: [
    { says: "petrol", sketch: cautions([{ words: "Petrol vapour" }]), finds: 1 },
    { says: "a spring", sketch: cautions([{ words: "The mainspring is wound" }]), finds: 1 },
    { says: "mains", sketch: cautions([{ words: "The chassis is live", harms: "person" }]), finds: 1 },
    { says: "two of them", sketch: cautions([{ words: "Hot glue" }, { words: "Sharp burr" }]), finds: 2 },
    { says: "a data sheet", sketch: cautions([{ words: "Acid", sourceNote: "data sheet" }]), finds: 0 },
    {
      says: "common practice",
      sketch: cautions([{ words: "Burr", sourceNote: "common practice, no source" }]),
      finds: 0,
    },
    { says: "a thing only", sketch: cautions([{ words: "The vanes break", harms: "thing" }]), finds: 0 },
    { says: "no way out is another rule's", sketch: cautions([{ words: "Burr", avoid: "" }]), finds: 0 },
  ],
};
