import { near, numberIn, roomOf, sayIn, stepOf } from "../figures.ts";
import { type EntryRule, firstOf, type Remark } from "../rule.ts";
import { type Fact, relatedFacts, type Sight } from "../sight.ts";

/** A stack, a total or a difference that its parts do not give. */
export const sums: EntryRule = {
  id: "sum-mismatch",
  title: "Parts and whole",
  explanation:
    "A stack is as high as its pieces, a clearance is the hole less the shaft, a wall is half of what the outside exceeds the inside. A figure that the others do not give was mistaken somewhere.",
  source: "arithmetic",
  check: (sight) => firstOf(sight, stack, alike, differenceOf, remains),
  examples: [
    { says: "adds up", entry: { text: "0.040 + 0.015 + 0.003 = 0.058 in", what: "packing" }, finds: 0 },
    {
      says: "a stack of two washers",
      entry: {
        text: "4.5 mm",
        what: "total stack",
        context: {
          related: [
            { what: "first washer", text: "1.5 mm" },
            { what: "second washer", text: "2.0 mm" },
          ],
        },
      },
      finds: 1,
    },
    {
      says: "half the difference of the diameters",
      entry: {
        text: "2 mm",
        what: "tube wall",
        context: {
          related: [
            { what: "outside diameter", text: "25 mm" },
            { what: "inside diameter", text: "21 mm" },
          ],
        },
      },
      finds: 0,
    },
    {
      says: "less than no clearance is a press fit",
      entry: {
        text: "-0.025 mm",
        what: "clearance of valve guide in head",
        context: {
          related: [
            { what: "guide OD", text: "14.025 mm" },
            { what: "hole", text: "14.000 mm" },
          ],
        },
      },
      finds: 0,
    },
    {
      says: "leaving out a 1/16 in washer under a seat lowers it by 1.59 mm",
      entry: {
        text: "3.2 mm",
        what: "seat lowered by",
        context: { related: [{ what: "washer left out from under the seat", text: "1/16 in" }] },
      },
      finds: 1,
    },
    {
      says: "three quarters less five thirty-seconds",
      entry: {
        text: "leaves 9/16 in",
        what: "plate thickness after planing",
        context: {
          related: [
            { what: "was", text: "3/4 in" },
            { what: "taken off in all", text: "5/32 in" },
          ],
        },
      },
      finds: 1,
    },
    {
      says: "are nineteen",
      entry: {
        text: "leaves 19/32 in",
        what: "plate thickness after planing",
        context: {
          related: [
            { what: "was", text: "3/4 in" },
            { what: "taken off in all", text: "5/32 in" },
          ],
        },
      },
      finds: 0,
    },
    {
      says: "a cam lifts by what its lobe stands above its base",
      entry: {
        text: "2.54 mm",
        what: "lift of the cam",
        context: {
          related: [
            { what: "base circle", text: "20.0 mm" },
            { what: "over the lobe", text: "25.4 mm" },
          ],
        },
      },
      finds: 1,
    },
    {
      says: "1.59 mm it is",
      entry: {
        text: "1.59 mm",
        what: "seat lowered by",
        context: { related: [{ what: "washer left out from under the seat", text: "1/16 in" }] },
      },
      finds: 0,
    },
  ],
};

/** "Two 30 Ω coils in parallel" are half of one. */
function alike({ main, all }: Sight): Remark[] {
  if (main?.dimension !== "resistance") return [];
  const said =
    /\b(two|three|four|five|six|[2-9]) (?:x )?(\d+(?:\.\d+)?) ?(k|m)?(?:ω|ohms?) [a-z ]{0,24}?\bin (parallel|series)\b/.exec(
      all,
    );
  if (!said) return [];
  const count = numberIn(said[1] ?? "");
  const one = Number(said[2]) * ({ k: 1e3, m: 1e6 }[said[3] ?? ""] ?? 1);
  const should = said[4] === "series" ? one * count : one / count;
  if (near(should, main.si, 0.12) || near(one, main.si, 0.001)) return [];
  return [
    {
      severity: "wrong",
      found: `${main.raw} for ${said[0]}.`,
      expected: sayIn(should, main.quantity, 3),
      meant: `${sayIn(should, main.quantity, 3)}?`,
      source: "Kirchhoff's laws",
    },
  ];
}

