import { near } from "../figures.ts";
import { productNames } from "../product-names.ts";
import { type NamedValue, namedValues } from "../relation.ts";
import { type EntryRule, firstOf, type Remark } from "../rule.ts";
import type { Fact, Sight } from "../sight.ts";

/** Sizes named in the text that stand the other way about in what is said beside it. */
export const namedElsewhere: EntryRule = {
  id: "order-against-context",
  title: "The other one's figure",
  explanation:
    "A size that is named twice has one value. Where the figure of one name stands at another name of the same text, the two were written in the wrong order.",
  source: "arithmetic",
  check: (sight) => firstOf(sight, exchanged, screw),
  examples: [
    {
      says: "bore and stroke against the specification",
      entry: {
        text: "110 x 85 mm (bore x stroke)",
        what: "cylinder",
        context: { spec: "bore 85 mm, stroke 110 mm" },
      },
      finds: 1,
    },
    {
      says: "as specified",
      entry: {
        text: "85 x 110 mm (bore x stroke)",
        what: "cylinder",
        context: { spec: "bore 85 mm, stroke 110 mm" },
      },
      finds: 0,
    },
    {
      says: "one of them measured",
      entry: {
        text: "50 x 8 (power x objective)",
        what: "finder, engraved",
        context: { related: [{ what: "objective clear diameter", text: "50 mm" }] },
      },
      finds: 1,
    },
    {
      says: "a screw as thick as it should be long",
      entry: {
        text: "M80 x 12",
        what: "head bolt",
        context: { spec: "diameter 12 mm, length 80 mm" },
      },
      finds: 1,
    },
    {
      says: "a housing's bore is no seal's",
      entry: {
        text: "20 x 42 x 12 mm (bore x OD x width)",
        what: "bearing",
        context: { related: [{ what: "housing bore", text: "42 mm" }] },
      },
      finds: 0,
    },
  ],
};

function exchanged(sight: Sight): Remark[] {
  const own = namesInText(sight);
  if (own.length < 2) return [];
  const others = namedValues(sight).filter(({ fact }) => fact.from === "related" || fact.from === "spec");
  for (const one of own)
    for (const told of others) {
      if (!sameThing(one.name, told.name, sight) || equal(one.fact, told.fact)) continue;
      const taker = own.find(
        (other) => other !== one && other.name !== one.name && equal(other.fact, told.fact),
      );
      if (taker)
        return [
          {
            severity: "wrong",
            found: `“${sight.entry.text}”, where ${told.fact.from === "spec" ? `“${told.fact.raw}” is specified` : `${told.fact.name} is ${told.fact.raw}`}.`,
            expected: `The figure of the ${taker.name} is that of the ${one.name}.`,
            meant: "the two changed places?",
          },
        ];
    }
  return [];
}

function namesInText(sight: Sight): NamedValue[] {
  const own = sight.facts.filter((fact) => fact.from === "text");
  const names = productNames(sight);
  return own
    .map((fact, i) => ({
      fact,
      name: (names?.[i] ?? fact.label.slice(fact.name.length)).trim().toLowerCase(),
    }))
    .filter((one) => one.name !== "");
}

/** One value: as figures where one of the two has no unit. */
function equal(one: Fact, other: Fact): boolean {
  if (one.quantity.high || other.quantity.high) return false;
  if (one.dimension === other.dimension) return near(one.si, other.si, 0.004);
  const bare = [one, other].some((fact) => fact.dimension === "number");
  return bare && near(one.quantity.value.number, other.quantity.value.number, 0.004);
}

const idle = new Set(
  "diameter dia size the of its a measured nominal actual clear overall free stated marked given by in and gauge caliper micrometer rule mm".split(
    " ",
  ),
);
const alike: Record<string, string> = {
  od: "outside",
  outer: "outside",
  id: "inside",
  bore: "inside",
  inner: "inside",
  wide: "width",
  long: "length",
  high: "height",
  thick: "thickness",
  deep: "depth",
};
const wordsOf = (name: string): string[] =>
  (name.replace(/\./g, "").match(/[a-z]+/g) ?? [])
    .filter((word) => !idle.has(word))
    .map((word) => alike[word] ?? word);

/** The same name, but for what the thing itself is called. */
function sameThing(name: string, told: string, { what, part }: Sight): boolean {
  const [one, other] = [wordsOf(name), wordsOf(told)];
  const about = new Set(wordsOf(`${what} ${part}`));
  return (
    one.length > 0 &&
    one.every((word) => other.includes(word)) &&
    other.every((word) => one.includes(word) || about.has(word))
  );
}

/** "M80 x 12" where the bolt is 12 mm thick, or 80 mm long. */
function screw(sight: Sight): Remark[] {
  const thread = sight.named.find((one) => one.from === "text")?.designation;
  if (thread?.type !== "thread" || thread.system !== "ISO metric" || !thread.length) return [];
  const [across, along] = [Number(thread.diameter), thread.length.value.number];
  const sizes = namedValues(sight).filter(({ fact }) => fact.dimension === "length" && fact.from !== "text");
  const told = (name: RegExp, mm: number) =>
    sizes.some((one) => name.test(one.name) && near(one.fact.si * 1000, mm, 0.02));
  if (across === along || told(thick, across) || told(long, along)) return [];
  if (!told(thick, along) && !told(long, across)) return [];
  return [
    {
      severity: "wrong",
      found: `“${sight.entry.text}”: ${across} mm thick and ${along} mm long.`,
      expected: `M${along} x ${across}.`,
      meant: `M${along} x ${across}?`,
    },
  ];
}

const thick = /\b(?:dia(?:meter)?|thread|shank|thick\w*|hole|tapped)\b/;
const long = /\b(?:length|long|under (?:the )?head)\b/;
