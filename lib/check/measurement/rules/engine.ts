import { compressionRatio, sweptVolume } from "#lib/reference/index.ts";
import { near, numberIn, plain, sayIn, termNumber } from "../figures.ts";
import { type EntryRule, firstOf, type Remark } from "../rule.ts";
import { relatedFacts, type Sight } from "../sight.ts";

/** Swept volume, compression ratio and ring gaps from bore and stroke. */
export const engine: EntryRule = {
  id: "engine-mismatch",
  title: "Bore, stroke and what follows from them",
  explanation:
    "Bore and stroke give the swept volume; with the volume above the piston they give the compression ratio by geometry. A ring's gap is a few thousandths of its bore: that is guidance only, and a figure far from it is asked about, since a decimal point is the likeliest reason.",
  source: "arithmetic for volumes; ring gap: common practice, no source",
  check: (sight) => firstOf(sight, swept, compression, ringGap, clearances, pumpWork),
  examples: [
    {
      says: "612 cc",
      entry: {
        text: "612 cc",
        what: "swept volume",
        context: {
          related: [
            { what: "bore", text: "3.25 in" },
            { what: "stroke", text: "4.5 in" },
          ],
        },
      },
      finds: 0,
    },
    {
      says: "not 61",
      entry: {
        text: "61 cc",
        what: "swept volume",
        context: {
          related: [
            { what: "bore", text: "3.25 in" },
            { what: "stroke", text: "4.5 in" },
          ],
        },
      },
      finds: 1,
    },
    {
      says: "a ring gap of a tenth of an inch",
      entry: {
        text: "0.12 in",
        what: "ring end gap",
        context: { related: [{ what: "bore", text: "3 in" }] },
      },
      finds: 1,
    },
    {
      says: "a usual ring gap",
      entry: {
        text: "0.012 in",
        what: "ring end gap",
        context: { related: [{ what: "bore", text: "3 in" }] },
      },
      finds: 0,
    },
    {
      says: "6 to 1 from 300 and 60 cc",
      entry: {
        text: "6:1",
        what: "compression ratio",
        context: {
          related: [
            { what: "swept volume", text: "300 cc" },
            { what: "combustion chamber", text: "60 cc" },
          ],
        },
      },
      finds: 0,
    },
  ],
};

const length = (sight: Sight, name: RegExp, not = /clearance|limit|spec|gap|wear|gauge|instrument/) =>
  sight.facts.find(
    (fact) =>
      fact.dimension === "length" && name.test(fact.label) && !not.test(fact.name) && !fact.quantity.high,
  );

function cylinders(sight: Sight): number {
  const fact = relatedFacts(sight).find(
    (one) => /\bcylinders?\b/.test(one.label) && (one.dimension === "count" || one.dimension === "number"),
  );
  const word =
    /\b(single|twin|two|three|four|six|1|2|3|4|6)[- ]?cyl/.exec(sight.all)?.[1] ??
    (/\btwin\b/.test(sight.all) ? "twin" : "single");
  return fact?.si ?? { single: 1, twin: 2 }[word] ?? numberIn(word);
}

function swept(sight: Sight): Remark[] {
  const volume = sight.facts.find(
    (fact) =>
      fact.dimension === "volume" &&
      /\b(?:swept|displacement|capacity|engine|cubic|cc|size)\b/.test(fact.name) &&
      !/oil|sump|tank|fuel|water|chamber|clearance/.test(fact.name),
  );
  if (!volume) return [];
  const [bore, stroke] = [length(sight, /\bbore\b/), length(sight, /\bstroke\b/)];
  if (!bore || !stroke || bore === stroke) return [];
  const one = sweptVolume(bore.si, stroke.si);
  const count = cylinders(sight);
  if (
    [one * count, one].some((should) => near(should, volume.si, 0.03)) ||
    (/\bdouble[- ]acting|steam|pump\b/.test(sight.all) && near(2 * one, volume.si, 0.06))
  )
    return [];
  const should = sayIn(one * count, volume.quantity);
  return [
    {
      severity: "wrong",
      found: `${volume.name} ${volume.raw}, bore ${bore.raw}, stroke ${stroke.raw}.`,
      expected: `${should}${count > 1 ? ` from ${count} cylinders` : ""}.`,
      meant: `${should}?`,
    },
  ];
}

function compression(sight: Sight): Remark[] {
  const ratio = sight.facts.find(
    (fact) =>
      (fact.dimension === "ratio" || fact.dimension === "number") &&
      /\bcompression ratio\b|\bc\.?r\.?\b/.test(fact.name),
  );
  if (!ratio) return [];
  if (
    ratio.from === "text" &&
    ratio.quantity.terms?.length === 2 &&
    Number(ratio.quantity.terms[0]) < Number(ratio.quantity.terms[1])
  )
    return [
      {
        severity: "wrong",
        found: `${ratio.raw} as a compression ratio.`,
        expected: "The larger volume first.",
        meant: `${ratio.quantity.terms[1]}:${ratio.quantity.terms[0]}?`,
      },
    ];
  const terms = ratio.quantity.terms?.map(termNumber);
  const said = terms?.length === 2 ? (terms[0] ?? 0) / (terms[1] ?? 1) : ratio.quantity.value.number;
  const volumes = sight.facts.filter((fact) => fact.dimension === "volume");
  const sweep =
    volumes.find((fact) => /\b(?:swept|displacement|capacity|cylinder volume)\b/.test(fact.name))?.si ??
    sweptBy(sight);
  const clear = volumes
    .filter(
      (fact) =>
        /\b(?:chamber|clearance|head|unswept|tdc|gasket|above)\b/.test(fact.name) &&
        !/\bswept volume\b/.test(fact.name),
    )
    .reduce((sum, fact) => sum + fact.si, 0);
  if (sweep === null || clear <= 0)
    return said > 26 || said < 1.5
      ? [
          {
            severity: "doubtful",
            found: `${ratio.raw} as a compression ratio.`,
            expected: "3:1 to 23:1.",
            source: "common practice, no source",
          },
        ]
      : [];
  const should = compressionRatio(sweep, clear);
  if (near(said, should, 0.04)) return [];
  return [
    {
      severity: near(said, sweep / clear, 0.03) ? "doubtful" : "wrong",
      found: `${ratio.raw}, where the volumes give ${plain(should, 3)}:1.`,
      expected: `${plain(should, 3)}:1, (swept + clearance) / clearance.`,
      meant: `${plain(should, 3)}:1?`,
    },
  ];
}