const wholeWords =
  /\b(?:total|in all|across (?:the (?:two|three|pair|lot|string)|all)|both|the pair|all three|overall|stack(?:ed)?|sum|altogether|combined|assembled (?:length|height|thickness|width)|complete|pack(?:ed|ing)?(?: height| thickness)?|all (?:shims|washers|spacers|pieces|together)|built up|shim pack|shims? (?:fitted|used)|end to end)\b/;

const notAPart =
  /\b(?:limit|spec(?:ified)?|allow\w*|max(?:imum)?|min(?:imum)?|target|required|diameter|o\.?d|i\.?d|bore|clearance|float|tolerance|gap|space|between|nominal|was|before|after|capacity|speed|temperature|instrument|should|wanted|fit|drained|left over|remaining|available|room|recess|method|level|each|per|number|average|mean|stroke|other|total|overall|housing|shaft|hole|count|free|nameplate|rating|rated|supply|measured|book|manual|drawing|old)\b/;

/** Kinds of value that add up. */
const adding = new Set("length mass volume resistance time count voltage capacitance".split(" "));

/** A total and the pieces of which it is made. */
function stack(sight: Sight): Remark[] {
  const { main, what } = sight;
  if (!main || sight.reading.kind === "sum" || !adding.has(main.dimension)) return [];
  const rest = relatedFacts(sight).filter(
    (fact) => fact.dimension === main.dimension || fact.dimension === "count" || fact.dimension === "number",
  );
  if (/\bparallel\b/.test(sight.all)) return parallel(sight, main);
  const same = rest.filter((fact) => fact.dimension === main.dimension);
  const all = ["mass", "count"].includes(main.dimension) && /^all\b|\ball$/.test(what);
  const mainIsWhole = (all || wholeWords.test(what)) && !/\b(?:of total|run-?out|indicator)\b/.test(what);
  const whole = mainIsWhole
    ? main
    : same.find((fact) => wholeWords.test(fact.name) || /\btotal\b/.test(fact.name));
  if (!whole || (main.dimension === "capacitance" && !/parallel/.test(sight.all))) return [];
  const parts = mainIsWhole
    ? same.filter((fact) => !notAPart.test(fact.name))
    : [main, ...same.filter((fact) => fact !== whole && !notAPart.test(fact.name))];
  const counted = times(parts, rest);
  if (counted === null || parts.length === 0 || (parts.length === 1 && counted.factor === 1)) return [];
  if (
    !mainIsWhole &&
    main.dimension !== "count" &&
    !/\b(?:piece|part|washer|shim|spacer|section|leaf|length|layer|leg|collar|gasket|first|second|resistor|bag|can|stage|cell|weight)\b/.test(
      `${what} ${sight.part}`,
    )
  )
    return [];
  const sum = counted.sum;
  const step = [whole, ...parts].reduce((most, fact) => Math.max(most, roomOf(fact)), 0);
  const fine = whole.dimension === "length" && step <= 2.6e-5;
  const byCount = whole.dimension === "count";
  if (
    (!byCount && Math.abs(sum - whole.si) <= step * (fine ? 2 : 0.51) && near(sum, whole.si, 0.1)) ||
    near(sum, whole.si, byCount ? 0 : 0.003)
  )
    return [];
  return [
    {
      severity: "wrong",
      found: `${whole.name}: ${whole.raw}; its parts (${parts.map((fact) => fact.raw).join(", ")}) give ${sayIn(sum, whole.quantity)}.`,
      expected: sayIn(sum, whole.quantity),
      meant: `${sayIn(sum, whole.quantity)}?`,
    },
  ];
}

