import { near, stepOf } from "../figures.ts";
import { type EntryRule, firstOf, type Remark } from "../rule.ts";
import { relatedFacts, type Sight } from "../sight.ts";

/** Two things said of one thing that cannot both be true. */
export const contradiction: EntryRule = {
  id: "contradiction",
  title: "Two statements that cannot both be true",
  explanation:
    "A sump that holds 1.8 litres and took 2.1 is not still low; a characteristic has one value at a time; what is called within its limit lies within it. One of the two statements is mistaken, or something else is wrong with the machine.",
  source: "arithmetic",
  check: (sight) => firstOf(sight, overfull, twice, saidWithin, before, more, moreThanThereAre, words),
  examples: [
    {
      says: "more than it holds, and still low",
      entry: {
        text: "2.1 l",
        what: "oil poured into the gearbox",
        context: {
          related: [
            { what: "total capacity, dry", text: "1.8 l" },
            { what: "level after filling", text: "below the plug" },
          ],
        },
      },
      finds: 1,
    },
    {
      says: "less than it holds",
      entry: {
        text: "1.7 l",
        what: "oil poured into the gearbox",
        context: {
          related: [
            { what: "total capacity, dry", text: "1.8 l" },
            { what: "level after filling", text: "at the plug" },
          ],
        },
      },
      finds: 0,
    },
    {
      says: "a shaft does not grow by wear",
      entry: {
        text: "25.10 mm",
        what: "journal diameter, worn",
        context: { related: [{ what: "journal diameter, new", text: "25.00 mm" }] },
      },
      finds: 1,
    },
    {
      says: "over the limit, and within",
      entry: {
        text: "0.05 mm",
        what: "run-out",
        context: { limit: "0.10 mm", verdict: "over the limit, to be trued" },
      },
      finds: 1,
    },
    {
      says: "one thing, two values",
      entry: {
        text: "14 tpi",
        what: "leadscrew pitch",
        context: { related: [{ what: "leadscrew pitch, second entry", text: "8 tpi" }] },
      },
      finds: 1,
    },
  ],
};

function overfull(sight: Sight): Remark[] {
  const { main, what } = sight;
  if (!main || !["volume", "mass", "charge", "count"].includes(main.dimension)) return [];
  const capacity = sight.facts.find(
    (fact) =>
      fact !== main &&
      fact.dimension === main.dimension &&
      /\b(?:capacity|holds?|volume of|total volume|full)\b/.test(fact.name) &&
      !/\bswept|engine capacity\b/.test(fact.name),
  );
  if (
    !capacity ||
    !/\b(?:pour(?:ed)?|fill(?:ed)?|added|put in|drained|took|taken|refill|top(?:ped)?|charge|oil in|water in|used|inserted|in the|came out|run in|draw)/.test(
      what,
    )
  )
    return [];
  if (main.si <= capacity.si * 1.06 + stepOf(main) * 0.5) return [];
  return [
    {
      severity: /\b(?:below|low|under|not|still|short)\b/.test(sight.remarks) ? "wrong" : "doubtful",
      found: `${main.raw}, and ${capacity.name} ${capacity.raw}${sight.remarks ? `; ${sight.remarks}` : ""}.`,
      expected: `${capacity.raw} at the most.`,
      meant: "a leak, a wrong capacity, or a slip?",
    },
  ];
}

const plainName = (name: string): string =>
  name
    .replace(/\b(?:the|a|of|measured|checked|again|repeated?|value|reading)\b/g, "")
    .replace(/[^a-z0-9]+/g, " ")
    .trim();

/** Measured a second time: it may differ a little. */
const again = /\b(?:second|third|another) (?:look|reading|measurement|measure|time|check|try)\b/;

/** The same words with another value. */
function twice(sight: Sight): Remark[] {
  const { main, what } = sight;
  if (!main || sight.reading.kind === "product") return [];
  for (const other of relatedFacts(sight)) {
    if (
      other.dimension !== main.dimension ||
      (other.quantity.role ?? "") !== (main.quantity.role ?? "") ||
      other.quantity.qualifier !== "exact" ||
      (plainName(other.name) !== plainName(what) &&
        !synonyms(other.name, sight) &&
        !(again.test(other.name) && other.name.includes(plainName(what))))
    )
      continue;
    const counted =
      main.dimension === "count" ||
      (main.dimension === "number" && Number.isInteger(main.si) && Number.isInteger(other.si));
    const room = counted ? 0 : Math.max(stepOf(main), stepOf(other)) * 1.5;
    const share = counted ? 0 : main.dimension === "length" ? 0.004 : 0.06;
    const kelvin = main.dimension === "temperature" ? 273.15 : 0;
    if (again.test(other.name) && near(main.si, other.si, 0.2)) continue;
    if (Math.abs(main.si - other.si) <= Math.max(room, share * Math.abs(other.si - kelvin))) continue;
    const stamped =
      /\b(?:stamped|engraved|marked|label|plate|book|drawing|written|card|log|notebook|note)\b/.test(
        other.name,
      );
    return [
      {
        severity: stamped ? "doubtful" : "wrong",
        found: `${what}: ${main.raw}, and ${other.name}: ${other.raw}.`,
        expected: "One value.",
      },
    ];
  }
  return [];
}