function sweptBy(sight: Sight): number | null {
  const [bore, stroke] = [length(sight, /\bbore\b/), length(sight, /\bstroke\b/)];
  return bore && stroke && bore !== stroke ? sweptVolume(bore.si, stroke.si) : null;
}

function ringGap(sight: Sight): Remark[] {
  const { main, what } = sight;
  if (main?.dimension !== "length" || !/\bring\b.{0,18}\bgap\b|\bgap\b.{0,12}\bring\b/.test(what)) return [];
  const bore = length(
    sight,
    /\bbore\b|\bcylinder\b|\bpiston (?:dia|diameter|size)\b/,
    /gap|limit|clearance|wear/,
  );
  if (!bore || bore === main) return [];
  const share = main.si / bore.si;
  if (share < 0.014 && share > 0.0009) return [];
  return [
    {
      severity: "doubtful",
      found: `${main.raw} for a bore of ${bore.raw}.`,
      expected: `${sayIn(0.003 * bore.si, main.quantity, 2)} to ${sayIn(0.0045 * bore.si, main.quantity, 2)} (guidance).`,
      meant: `${sayIn(main.si / 10 ** Math.round(Math.log10(share / 0.0037)), main.quantity, 3)}?`,
      source: "common practice, no source: 0.003 to 0.0045 of the bore",
    },
  ];
}

/** Running clearances as a share of the size: guidance, and asked about only far from it. */
function clearances(sight: Sight): Remark[] {
  const { main, what } = sight;
  if (
    main?.dimension !== "length" ||
    main.si <= 0 ||
    !/\bclearance\b/.test(what) ||
    !/\b(?:piston|journal|bearing|bush|pin|shaft|big[- ]end|small[- ]end|main|spindle|stem|guide|crank|gudgeon|pivot)\b/.test(
      `${what} ${sight.part}`,
    ) ||
    /\b(?:valve clearance|tappet|(?<!big[- ])(?<!small[- ])end clearance|side|deck|head|squish|piston to (?:valve|head))\b/.test(
      what,
    )
  )
    return [];
  const size = relatedFacts(sight).find(
    (fact) =>
      fact.dimension === "length" &&
      /\b(?:bore|journal|shaft|pin|diameter|dia|piston|crankpin|spindle|stem|size|guide|bush)\b/.test(
        fact.name,
      ) &&
      !/clearance|gap|limit|length|spec|wear/.test(fact.name),
  );
  if (!size) return [];
  const share = main.si / size.si;
  if (share <= 0.02 && share >= 0.00008) return [];
  return [
    {
      severity: "doubtful",
      found: `${main.raw} of clearance on ${size.raw}.`,
      expected: `${sayIn(0.0007 * size.si, main.quantity, 2)} to ${sayIn(0.0025 * size.si, main.quantity, 2)} (guidance).`,
      meant: `${sayIn(main.si / 10 ** Math.round(Math.log10(share / 0.0013)), main.quantity, 3)}?`,
      source: "common practice, no source",
    },
  ];
}

/** Force, pressure and area; force, deflection and rate of a spring. */
function pumpWork(sight: Sight): Remark[] {
  const by = (dimension: string, name?: RegExp) =>
    sight.facts.find(
      (fact) =>
        fact.dimension === dimension &&
        fact.from !== "limit" &&
        fact.from !== "spec" &&
        (name === undefined || name.test(fact.name)),
    );
  const rate = by("spring rate");
  if (!rate || rate.si <= 0) return [];
  const force = by("force") ?? by("mass", /\bload|weight|force\b/);
  const deflection = by(
    "length",
    /\b(?:deflection|compress(?:ed|ion)|travel|extension|deflects|moves|stretch|by)\b/,
  );
  if (!force || !deflection || deflection.si <= 0) return [];
  const newtons = force.dimension === "mass" ? force.si * 9.80665 : force.si;
  if (near(newtons, rate.si * deflection.si, 0.08)) return [];
  const should = newtons / deflection.si;
  return [
    {
      severity: "wrong",
      found: `${rate.name} ${rate.raw}, ${force.name} ${force.raw}, ${deflection.name} ${deflection.raw}.`,
      expected: `${rate.name}: ${sayIn(should, rate.quantity, 3)}.`,
      meant: `${sayIn(should, rate.quantity, 3)}?`,
    },
  ];
}
