import { near, plain, sayIn } from "../figures.ts";
import type { EntryRule, Remark } from "../rule.ts";
import { type Fact, relatedFacts, type Sight } from "../sight.ts";

/** Speeds, teeth and pulleys that do not belong together. */
export const gears: EntryRule = {
  id: "ratio-mismatch",
  title: "Teeth, pulleys and speeds",
  explanation:
    "A pair of gears or pulleys turns inversely as its teeth or diameters: the smaller one goes faster. A worm turns its wheel by one tooth for each start. A ratio that the teeth do not give was counted wrongly or turned about.",
  source: "arithmetic",
  check: (sight) =>
    !concerns(sight)
      ? []
      : [
          ...pairOf(sight),
          ...centres(sight),
          ...pitchCircle(sight),
          ...motor(sight),
          ...speedsOf(sight),
          ...halfSpeed(sight),
          ...camTeeth(sight),
          ...beats(sight),
        ].slice(0, 1),
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
    {
      says: "a centre distance is half the teeth by the module",
      entry: {
        text: "80 mm",
        what: "centre distance",
        context: {
          related: [
            { what: "pinion", text: "20 teeth" },
            { what: "wheel", text: "60 teeth" },
            { what: "module", text: "2 mm" },
          ],
        },
      },
      finds: 0,
    },
    {
      says: "four poles at 50 Hz cannot turn 2900",
      entry: {
        text: "2900 rpm",
        what: "motor speed",
        context: {
          related: [
            { what: "poles", text: "4" },
            { what: "supply", text: "50 Hz" },
          ],
        },
      },
      finds: 1,
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

const driverName =
  /\b(?:driver|driving|drive|motor|engine|input|crank(?:shaft)?|pinion|worm|primary|prime mover|first|source|headstock|spindle gear|hand ?wheel|mandrel|great wheel|chainwheel|chainring|pedal|front|line ?shaft|main ?shaft|stud|from|flywheel|treadle|lay)\b/;
const drivenName =
  /\b(?:driven|output|counter ?shaft|wheel|lead ?screw|secondary|spindle|machine|final|pump|fan|dynamo|generator|alternator|cam(?:shaft)?|magneto|rear|sprocket|hub|blower|second|saw|lathe|mill|drill|to|feed|crown|balance|hour|last|lay ?shaft|escape|drum|load|table|compressor|governor|grinder|gearbox|saw bench|thresher|mixer|chopper|bevel|shaft)\b/;

interface Wheel {
  fact: Fact;
  role: "driver" | "driven";
}

/** The driver and the driven wheel by teeth or by diameter. */
function wheelsOf(facts: Fact[], dimension: "count" | "length"): { driver: Fact; driven: Fact } | null {
  const isWheel = (fact: Fact) =>
    dimension === "count"
      ? isTeeth(fact)
      : fact.dimension === "length" &&
        /\b(?:pulley|sheave|wheel|drum|flywheel|driver|driven|roller|friction|disc|cone|step)\b/.test(
          fact.name,
        ) &&
        !/\b(?:width|face|bore|length|centre|center|thick|shaft dia|wheel ?base)\b/.test(fact.name);
  const wheels = facts.filter(isWheel);
  const explicitDriver = wheels.find(
    (fact) =>
      /\b(?:driver|driving|input|motor|engine|pinion|worm(?! ?wheel))\b/.test(fact.name) &&
      !/\bdriven\b/.test(fact.name),
  );
  const explicitDriven = wheels.find((fact) => /\b(?:driven|output)\b/.test(fact.name));
  const driver =
    explicitDriver ?? wheels.find((fact) => fact !== explicitDriven && roleOf(fact.name) === "driver");
  const driven =
    explicitDriven ??
    wheels.find((fact) => fact !== driver && roleOf(fact.name) === "driven") ??
    (wheels.length === 2 ? wheels.find((fact) => fact !== driver) : undefined);
  return wheels.length === 2 && driver && driven && driver !== driven && driver.si > 0 && driven.si > 0
    ? { driver, driven }
    : null;
}

const isTeeth = (fact: Fact): boolean =>
  (fact.dimension === "count" &&
    /tooth|teeth|start|leaf|leaves|t\b/.test(
      `${fact.quantity.unit} ${fact.label} ${fact.raw.toLowerCase()}`,
    )) ||
  (fact.dimension === "number" &&
    /\b(?:teeth|tooth|gear|pinion|wheel|sprocket|worm|starts?|leaves|driver|driven|change ?wheel|chainwheel|lantern|stud|lead ?screw gear|mandrel)\b/.test(
      `${fact.name}`,
    ) &&
    !fact.quantity.terms &&
    !/\b(?:module|dp|diametral|pitch|ratio)\b/.test(fact.name));

function roleOf(name: string): Wheel["role"] | null {
  if (/\bdriven\b/.test(name)) return "driven";
  if (
    /\b(?:driver|driving|motor|engine|input|pinion|worm(?! wheel))\b/.test(name) &&
    !/\bworm ?wheel\b/.test(name)
  )
    return "driver";
  if (
    drivenName.test(name) &&
    !/\bchain ?wheel|great wheel|flywheel|hand ?wheel|motor|engine|front|line ?shaft|stud|headstock\b/.test(
      name,
    )
  )
    return "driven";
  return driverName.test(name) ? "driver" : drivenName.test(name) ? "driven" : null;
}

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
    /\bstarts?\b/.test(`${driver.raw} ${driver.name}`.toLowerCase()) || driver.dimension === driven.dimension;
  if (!starts) return [];
  const ratio = driven.si / driver.si;
  const words = `${driver.name} ${driver.raw}, ${driven.name} ${driven.raw}`;
  const speeds = values.filter((fact) => fact.dimension === "rotational speed" && fact.si > 0);
  if (speeds.length === 2) return speedPair(speeds, ratio, words, wheels);
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

const isRatio = (fact: Fact | null, name: string): boolean =>
  fact !== null &&
  (fact.quantity.terms !== undefined ||
    fact.dimension === "ratio" ||
    (fact.dimension === "number" && /\bratio|reduction\b/.test(name)));

/** "Single start", "two-start": a count in words. */
function startsInWords(sight: Sight): Fact[] {
  const [wheel] = relatedFacts(sight).filter(isTeeth);
  const words = (sight.entry.context.related ?? []).find((one) =>
    /\b(?:single|one|two|double|three|twin|four)[- ]start\b/i.test(`${one.text} ${one.what}`),
  );
  if (!wheel || !words || /\d/.test(words.text)) return [];
  const count = /\b(?:two|double|twin)\b/i.test(`${words.text} ${words.what}`)
    ? 2
    : /three/i.test(words.text)
      ? 3
      : /four/i.test(words.text)
        ? 4
        : 1;
  return [{ ...wheel, name: "worm", label: "worm starts", raw: words.text, si: count }];
}

const termsOf = ({ quantity }: Fact): number | null => {
  const [a = "0", b = "1"] = quantity.terms ?? [];
  const value = (text: string): number => {
    const [over = "0", under = "1"] = text.split("/");
    return Number(over) / Number(under);
  };
  return value(b) === 0 ? null : value(a) / value(b);
};

function speedPair(
  speeds: Fact[],
  ratio: number,
  words: string,
  wheels: { driver: Fact; driven: Fact },
): Remark[] {
  const driven =
    speeds.find((fact) => isOf(fact, wheels.driven, wheels.driver)) ??
    speeds.find((fact) => roleOf(fact.name) === "driven" && !/\b(?:motor|engine)\b/.test(fact.name)) ??
    speeds.find((fact) => roleOf(fact.name) !== "driver");
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

/** A speed called after the one wheel and not after the other: "lineshaft speed", "lineshaft pulley". */
function isOf(speed: Fact, wheel: Fact, other: Fact): boolean {
  const called = (speed.name.match(/[a-z]{3,}/g) ?? []).filter(
    (word) => !/^(?:speed|the|shaft|rpm)$/.test(word),
  );
  return (
    called.some((word) => wheel.name.includes(word)) && !called.some((word) => other.name.includes(word))
  );
}

/** "Turns 3 times as fast", "half the speed": the driven wheel's speed over the driver's. */
function faster(text: string, { driver, driven }: { driver: Fact; driven: Fact }): number | null {
  const words: Record<string, number> = {
    twice: 2,
    double: 2,
    doubles: 2,
    doubled: 2,
    thrice: 3,
    triples: 3,
    trebles: 3,
    half: 0.5,
    third: 1 / 3,
    quarter: 0.25,
    fifth: 0.2,
    sixth: 1 / 6,
    tenth: 0.1,
  };
  const numbers: Record<string, number> = {
    two: 2,
    three: 3,
    four: 4,
    five: 5,
    six: 6,
    eight: 8,
    ten: 10,
    twelve: 12,
  };
  const [head = ""] = text.split(/\bturns?\b|\bruns?\b|\brotates?\b|\bgoes\b|\bspins?\b|\bis\b/);
  const names = (name: string, other: string) =>
    (name.match(/[a-z]{3,}/g) ?? []).filter(
      (word) => !other.includes(word) && !/^(?:driven|driver|driving|pulley|wheel|gear|teeth)$/.test(word),
    );
  const isDriven =
    names(driven.name, driver.name).some((word) => head.includes(word)) || /\b(?:driven|output)\b/.test(head);
  const isDriver = names(driver.name, driven.name).some((word) => head.includes(word));
  const subject = isDriven
    ? false
    : isDriver
      ? true
      : /\b(?:driver|motor|engine|pinion|input|crank(?:shaft)?)\b/.exec(head) !== null &&
        !/\bdriven|output\b/.test(text);
  const many =
    /(\d+(?:\.\d+)?|two|three|four|five|six|eight|ten|twelve) ?(?:times|x|turns|revolutions|revs)/.exec(text);
  const count = many
    ? (numbers[many[1] ?? ""] ?? Number(many[1]))
    : words[/\b(twice|doubles?|doubled|thrice|triples|trebles)\b/.exec(text)?.[1] ?? ""];
  const part = /\b(?:1\/(\d+)|(?:a |one[- ])?(half|third|quarter|fifth|sixth|tenth))\b/.exec(
    text.replace(/\bhalve[sd]\b/, "half"),
  );
  const fast =
    /\bfor (?:each|every|one|a)\b|\bfast(?:er)?|speed(?:s)? up|steps? up|quicker|\bspeed\b|as quick/.test(
      text,
    );
  const slow = /\bslow(?:er)?|slows|reduced|steps? down/.test(text);
  let value: number | null = null;
  if (part && (fast || slow)) value = part[1] ? 1 / Number(part[1]) : (words[part[2] ?? ""] ?? null);
  else if (count && slow) value = 1 / count;
  else if (count && fast) value = count;
  else if (/\bfaster\b|speeds? up|steps? up/.test(text)) value = Number.POSITIVE_INFINITY;
  else if (/\bslower\b|slows? down|steps? down/.test(text)) value = 0;
  if (value === null) return null;
  if (subject) return value === 0 ? Number.POSITIVE_INFINITY : 1 / value;
  return value;
}

function toldApart(told: number, ratio: number, words: string): Remark[] {
  const speed = 1 / ratio;
  const agrees =
    told === 0 ? speed < 1 : told === Number.POSITIVE_INFINITY ? speed > 1 : near(told, speed, 0.05);
  if (agrees) return [];
  return [
    {
      severity: "wrong",
      found: `${words}: the driven one is said to turn ${told === 0 ? "slower" : told === Number.POSITIVE_INFINITY ? "faster" : `${plain(told, 3)} times as fast`}.`,
      expected: `It turns ${plain(speed, 3)} times as fast as the driver.`,
      meant: near(told, ratio, 0.05) ? "the ratio turned about?" : `${plain(speed, 3)} times?`,
    },
  ];
}

/** Module or diametral pitch, in mm. */
function moduleOf(sight: Sight): number | null {
  const values = [...relatedFacts(sight), ...sight.facts.filter((fact) => fact.from === "spec")];
  const module = values.find(
    (fact) =>
      /\bmodule\b|\bmod\b/.test(fact.label) && (fact.dimension === "number" || fact.dimension === "length"),
  );
  if (module) return module.dimension === "length" ? module.si * 1000 : module.si;
  const dp = values.find(
    (fact) =>
      /\bdiametral pitch\b|\bdp\b|\bd\.p\.?/.test(`${fact.label} ${fact.raw.toLowerCase()}`) &&
      fact.dimension === "number",
  );
  if (dp && dp.si > 0) return 25.4 / dp.si;
  const written = /\b(?:module|mod)\.? ?(\d+(?:\.\d+)?)|\bm ?= ?(\d+(?:\.\d+)?)/.exec(sight.all);
  if (written) return Number(written[1] ?? written[2]);
  const pitch = /\b(\d{1,2}) ?d\.?p\b|\bd\.?p\.? ?(\d{1,2})\b/.exec(sight.all);
  return pitch ? 25.4 / Number(pitch[1] ?? pitch[2]) : null;
}

function centres(sight: Sight): Remark[] {
  const { main, what } = sight;
  if (
    main?.dimension !== "length" ||
    !/\b(?:centre|center|centres|centers) ?(?:distance|to centre|to center|spacing)?\b/.test(what)
  )
    return [];
  const module = moduleOf(sight);
  const teeth = relatedFacts(sight).filter(isTeeth);
  const [a, b] = teeth;
  if (module !== null && a && b && teeth.length === 2)
    return lengthOff(main, (module * (a.si + b.si)) / 2, "half the teeth of both, by the module");
  const circles = relatedFacts(sight).filter(
    (fact) =>
      fact.dimension === "length" &&
      /\bpitch (?:circle )?(?:diameter|dia)|\bpcd\b|\bpitch circle\b/.test(fact.label),
  );
  const [x, y] = circles;
  return x && y && circles.length === 2
    ? lengthOff(main, (x.si + y.si) * 500, "half of both pitch diameters")
    : [];
}

/** Pitch diameter and outside diameter of a spur gear, from teeth and module. */
function pitchCircle(sight: Sight): Remark[] {
  const { main, what } = sight;
  if (main?.dimension !== "length" || relatedFacts(sight).length === 0) return [];
  const module = moduleOf(sight);
  const teeth = relatedFacts(sight).filter(isTeeth);
  const [only] = teeth;
  if (module === null || !only || teeth.length !== 1 || /\bhelical|bevel|worm\b/.test(sight.all)) return [];
  if (/\bpitch (?:circle )?dia|\bpcd\b|\bpitch circle\b/.test(what))
    return lengthOff(main, module * only.si, "teeth by module");
  if (/\b(?:outside|outer|blank|tip|o\.?d\.?|overall) ?(?:dia)?/.test(what))
    return lengthOff(main, module * (only.si + 2), "teeth and two, by module");
  return [];
}

function lengthOff(main: Fact, mm: number, how: string): Remark[] {
  const tolerance = main.quantity.value.style.kind === "fraction" ? 0.012 : 0.008;
  if (near(main.si * 1000, mm, tolerance)) return [];
  return [
    {
      severity: "wrong",
      found: `${main.raw}.`,
      expected: `${sayIn(mm / 1000, main.quantity)}: ${how}.`,
      meant: near(main.si * 1000, mm * 2, 0.01)
        ? "the sum, not the half?"
        : `${sayIn(mm / 1000, main.quantity)}?`,
      source: "ISO 54 and ISO 1122-1 (from memory): pitch diameter is module by teeth",
    },
  ];
}

/** An alternating-current motor turns no faster than its field: 120 times the frequency over the poles. */
function motor(sight: Sight): Remark[] {
  if (!sight.facts.some((fact) => fact.dimension === "frequency")) return [];
  const speed = sight.facts.find(
    (fact) =>
      fact.dimension === "rotational speed" &&
      /\b(?:motor|speed|rpm|rated|full load|no load)\b/.test(fact.name) &&
      !/pulley|spindle|counter|output/.test(fact.name),
  );
  const hertz = sight.facts.find((fact) => fact.dimension === "frequency" && fact.si >= 15 && fact.si <= 100);
  const poles = Number(
    /\b(\d{1,2}|two|four|six|eight)[- ]?poles?\b|\bpoles? ?;? ?(\d{1,2})\b/
      .exec(sight.all)
      ?.slice(1)
      .find(Boolean)
      ?.replace("two", "2")
      .replace("four", "4")
      .replace("six", "6")
      .replace("eight", "8") ??
      sight.facts.find((fact) => /\bpoles\b/.test(fact.name))?.si ??
      Number.NaN,
  );
  if (
    !speed ||
    !hertz ||
    !(poles > 0) ||
    poles % 2 === 1 ||
    /\b(?:pairs|dc|direct current|brush|universal|series)\b/.test(sight.all)
  )
    return [];
  const field = (2 * hertz.si) / poles;
  const ratio = speed.si / field;
  if (ratio <= 1.003 && ratio >= 0.85) return [];
  return [
    {
      severity: "wrong",
      found: `${speed.raw} from ${poles} poles at ${hertz.raw}.`,
      expected: `Just below ${plain(field * 60)} rpm.`,
      meant: `${plain(field * 60 * 0.96, 3)} rpm?`,
      source: "arithmetic: 120 × frequency / poles",
    },
  ];
}

/** A four-stroke's cam turns at half the speed of its crank. */
function halfSpeed(sight: Sight): Remark[] {
  const speeds = sight.facts.filter((fact) => fact.dimension === "rotational speed");
  const cam = speeds.find((fact) => /\bcam ?shaft|\bcam\b|\bdistributor\b/.test(fact.name));
  const crank = speeds.find((fact) => fact !== cam && /\bcrank ?(?:shaft)?|\bengine\b/.test(fact.name));
  if (
    !cam ||
    !crank ||
    /\btwo[- ]stroke|2-stroke|two cycle\b/.test(sight.all) ||
    near(cam.si * 2, crank.si, 0.05)
  )
    return [];
  return [
    {
      severity: "wrong",
      found: `${cam.name} ${cam.raw}, ${crank.name} ${crank.raw}.`,
      expected: `Half of the crank's: ${sayIn(crank.si / 2, cam.quantity)} (four-stroke).`,
      meant: near(cam.si, crank.si * 2, 0.05)
        ? "the ratio turned about?"
        : `${sayIn(crank.si / 2, cam.quantity)}?`,
    },
  ];
}

/** A four-stroke's cam wheel has twice the teeth of the crank's. */
function camTeeth(sight: Sight): Remark[] {
  const wheels = sight.facts.filter(isTeeth);
  const cam = wheels.find((fact) => /\bcam(?:shaft)?\b/.test(fact.name));
  const crank = wheels.find((fact) => fact !== cam && /\bcrank(?:shaft)?\b/.test(fact.name));
  const twoStroke = /\btwo[- ]stroke|2-stroke|two cycle|steam|idler|intermediate|half[- ]time\b/.test(
    sight.all,
  );
  if (!cam || !crank || twoStroke || near(cam.si, crank.si * 2, 0.001)) return [];
  return [
    {
      severity: /\bfour[- ]stroke|4-stroke/.test(sight.all) ? "wrong" : "doubtful",
      found: `${cam.name} ${cam.raw}, ${crank.name} ${crank.raw}.`,
      expected: `${plain(crank.si * 2)} teeth: a four-stroke's cam turns at half the speed of its crank.`,
      meant: `${plain(crank.si * 2)}?`,
    },
  ];
}

/** Beats an hour and beats a second of a clock. */
function beats(sight: Sight): Remark[] {
  if (!/\b(?:beats|vibrations|ticks|bph|vph)\b/.test(sight.all)) return [];
  const hour = Number(
    /\b(\d{1,2}[ ,]?\d{3}) ?(?:beats|vibrations|bph|vph|a\/h|vibr)\b(?! ?per second)/
      .exec(sight.all)?.[1]
      ?.replace(/[ ,]/g, "") ?? Number.NaN,
  );
  const second = Number(
    /\b(\d{1,2}(?:\.\d{1,3})?) ?(?:beats|ticks|vibrations) ?(?:per|a|\/|each) ?(?:second|s|sec)\b/.exec(
      sight.all,
    )?.[1] ?? Number.NaN,
  );
  if (!(hour > 0) || !(second > 0) || near(hour, second * 3600, 0.01)) return [];
  return [
    {
      severity: "wrong",
      found: `${hour} beats an hour and ${second} a second.`,
      expected: `${plain(hour / 3600)} a second.`,
    },
  ];
}