/** "Same dimension, second entry", "as written on the card": another record of the same characteristic. */
const synonyms = (name: string, { what }: Sight): boolean =>
  (/\b(?:same|second entry|elsewhere|other entry|entered (?:again|before|earlier|above)|also (?:given|entered|written|noted|recorded)|on (?:the )?(?:card|tag|label|log|sheet)|in (?:the )?(?:notes|log|notebook|same sheet)|earlier (?:note|entry)|sheet \d|page \d|later in the (?:log|notes|film)|spoken|in the (?:film|caption)s?)\b/.test(
    name,
  ) &&
    !/\bother (?:side|end|cylinder)\b/.test(name)) ||
  (/\b(?:again|repeated|stated|same|written|entered)\b/.test(name) &&
    plainName(what)
      .split(" ")
      .every((word) => name.includes(word)));

/** What the verdict says of the limit, against the figures. */
function saidWithin(sight: Sight): Remark[] {
  const { main, verdict, what } = sight;
  if (!main || verdict === "") return [];
  const limit = sight.facts.find(
    (fact) =>
      fact !== main &&
      fact.dimension === main.dimension &&
      (fact.from === "limit" || fact.from === "spec" || /\blimit|\bmax|\bmin|\bspec/.test(fact.name)),
  );
  if (!limit) return [];
  const place = `${limit.label} ${limit.raw}`.toLowerCase();
  const least = /\bmin|at least|not less/.test(place) || limit.quantity.qualifier === "at least";
  const single = limit.quantity.qualifier !== "range" && !limit.quantity.tolerance;
  const high = single && !least ? limit.si : single ? null : limit.high;
  const low = single && least ? limit.si : single ? null : limit.low;
  const inside = (high === null || main.si <= high * 0.9999) && (low === null || main.si >= low * 1.0001);
  const over =
    /\b(?:over|above|beyond|exceeds?|past|more than|out of|outside)\b (?:the |its |our )?(?:wear |service )?(?:limits?|spec\w*|max(?:imum)?|tolerance)|\b(?:under|below|less than) (?:the |its )?(?:min(?:imum)?|limit|spec\w*)\b/.test(
      verdict,
    );
  if (
    over &&
    inside &&
    (!single || least || !/\b(?:diameter|thickness|journal|length|brush|height|stem|shaft)\b/.test(what))
  )
    return [
      {
        severity: "wrong",
        found: `${main.raw}, ${limit.name === what ? "" : limit.name} ${limit.raw}: “${sight.entry.context.verdict}”.`,
        expected: "A verdict that the figures bear out.",
      },
    ];
  return [];
}

/** Wear takes metal away from a shaft and adds to a bore. */
function before(sight: Sight): Remark[] {
  const { main, what } = sight;
  if (main?.dimension !== "length" || !/\b(?:worn|now|as found|after use|wear)\b/.test(what)) return [];
  const fresh = relatedFacts(sight).find(
    (fact) =>
      fact.dimension === "length" &&
      /\b(?:new|original|unworn|as made|standard)\b/.test(fact.name) &&
      !/limit|spec|clearance/.test(fact.name),
  );
  if (!fresh || !near(fresh.si, main.si, 0.5) || /\bclearance|gap|play|float\b/.test(what)) return [];
  const bore = /\b(?:bore|hole|inside|guide|bush|housing|keyway|slot|groove|cylinder)\b/.test(what);
  const grows = main.si > fresh.si + stepOf(fresh) * 0.5 + stepOf(main) * 0.5;
  const shrinks = main.si < fresh.si - stepOf(fresh) * 0.5 - stepOf(main) * 0.5;
  const solid =
    /\b(?:shaft|journal|pin|diameter|stem|thickness|lining|brush|tooth|shoe|pad|disc|spindle|crankpin|cam|lobe|piston|tread|land)\b/.test(
      what,
    );
  if (
    /\b(?:chrome|built|plated|metal spray|sleeve|weld|lined|relined|carbon|scale|rust|swollen|deposit|bulged|stretch)/.test(
      sight.all,
    )
  )
    return [];
  if ((bore && shrinks) || (!bore && solid && grows))
    return [
      {
        severity: "doubtful",
        found: `${what} ${main.raw}, ${fresh.name} ${fresh.raw}.`,
        expected: bore ? "Wear makes a bore larger." : "Wear makes it smaller.",
      },
    ];
  return [];
}