/** One piece taken so many times. */
function times(parts: Fact[], rest: Fact[]): { sum: number; factor: number } | null {
  const sum = parts.reduce(
    (all, fact) => all + fact.si * Number(/^\s*(\d{1,2})\s*(?:x|off|×)\s/.exec(fact.raw)?.[1] ?? 1),
    0,
  );
  const count = rest.find(
    (fact) =>
      (fact.dimension === "count" || fact.dimension === "number") &&
      /\b(?:number|count|how many|quantity|pieces|washers|shims|cells|turns|off|coils|leaves|plates)\b/.test(
        fact.name,
      ),
  );
  if (!count) return { sum, factor: 1 };
  return parts.length === 1 ? { sum: sum * count.si, factor: count.si } : null;
}

function parallel(sight: Sight, main: Fact): Remark[] {
  const ohms = relatedFacts(sight).filter(
    (fact) =>
      fact.dimension === "resistance" && !/limit|spec|total|insulation|leak|each|earth/.test(fact.name),
  );
  if (main.dimension !== "resistance" || ohms.length < 2 || ohms.some((one) => one.si <= 0)) return [];
  const joined = 1 / ohms.reduce((all, one) => all + 1 / one.si, 0);
  if (near(joined, main.si, 0.06)) return [];
  return [
    {
      severity: "wrong",
      found: `${main.raw} for resistors in parallel.`,
      expected: sayIn(joined, main.quantity),
      meant: `${sayIn(joined, main.quantity)}?`,
      source: "Kirchhoff's laws",
    },
  ];
}

const outside = /\b(?:outside|outer|o\.?d\.?|external)\b/;

const inside = /\b(?:inside|inner|i\.?d\.?|bore|internal|hole)\b/;

/** Wall, clearance, interference and wear from two sizes. */
function differenceOf(sight: Sight): Remark[] {
  const { main, what } = sight;
  const lengths = relatedFacts(sight).filter(
    (fact) => fact.dimension === "length" && !/\b(?:limit|spec|allow)/.test(fact.name),
  );
  if (main?.dimension !== "length" || lengths.length === 0) return [];
  const [o, i] = [
    lengths.find((fact) => outside.test(fact.label)),
    lengths.find((fact) => inside.test(fact.label) && !outside.test(fact.label)),
  ];
  if (/\bwall\b/.test(what) && o && i)
    return compared(main, (o.si - i.si) / 2, [o, i], "half of the outside less the inside");
  if (/\b(?:lowered|lowers|raised|raises|drops?|lifted) by\b|\blower(?:ed)?\b|\bheight lost\b/.test(what)) {
    const [piece] = lengths.filter((fact) => /\b(?:washer|shim|packing|gasket|spacer)\b/.test(fact.name));
    return piece && lengths.length === 1
      ? compared(main, piece.si, [piece], "as much as was left out or put in")
      : [];
  }
  const [base, peak] = [
    lengths.find((fact) => /\b(?:base(?: circle)?|heel|across the base|back of the cam)\b/.test(fact.name)),
    lengths.find((fact) => /\b(?:lobe|nose|peak|toe|over the cam|heel to toe)\b/.test(fact.name)),
  ];
  if (/\blift\b/.test(what) && base && peak && base !== peak && !/\bradius|rocker\b/.test(sight.all))
    return compared(main, peak.si - base.si, [peak, base], "over the lobe less the base circle");
  const wear = /\bwear\b|\bworn by\b|\breduction\b|\btaken off\b|\bremoved\b|\bmetal off\b/.test(what);
  const before = lengths.find((fact) =>
    /\b(?:new|before|original|standard|as made|unworn)\b/.test(fact.name),
  );
  const after = lengths.find((fact) =>
    /\b(?:now|after|worn|measured|as found|present|finished)\b/.test(fact.name),
  );
  if (wear && before && after)
    return compared(main, Math.abs(before.si - after.si), [before, after], "the one less the other");
  const clearance =
    /\b(?:clearance|interference|play|gap|side play|nip|end float|float)\b/.test(what) &&
    !/\bradial\b/.test(what);
  const [big, small] = [
    lengths.find(
      (fact) =>
        /\b(?:bore|hole|housing|groove|slot|guide|barrel|cylinder|bush|bearing|keyway|inside|recess|ring land|space|between)\b/.test(
          fact.name,
        ) && !/\bouter|\bo\.?d\b|pin\b/.test(fact.name),
    ),
    lengths.find((fact) =>
      /\b(?:shaft|journal|pin|piston|stem|spindle|plunger|rod|key|ring (?:width|height|thickness)|crankpin|axle|bolt|outside|o\.?d\.?|slider|collars?|pivot|length over|over the|shoulders?)\b/.test(
        fact.name,
      ),
    ),
  ];
  if (
    clearance &&
    main.si > 0.25 * Math.min(...lengths.map((one) => one.si)) &&
    lengths.length === 1 &&
    small
  )
    return [
      {
        severity: "doubtful",
        found: `${what} ${main.raw}, ${small.name} ${small.raw}.`,
        expected: "A clearance that is a small part of the size it belongs to.",
        meant: `${sayIn(main.si / 10, main.quantity, 3)}?`,
        source: "common practice, no source",
      },
    ];
  if (!clearance || !big || !small || big === small || lengths.length > 3 || !near(big.si, small.si, 0.2))
    return [];
  const between = big.si - small.si;
  return compared(main, main.si < 0 ? between : Math.abs(between), [big, small], "the one less the other");
}

