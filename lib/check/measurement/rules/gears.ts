import { near, plain, sayIn } from "../figures.ts";
import { type EntryRule, firstOf, type Remark } from "../rule.ts";
import { type Fact, relatedFacts, type Sight } from "../sight.ts";
import { ratioTold } from "../told-ratio.ts";
import { faster, toldApart } from "../told-speed.ts";
import { isRatio, isTeeth, roleOf, startsInWords, termsOf, wheelsOf } from "../wheels.ts";

/** Speeds, teeth and pulleys that do not belong together. */
export const gears: EntryRule = {
  id: "ratio-mismatch",
  title: "Teeth, pulleys and speeds",
  explanation:
    "A pair of gears or pulleys turns inversely as its teeth or diameters: the smaller one goes faster. A worm turns its wheel by one tooth for each start. A ratio that the teeth do not give was counted wrongly or turned about.",
  source: "arithmetic",
  check: (sight) => (!concerns(sight) ? [] : firstOf(sight, pairOf, speedsOf)),
  examples: [
    {
      says: "20 teeth drive 60 slower",
      entry: {
        text: "driven gear turns 3 times as fast",
        what: "reduction",
        context: {
          related: [
            { what: "driver", text: "20 teeth" },
            { what: "driven", text: "60 teeth" },
          ],
        },
      },
      finds: 1,
    },
    {
      says: "half the speed",
      entry: {
        text: "720 rpm",
        what: "countershaft speed",
        context: {
          related: [
            { what: "motor speed", text: "1440 rpm" },
            { what: "motor pulley", text: "4 in" },
            { what: "countershaft pulley", text: "8 in" },
          ],
        },
      },
      finds: 0,
    },
    {
      says: "twice the speed",
      entry: {
        text: "2880 rpm",
        what: "countershaft speed",
        context: {
          related: [
            { what: "motor speed", text: "1440 rpm" },
            { what: "motor pulley", text: "4 in" },
            { what: "countershaft pulley", text: "8 in" },
          ],
        },
      },
      finds: 1,
    },
    {
      says: "a worm of one start",
      entry: {
        text: "40:1",
        what: "worm ratio",
        context: {
          related: [
            { what: "worm", text: "1 start" },
            { what: "wheel", text: "40 teeth" },
          ],
        },
      },
      finds: 0,
    },
  ],
};

const kinds = ["count", "number", "ratio", "rotational speed", "frequency"];

const concerns = ({ facts, what, all }: Sight): boolean =>
  facts.some(
    (fact) => kinds.includes(fact.dimension) || /\b(?:pulley|wheel|drum|sheave)\b/.test(fact.name),
  ) ||
  /\b(?:cent(?:re|er)|pitch|beats|ticks|module|dp)\b/.test(what) ||
  /\bbeats\b/.test(all);

/** "Camshaft to crankshaft speed": the speeds of two wheels are as their teeth turned about. */
function speedsOf(sight: Sight): Remark[] {
  const { main, what } = sight;
  const named = /\b([a-z]{3,})(?: \w+)? (?:to|:) ([a-z]{3,})(?: \w+)? speeds?\b/.exec(what);
  const said = main?.quantity.terms?.length === 2 ? termsOf(main) : null;
  if (!main || !named || said === null) return [];
  const pair = wheelsOf(relatedFacts(sight), "count") ?? wheelsOf(relatedFacts(sight), "length");
  const wheels = pair ? [pair.driver, pair.driven] : relatedFacts(sight).filter(isTeeth);
  const of = (word = ""): Fact | undefined =>
    word === "input" || word === "driver"
      ? pair?.driver
      : word === "output" || word === "driven"
        ? pair?.driven
        : wheels.find((wheel) => wheel.name.slice(0, 3) === word.slice(0, 3));
  const [first, second] = [of(named[1]), of(named[2])];
  if (!first || !second || first === second) return [];
  const expected = second.si / first.si;
  if (near(said, expected, 0.03)) return [];
  return [
    {
      severity: "wrong",
      found: `${what} ${main.raw}, from ${first.name} ${first.raw}, ${second.name} ${second.raw}.`,
      expected: expected >= 1 ? `${plain(expected, 3)}:1.` : `1:${plain(1 / expected, 3)}.`,
      meant: near(said, 1 / expected, 0.03) ? "turned about?" : `${plain(expected, 3)}:1?`,
    },
  ];
}

