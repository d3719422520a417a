import { near, plain, sayIn, termNumber } from "../figures.ts";
import { type EntryRule, firstOf, type Remark } from "../rule.ts";
import { type Fact, readOnce, relatedFacts, type Sight } from "../sight.ts";

/** Oil in petrol, and dilutions: a ratio and the volumes that it came to. */
export const mixes: EntryRule = {
  id: "mix-mismatch",
  title: "Mixes and dilutions",
  explanation:
    "A mixture of 32:1 has a thirty-second of oil. Where the ratio, the petrol and the oil are all given, two of them give the third. Written the other way about, an engine runs on oil; one to ten and one in ten are told apart by asking.",
  source: "arithmetic",
  check: (sight) => firstOf(sight, turned, volumes, written, percent),
  examples: [
    { says: "petrol to oil, 32 to 1", entry: { text: "32:1", what: "petrol to oil ratio" }, finds: 0 },
    { says: "petrol to oil, 1 to 32", entry: { text: "1:32", what: "petrol to oil ratio" }, finds: 1 },
    {
      says: "200 ml for 5 litres at 25:1",
      entry: {
        text: "200 ml",
        what: "oil to add",
        context: {
          related: [
            { what: "petrol", text: "5 l" },
            { what: "ratio", text: "25:1" },
          ],
        },
      },
      finds: 0,
    },
    {
      says: "20 ml is a tenth of it",
      entry: {
        text: "20 ml",
        what: "oil to add",
        context: {
          related: [
            { what: "petrol", text: "5 l" },
            { what: "ratio", text: "25:1" },
          ],
        },
      },
      finds: 1,
    },
    {
      says: "one part in ten, or to ten",
      entry: {
        text: "100 ml",
        what: "concentrate",
        context: {
          related: [
            { what: "water", text: "900 ml" },
            { what: "dilution", text: "1:10" },
          ],
        },
      },
      finds: 0,
    },
  ],
};

const fuel = /\b(?:petrol|gasoline|gas|fuel|pre-?mix|two[- ]stroke|2-stroke|petroil)\b/;
const liquids =
  /\b(?:petrol|gasoline|fuel|water|oil|concentrate|antifreeze|anti-freeze|coolant|thinners?|paint|acid|cleaner|degreaser|additive|soluble oil|hardener|activator|resin|glycol|lacquer|paraffin|soda|detergent|solvent|cutting fluid|etch|vinegar|molasses|catalyst)\b/;

function turned({ entry, what, main, part }: Sight): Remark[] {
  const parts = partsInWords(entry.text.toLowerCase());
  if (parts && parts.oil > parts.fuel)
    return [
      {
        severity: "doubtful",
        found: `“${entry.text}”: more oil than petrol.`,
        expected: "Many parts of petrol to one of oil.",
        meant: "turned about?",
      },
    ];
  const terms = main?.quantity.terms;
  const about = `${what} ${part} ${entry.text.toLowerCase()}`;
  if (
    !main ||
    terms?.length !== 2 ||
    !/\boil\b|\btwo[- ]stroke|pre-?mix|petroil/.test(about) ||
    !fuel.test(about) ||
    /\bcompression|gear|air\b/.test(about)
  )
    return [];
  const [a, b] = terms.map(termNumber);
  if (a === undefined || b === undefined || !(a > 0) || !(b > 0)) return [];
  const named = /\b(petrol|gasoline|fuel|gas)\b[^;]{0,12}\b(?:to|:|\/)\s?\boil\b/.test(about)
    ? "fuel first"
    : /\boil\b[^;]{0,12}(?:\bto\b|:|\/|\bin\b)\s?(?:the )?\b(?:petrol|gasoline|fuel|gas)\b/.test(about)
      ? "oil first"
      : null;
  const wrong = named === "fuel first" ? a < b : named === "oil first" ? a > b : false;
  if (wrong)
    return [
      {
        severity: "doubtful",
        found: `${main.raw}, ${named === "fuel first" ? "petrol to oil" : "oil to petrol"}.`,
        expected: "Many parts of petrol to one of oil.",
        meant: `${plain(b)}:${plain(a)}?`,
      },
    ];
  return [];
}