function compared(main: Fact, expected: number, from: Fact[], how: string, room?: number): Remark[] {
  if (main.quantity.high) return [];
  const step = room ?? Math.max(...[main, ...from].map(roomOf));
  if (Math.abs(main.si - expected) <= step * 1.01 || near(main.si, expected, 0.02)) return [];
  const half = near(main.si, expected / 2, 0.03) || near(main.si, expected * 2, 0.03);
  const should = sayIn(expected, main.quantity, 3);
  return [
    {
      severity: half ? "doubtful" : "wrong",
      found: `${main.raw}, beside ${from.map((fact) => `${fact.name} ${fact.raw}`).join(" and ")}.`,
      expected: `${should}: ${how}.`,
      meant: half ? "radius taken for diameter?" : `${should}?`,
    },
  ];
}

/** More than is left: a whole less what was taken. */
function remains(sight: Sight): Remark[] {
  const { main, what } = sight;
  const label = `${what} ${main?.label ?? ""}`;
  if (!main || !/\b(?:remain(?:s|ing)?|left(?: over)?|remainder|leaves|finished|now|after)\b/.test(label))
    return [];
  const same = relatedFacts(sight).filter((fact) => fact.dimension === main.dimension);
  const whole = same.find((fact) =>
    /\b(?:total|full|capacity|started|before|original(?:ly)?|bought|was|had|in the (?:can|tin)|at first|as found|rough)\b/.test(
      fact.name,
    ),
  );
  const taken = same.filter(
    (fact) =>
      fact !== whole &&
      /\b(?:used|poured|taken|drained|removed|cut|off|planed|skimmed|ground away|filed away|drawn off|run out)\b/.test(
        fact.name,
      ) &&
      !/\b(?:per|each|a|every) (?:pass|cut|side|end|stroke)\b|\beach\b|\bdepth of\b/.test(fact.label),
  );
  if (/\beach (?:side|end|face)|both (?:sides|faces|ends)|per (?:side|pass)/.test(sight.all)) return [];
  if (!whole || taken.length === 0) return [];
  return compared(
    main,
    taken.reduce((rest, fact) => rest - fact.si, whole.si),
    [whole, ...taken],
    "what there was less what was taken",
    main.dimension === "length" ? undefined : stepOf(main) * 2,
  );
}
