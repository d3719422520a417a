import type { Rule } from "../rule.ts";
import { about, below, fires, quoted } from "../wording/say.ts";
import { unlisted, usedThing } from "./supplies.ts";

const tools = usedThing(
  "spanner|wrench|socket|screwdriver|mallet|hammer|drift|punch|puller|extractor|feeler gauges?|feeler blades?|feelers|micrometer|callipers?|calipers?|dial gauge|pliers|tweezers|vice|mandrel|reamer|tap|die|file|hacksaw|scraper|scriber|hook|hexagon key|allen key|soldering iron|multimeter|megger|pin punch|gasket cutter|press|blowlamp|torch|stroboscope|straight edge|straightedge|set square|toolmaker's clamp|wire brush|syringe|oil can|grease gun|crochet hook|spring balance",
);

/** A tool that a step says is used, and that nobody is told to fetch. */
export const toolNotListed: Rule = {
  id: "tool-not-listed",
  title: "A tool that is on no list",
  explanation:
    "The list of tools at the front is the union of what the steps list. A tool that only stands in the words of a step is missed with both hands in the machine.",
  source: "common practice, no source",
  check: (view) =>
    unlisted(view, tools, view.procedure.tools, (passage, name) =>
      about(passage, {
        rule: "tool-not-listed",
        severity: "advice",
        evidence: name.toLowerCase(),
        found: `${quoted(passage, passage.text)} uses “${name}”, which no step lists.`,
        expected: "Every tool that is used on the list of tools.",
        todo: "List it, with its size.",
        source: toolNotListed.source,
        mends: [{ name: "list-tool", says: `List “${name}”`, with: name }],
      }),
    ),
  examples: [
    ...fires(
      "Undo the union with a ring spanner.",
      "Lift the hook out with the fine tweezers.",
      "Using a brass drift, tap the pin through.",
    ),
    ...below(1, "Tap its rim with a soft mallet on alternate sides."),
    {
      says: "listed in another step",
      sketch: {
        marks: [
          [1, "tool", { words: "Ring spanner", size: "3/8 in BSF" }],
          [2, "action", { words: "Undo the union with a ring spanner." }],
          [40, "action", { words: "Tighten the union with the spanner." }],
        ],
      },
      finds: 0,
    },
    ...below(
      0,
      "Use no dry scraper or brush.",
      "Hold the pulley with a strap, never with a hammer.",
      "Do not touch the contacts with a file.",
      "Turn the tap with care.",
      "Fit the plate with its hook up.",
    ),
  ],
};