/** "4 of 3 bolts": more than there are. */
function moreThanThereAre({ entry }: Sight): Remark[] {
  const said =
    /\b(\d{1,3}) (?:[a-z]+ ){0,2}(?:missing|broken|cracked|bad|loose|good|tight|sound|failed|stripped|worn|bent|left) (?:out )?of (?:the |its )?(\d{1,3})\b(?! ?(?:mm|in\b|cm|thou|m\b))/i.exec(
      entry.text,
    ) ??
    /\b(\d{1,3}) (?:out )?of (?:the |its )?(\d{1,3}) (?!thou|mm|in\b|cm|m\b|v\b|ohm)[a-z]{3,}/i.exec(
      entry.text,
    );
  if (!said || Number(said[1]) <= Number(said[2])) return [];
  return [{ severity: "wrong", found: `“${said[0]}”.`, expected: `${said[2]} at the most.` }];
}

/** A part that is more than its whole. */
function more(sight: Sight): Remark[] {
  const { main, what } = sight;
  if (!main || !["count", "volume", "mass", "time", "length", "number"].includes(main.dimension)) return [];
  const whole = relatedFacts(sight).find(
    (fact) =>
      fact.dimension === main.dimension &&
      /\b(?:total|in all|altogether|in the (?:kit|pack|set|row)|number of|complete|whole)\b/.test(
        fact.name,
      ) &&
      !/\bteeth|travel|stack|shim pack\b/.test(fact.name),
  );
  if (
    !whole ||
    (!(main.dimension === "mass" && /\bweight|mass\b/.test(what)) &&
      !/\b(?:of which|fitted|used|worked|lifted|bad|broken|missing|found|replaced|tight|cracked|part|faulty|worn|damaged|good|removed|refitted|returned)\b/.test(
        what,
      )) ||
    main.si <= whole.si * 1.0001
  )
    return [];
  return [
    {
      severity: "wrong",
      found: `${what} ${main.raw}, ${whole.name} ${whole.raw}.`,
      expected: "A part no larger than its whole.",
    },
  ];
}

const undoes = String.raw`\b(?:und(?:o|oes|one|id)|loosen(?:s|ed)?|unscrew(?:s|ed)?|slacken(?:s|ed)?|comes? off|came off|removed?)\b[^.]{0,14}`;

const tightens = String.raw`\b(?:tighten(?:s|ed)?|does up|done up|screws? (?:in|on|up))\b[^.]{0,14}`;

const anti = String.raw`\b(?:anti|counter)-?\s?clockwise`;

const clock = String.raw`(?<!anti)(?<!anti-)(?<!counter)(?<!counter-)\bclockwise`;

const opposed: [RegExp, RegExp][] = [
  [/\bleft[- ]hand(?:ed)?\b|\bl\.?h\.? thread\b/, new RegExp(`${undoes}${anti}|${tightens}${clock}`)],
  [/\bright[- ]hand(?:ed)?\b|\br\.?h\.? thread\b/, new RegExp(`${undoes}${clock}|${tightens}${anti}`)],
  [
    /\bleft[- ]hand(?:ed)? thread\b|\bl\.?h\.? thread\b/,
    /\bright[- ]hand(?:ed)? thread\b|\br\.?h\.? thread\b|undone anti-?clockwise|unscrews anti-?clockwise/,
  ],
  [/\bno (?:end )?(?:play|float|clearance|movement)\b|\bnil (?:play|float)\b/, /$^/],
  [/\bpositive earth\b/, /\bnegative earth\b/],
  [/\bsingle[- ]phase\b|\b1[- ]phase\b/, /\b(?:three|3)[- ]phase\b(?!.{0,20}\b(?:inverter|converter)\b)/],
  [/\b(?:two|2)[- ]stroke\b/, /\b(?:four|4)[- ]stroke\b/],
  [/\bseized(?: solid)?\b/, /\b(?:turns|spins|runs) (?:freely|easily)\b/],
  [/\bnever (?:run|fitted|used)\b/, /\bworn out in use\b/],
];

function words({ all, main, remarks, what }: Sight): Remark[] {
  if (
    main &&
    main.dimension === "length" &&
    main.si > 5e-5 &&
    /\b(?:float|play|clearance|backlash|shake)\b/.test(what) &&
    /\b(?:no|nil|zero|without) (?:end |side )?(?:play|float|clearance|shake|backlash|movement)\b/.test(
      remarks,
    )
  )
    return [{ severity: "doubtful", found: `${main.raw}, and “${remarks}”.`, expected: "One of the two." }];
  const pair = /\b(?:inverter|converter|was|before|oil|now)\b/.test(all)
    ? opposed.find(([a, b], i) => i < opposed.length - 4 && a.test(all) && b.test(all))
    : opposed.find(([a, b]) => a.test(all) && b.test(all));
  return pair
    ? [
        {
          severity: "doubtful",
          found: `Both “${pair[0].exec(all)?.[0]}” and “${pair[1].exec(all)?.[0]}”.`,
          expected: "One of the two.",
        },
      ]
    : [];
}
