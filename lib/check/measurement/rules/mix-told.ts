import { near, numberIn } from "../figures.ts";
import type { EntryRule } from "../rule.ts";
import type { Fact, Sight } from "../sight.ts";

/** A mix in parts against the sheet that says how it is made. */
export const mixTold: EntryRule = {
  id: "mix-against-sheet",
  title: "Parts of a mix against its sheet",
  explanation:
    "Twenty parts of water to one of oil is suds; twenty parts of oil to one of water is not. Where the sheet is at hand, the parts must belong to the same things as in it.",
  source: "arithmetic: the parts against those of the sheet",
  check: (sight) => {
    if (sight.facts.filter(isPart).length < 2) return [];
    const own =
      partsIn(sight.entry.text.toLowerCase()) ?? partsIn(`${sight.entry.text} ${sight.what}`.toLowerCase());
    if (!own) return [];
    for (const text of sheets(sight)) {
      const sheet = partsIn(text.toLowerCase());
      const same = sheet && inOrderOf(own, sheet);
      if (!same || near(own[0].parts / own[1].parts, same[0] / same[1], 0.02)) continue;
      const turned = near(own[0].parts / own[1].parts, same[1] / same[0], 0.02);
      return [
        {
          severity: turned ? ("wrong" as const) : ("doubtful" as const),
          found: `“${sight.entry.text}”, where the sheet has “${text}”.`,
          expected: `${same[0]} ${own[0].of} to ${same[1]} ${own[1].of}.`,
          ...(turned ? { meant: "turned about?" } : {}),
        },
      ];
    }
    return [];
  },
  examples: [
    {
      says: "oil for water",
      entry: {
        text: "20 parts soluble oil to 1 part water",
        what: "coolant mix",
        context: { related: [{ what: "sheet", text: "1 part oil to 20 parts water" }] },
      },
      finds: 1,
    },
    {
      says: "the other order, the same mix",
      entry: {
        text: "20 parts water to 1 part soluble oil",
        what: "coolant mix",
        context: { related: [{ what: "sheet", text: "1 part oil to 20 parts water" }] },
      },
      finds: 0,
    },
    {
      says: "lead and tin turned about",
      entry: { text: "60 lead 40 tin", what: "solder", context: { spec: "40 lead 60 tin" } },
      finds: 1,
    },
  ],
};

/** A figure of the text without a unit. */
const isPart = ({ from, dimension }: Fact): boolean =>
  from === "text" && (dimension === "number" || dimension === "count" || dimension === "ratio");

interface Part {
  parts: number;
  of: string;
}

const number = "(\\d+(?:\\.\\d+)?|one|two|three|four|five|six|ten|twenty)";
const thing = "((?:[a-z][a-z-]+ ){0,2}?[a-z][a-z-]+)";
const two = new RegExp(
  `\\b${number} ?(?:parts?|measures?|volumes?|%)? ?(?:of )?${thing}(?: to| with| and|,|:|/)? ?(?:to )?${number} ?(?:parts?|measures?|volumes?|%)? ?(?:of )?${thing}`,
);
const unit =
  /^(?:mm|in|cm|ml|l|g|kg|oz|lb|psi|bar|rpm|hours?|min|turns?|teeth|litres?|pints?|thou|holes?|degrees|v|a|w|ft|to|by|x)\b/;
const filler = /\b(?:parts?|of|the|to|with|and|by|volume|weight|clean|soft|cold|hot|fresh|plain|neat)\b/g;

function partsIn(text: string): [Part, Part] | null {
  const hit = text.length < 160 && /\d|\bone\b/.test(text) ? two.exec(text) : null;
  if (!hit) return null;
  const [a, b] = [
    { parts: numberIn(hit[1] ?? ""), of: clean(hit[2]) },
    { parts: numberIn(hit[3] ?? ""), of: clean(hit[4]) },
  ];
  if (unit.test(hit[2] ?? "") || unit.test(hit[4] ?? "") || !a.of || !b.of || a.of === b.of) return null;
  return a.parts > 0 && b.parts > 0 ? [a, b] : null;
}

const clean = (words = ""): string => words.replace(filler, "").replace(/\s+/g, " ").trim();

/** The sheet's parts in the order of one's own; null where it speaks of other things. */
function inOrderOf(own: [Part, Part], sheet: [Part, Part]): [number, number] | null {
  const [a, b] = own;
  const [x, y] = sheet;
  const straight = shares(a.of, x.of) && shares(b.of, y.of);
  const crossed = shares(a.of, y.of) && shares(b.of, x.of);
  if (straight === crossed) return null;
  return straight ? [x.parts, y.parts] : [y.parts, x.parts];
}

const shares = (one: string, other: string): boolean =>
  one.split(" ").some((word) => other.split(" ").includes(word));

const sheets = ({ entry }: Sight): string[] => [
  ...(entry.context.spec ? [entry.context.spec] : []),
  ...(entry.context.related ?? []).map((one) => one.text),
];