/** "24 parts petrol to 1 part oil", "oil 1 part, petrol 24 parts". */
function partsInWords(text: string): { oil: number; fuel: number } | null {
  const [oil, fuel] = [partsOfOil.exec(text), partsOfFuel.exec(text)];
  return oil && fuel ? { oil: Number(oil[1] ?? oil[2]), fuel: Number(fuel[1] ?? fuel[2]) } : null;
}

const partsOf = (liquid: string): RegExp =>
  new RegExp(
    `(\\d+(?:\\.\\d+)?) (?:(?:parts?|measures?) )?(?:of )?(?:the )?(?:${liquid})\\b|(?:${liquid}),?:? (\\d+(?:\\.\\d+)?) (?:parts?|measures?)`,
  );
const partsOfOil = partsOf("oil");
const partsOfFuel = partsOf("petrol|gasoline|fuel|gas");

/** "250 ml of oil to 25 l", for 50:1: both in one text. */
function written({ facts, what, decimal, all }: Sight): Remark[] {
  const volumesOf = facts.filter((fact) => fact.from === "text" && fact.dimension === "volume");
  const [a, b] = volumesOf.map((fact) => fact.si);
  if (!a || !b || volumesOf.length !== 2 || !liquids.test(all)) return [];
  const inWhat = readOnce(what, decimal);
  const ratio = [inWhat, ...(inWhat.kind === "list" ? inWhat.parts : [])]
    .flatMap((one) => ("quantities" in one ? one.quantities : []))
    .find((one) => one.terms?.length === 2);
  const share = facts.find(
    (fact) => fact.from === "text" && fact.quantity.ucum === "%" && !fact.quantity.high,
  );
  if (!ratio) return share ? writtenShare(a, b, share) : [];
  const [x = 1, y = 1] = (ratio.terms ?? []).map(termNumber);
  const many = Math.max(x, y) / Math.min(x, y);
  const found = Math.max(a, b) / Math.min(a, b);
  if (near(found, many, 0.07) || near(found, many + 1, 0.07)) return [];
  return [
    {
      severity: "wrong",
      found: `${volumesOf.map((fact) => sayIn(fact.si, fact.quantity)).join(" and ")} are ${plain(found, 3)}:1.`,
      expected: `${plain(many, 3)}:1, as it is called.`,
    },
  ];
}

/** "4 l of antifreeze in 10 l, 40 %". */
function writtenShare(a: number, b: number, share: Fact): Remark[] {
  const [small, large] = [Math.min(a, b), Math.max(a, b)];
  const told = share.si;
  if ([small / large, small / (small + large), large / (small + large)].some((one) => near(one, told, 0.1)))
    return [];
  return [
    {
      severity: "wrong",
      found: `${share.raw}: the volumes give ${plain((100 * small) / large, 2)} %.`,
      expected: `${plain((100 * small) / large, 2)} %.`,
    },
  ];
}