function pairOf(sight: Sight): Remark[] {
  const { main, what } = sight;
  if (sight.facts.length < 2 && !main) return [];
  const values = [...sight.facts, ...startsInWords(sight)].filter(
    (fact) => fact.from !== "limit" && fact.from !== "fastener",
  );
  const wheels = wheelsOf(values, "count") ?? wheelsOf(values, "length");
  if (!wheels) return [];
  const { driver, driven } = wheels;
  const starts =
    /\b(?:starts?|leaves|leaf)\b/.test(`${driver.raw} ${driver.name} ${driven.raw}`.toLowerCase()) ||
    driver.dimension === driven.dimension;
  if (!starts) return [];
  const ratio = driven.si / driver.si;
  const words = `${driver.name} ${driver.raw}, ${driven.name} ${driven.raw}`;
  const speeds = values.filter((fact) => fact.dimension === "rotational speed" && fact.si > 0);
  if (speeds.length === 2) return speedPair(speeds, ratio, words, wheels);
  // Who turns how often for whom is told in full: that is asked by a rule of its own.
  if (ratioTold(sight.entry.text)) return [];
  const told = faster(sight.entry.text.toLowerCase(), wheels);
  if (told !== null) return toldApart(told, ratio, words);
  const ratioSaid = isRatio(main, what)
    ? main
    : [driver, driven].includes(main as Fact)
      ? relatedFacts(sight).find(
          (fact) => isRatio(fact, fact.name) && /\bratio|reduction|gear/.test(fact.name),
        )
      : undefined;
  if (!ratioSaid) return [];
  const said = ratioSaid.quantity.terms?.length === 2 ? termsOf(ratioSaid) : ratioSaid.si;
  const about = `${what} ${sight.entry.text.toLowerCase()} ${ratioSaid === main ? "" : `${ratioSaid.name} ${ratioSaid.raw}`}`;
  const against =
    (ratio > 1.02 && /\b(?:step|speed|gear(?:ed|ing)?)[- ]?up|overdrive|increas/.test(about)) ||
    (ratio < 0.98 && /\breduc(?:tion|es|ed)|\b(?:step|gear(?:ed|ing)?)[- ]?down/.test(about));
  if (against && said !== null)
    return [
      {
        severity: "wrong",
        found: `“${sight.entry.text}”, from ${words}.`,
        expected: `The driven one turns ${ratio > 1 ? "slower" : "faster"}, ${plain(ratio, 3)}:1.`,
        meant: "turned about?",
      },
    ];
  if (said === null || near(said, ratio, 0.03)) return [];
  const turned = near(said, 1 / ratio, 0.03);
  if (
    turned &&
    !/\b(?:reduction|step-?up|step-?down|increase|overdrive|speed-?up|slower|faster|gearing down|gearing up|geared down|geared up|driver to driven|driven to driver|driver:driven|turns|multiplication|ratio|input|worm)\b/.test(
      `${what} ${sight.entry.text.toLowerCase()}`,
    )
  )
    return [];
  if (
    turned &&
    !/\bspeeds?\b/.test(what) &&
    /\bdriver (?:to|:) ?driven\b|\bteeth\b|pinion (?:to|:) wheel|\binput (?:to|:) output\b|\bwheel to pinion\b/.test(
      `${what} ${sight.entry.text.toLowerCase()}`,
    )
  )
    return [];
  if (
    turned &&
    ratio < 1 &&
    /\bchain ?(?:wheel|ring|set)|\bpedal|\bcycle|\bbicycle/.test(sight.all) &&
    !/\breduction\b/.test(about)
  )
    return [];
  if (turned && ratio < 1 && /\bstep-?up|speed-?up|overdrive|increas/.test(sight.all)) return [];
  return [
    {
      severity: "wrong",
      found: `${ratioSaid.raw}, from ${words}.`,
      expected: `${plain(ratio, 3)}:1: the ${ratio > 1 ? "driver" : "driven one"} turns faster.`,
      meant: turned ? "turned about?" : `${plain(ratio, 3)}:1?`,
    },
  ];
}

function speedPair(
  speeds: Fact[],
  ratio: number,
  words: string,
  wheels: { driver: Fact; driven: Fact },
): Remark[] {
  const driven =
    speeds.find((fact) => isOf(fact, wheels.driven, wheels.driver)) ??
    speeds.find((fact) => roleOf(fact.name) === "driven" && !/\b(?:motor|engine)\b/.test(fact.name)) ??
    speeds.find((fact) => roleOf(fact.name) !== "driver") ??
    speeds.find((fact) => !prime.test(fact.name));
  const driver = speeds.find((fact) => fact !== driven);
  if (!driven || !driver || near(driver.si / driven.si, ratio, 0.08)) return [];
  const expected = driver.si / ratio;
  return [
    {
      severity: "wrong",
      found: `${driver.name} ${driver.raw}, ${driven.name} ${driven.raw}; ${words}.`,
      expected: `${driven.name}: ${sayIn(expected, driven.quantity)}.`,
      meant: near(driven.si, driver.si * ratio, 0.08)
        ? "the ratio turned about?"
        : `${sayIn(expected, driven.quantity)}?`,
    },
  ];
}

/** What nothing else drives. */
const prime = /\b(?:motor|engine|input|driver)\b/;

/** A speed called after the one wheel and not after the other: "lineshaft speed", "lineshaft pulley". */
function isOf(speed: Fact, wheel: Fact, other: Fact): boolean {
  const called = (speed.name.match(/[a-z]{3,}/g) ?? []).filter(
    (word) => !/^(?:speed|the|shaft|rpm)$/.test(word),
  );
  return (
    called.some((word) => wheel.name.includes(word)) && !called.some((word) => other.name.includes(word))
  );
}