/** Two liquids and the ratio or the share that they make. */
function volumes(sight: Sight): Remark[] {
  const facts = sight.facts.filter(
    (fact) => fact.from !== "limit" && (fact.dimension === "volume" || fact.dimension === "mass"),
  );
  if (facts.length < 2) return [];
  const ratio = sight.facts.find(
    (fact) =>
      fact.quantity.terms?.length === 2 &&
      !/\bcompression|gear\b/.test(fact.label) &&
      (fact.dimension === "ratio" || fact.dimension === "number"),
  );
  if (!ratio || !liquids.test(sight.all)) return [];
  const [a = 0, b = 1] = (ratio.quantity.terms ?? []).map(termNumber);
  const many = Math.max(a, b) / Math.min(a, b);
  if (!Number.isFinite(many)) return [];
  const minor = facts.find((fact) => isMinor(fact.name, sight));
  const major = facts.find(
    (fact) =>
      fact !== minor &&
      fact.dimension === minor?.dimension &&
      /\b(?:petrol|gasoline|fuel|water|total|paint|resin|tank|mixture|mix|made up|bucket|base|lacquer|bath|batch|litres|gallon)\b/.test(
        fact.name,
      ),
  );
  if (!minor || !major || minor.si <= 0 || major.si <= 0) return [];
  const total =
    /\b(?:total|mixture|mix(?:ed)?|made up|tank|bath|batch|system|whole|capacity)\b/.test(major.name) &&
    !/\b(?:petrol|fuel|water) in\b/.test(major.name);
  const accepted = [major.si / many, major.si / (many + 1), ...(total ? [] : [major.si / (many - 1 || 1)])];
  if (accepted.some((should) => near(minor.si, should, 0.07))) return [];
  const should = major.si / (total ? many + 1 : many);
  const target = sight.main === major ? major : minor;
  const expected = target === major ? minor.si * many : should;
  return [
    {
      severity: "wrong",
      found: `${minor.name} ${minor.raw}, ${major.name} ${major.raw}, at ${ratio.raw}.`,
      expected: `${target.name}: ${sayIn(expected, target.quantity, 3)}.`,
      meant: `${sayIn(expected, target.quantity, 3)}?`,
    },
  ];
}

function isMinor(name: string, { what }: Sight): boolean {
  if (
    /\b(?:total|mixture|tank|water|petrol|fuel|gasoline|capacity|made up)\b/.test(name) &&
    !/\b(?:oil|concentrate|antifreeze|anti-freeze) (?:to|for|in|added)\b/.test(name)
  )
    return false;
  return (
    /\b(?:oil|concentrate|antifreeze|anti-freeze|coolant|hardener|activator|acid|cleaner|degreaser|additive|glycol|soda|thinners?|detergent|catalyst)\b/.test(
      name,
    ) ||
    (name === what && /\b(?:to add|dose|added)\b/.test(name))
  );
}

/** A share in per cent of a volume. */
function percent(sight: Sight): Remark[] {
  const { facts } = sight;
  const share = facts.find(
    (fact) =>
      fact.quantity.ucum === "%" &&
      /\b(?:strength|concentration|mix|share|solution|antifreeze|coolant|dilution|dose|percent|acid|content|of oil)\b/.test(
        `${fact.label} ${fact.raw.toLowerCase()}`,
      ),
  );
  if (
    facts.some(
      (fact) =>
        fact.quantity.ucum === "%" &&
        fact.from === "text" &&
        (fact.quantity.high ?? fact.quantity.value).number > 100 &&
        /\b(?:strength|concentration|mix|solution|antifreeze|coolant|dilution|humidity|efficiency|charge|state of charge|purity|engagement|lead content|content|thread)\b/.test(
          fact.label,
        ),
    )
  )
    return [
      {
        severity: "wrong",
        found: `“${sight.entry.text}” is more than the whole.`,
        expected: "100 % at the most.",
      },
    ];
  const volumesOf = facts.filter(
    (fact) => fact.dimension === "volume" && fact.from !== "limit" && fact.from !== "spec",
  );
  const minor = volumesOf.find((fact) => isMinor(fact.name, sight));
  const total = volumesOf.find(
    (fact) =>
      fact !== minor && /\b(?:total|system|capacity|mixture|batch|made up|whole|bath|tank)\b/.test(fact.name),
  );
  if (!share || !minor || !total || share.quantity.high) return [];
  const should = (total.si * share.quantity.value.number) / 100;
  if (near(minor.si, should, 0.08)) return [];
  const target: Fact = relatedFacts(sight).includes(minor) ? total : minor;
  return [
    {
      severity: "wrong",
      found: `${minor.name} ${minor.raw} in ${total.name} ${total.raw}, at ${share.raw}.`,
      expected: `${minor.name}: ${sayIn(should, minor.quantity, 3)}.`,
      ...(target === minor ? { meant: `${sayIn(should, minor.quantity, 3)}?` } : {}),
    },
  ];
}
