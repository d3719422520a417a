import { bearing } from "#lib/reference/index.ts";
import { near, plain } from "../figures.ts";
import { productNames } from "../product-names.ts";
import { type EntryRule, firstOf, type Remark } from "../rule.ts";
import type { Fact, Sight } from "../sight.ts";

/** Sizes that changed places. */
export const order: EntryRule = {
  id: "order-swapped",
  title: "Sizes that changed places",
  explanation:
    "A bore is smaller than the outside round it, a wire thinner than its coil, a pitch finer than its diameter. Where the sizes are written the other way about, they changed places; a bearing's number says which is which.",
  source: "geometry; ISO 15 for bearings by number, as in the reference tables",
  check: (sight) => firstOf(sight, named, numbered, pairs, against, pinion),
  examples: [
    {
      says: "an inside larger than its outside",
      entry: { text: "38 x 25 x 7 mm (ID x OD x width)", what: "crank seal" },
      finds: 1,
    },
    {
      says: "6205",
      entry: {
        text: "25 x 52 x 15 mm (bore x OD x width)",
        what: "bearing",
        context: { part: "ball bearing 6205" },
      },
      finds: 0,
    },
    {
      says: "6205 with bore and width changed",
      entry: {
        text: "15 x 52 x 25 mm (bore x OD x width)",
        what: "bearing",
        context: { part: "ball bearing 6205" },
      },
      finds: 1,
    },
    {
      says: "18 mm of thread in 15 mm of hole",
      entry: {
        text: "18 mm",
        what: "threaded depth",
        context: { related: [{ what: "blind hole depth", text: "15 mm" }] },
      },
      finds: 1,
    },
    {
      says: "a pinion with more leaves than its wheel has teeth",
      entry: { text: "wheel 8, pinion 72", what: "tooth count, great wheel and its pinion" },
      finds: 1,
    },
    {
      says: "named in the label",
      entry: { text: "12 x 30 x 8 mm", what: "oil seal (OD x ID x width)" },
      finds: 1,
    },
    { says: "a wheel of 72", entry: { text: "wheel 72, pinion 8", what: "tooth count" }, finds: 0 },
    {
      says: "inlet and exhaust changed",
      entry: {
        text: "inlet 0.010 in, exhaust 0.006 in",
        what: "valve clearances",
        context: { spec: "inlet 0.006 in, exhaust 0.010 in" },
      },
      finds: 1,
    },
  ],
};

const inside =
  /^(?:id|i\.d\.?|bore|inside|inner|hole|inside dia\w*|shaft|internal|inner dia\w*|bore dia\w*)$|\b(?:inside|inner|internal|bore|i\.?d\.?)\b/i;
const outside = /\b(?:od|o\.d\.?|outside|outer|external|o\/d)\b/i;
const wire = /\bwire\b/i;

interface Size {
  name: string;
  si: number;
}

function named(sight: Sight): Remark[] {
  const own = sizesOf(sight);
  if (own.length < 2) return [];
  const [i, o] = [
    own.find((one) => inside.test(one.name) && !outside.test(one.name)),
    own.find((one) => outside.test(one.name)),
  ];
  if (i && o && i.si >= o.si)
    return [
      {
        severity: "wrong",
        found: `“${sight.entry.text}”: the inside is not smaller than the outside.`,
        expected: "The smaller of the two is the inside.",
        meant: "the two changed places?",
      },
    ];
  const [w, coil] = [
    own.find((one) => wire.test(one.name)),
    own.find((one) => outside.test(one.name) || /\b(?:coil|mean) ?(?:dia\w*)?\b/i.test(one.name)),
  ];
  if (w && coil && w.si >= coil.si * 0.5)
    return [
      {
        severity: "wrong",
        found: `“${sight.entry.text}”: the wire is as thick as its coil.`,
        expected: "A wire thinner than the coil.",
        meant: "the two changed places?",
      },
    ];
  return unnamed(sight, own);
}

function sizesOf(sight: Sight): Size[] {
  const { reading, facts } = sight;
  const names = reading.kind === "product" ? productNames(sight) : undefined;
  if (reading.kind === "product")
    return reading.quantities
      .map((one, i) => ({ name: names?.[i] ?? "", si: one.si }))
      .filter((one) => one.si > 0);
  const own = facts.filter((fact) => fact.from === "text");
  if (own[0]?.dimension !== "length" && own[0]?.dimension !== "number") return [];
  return own
    .filter((fact) => fact.dimension === own[0]?.dimension)
    .map((fact) => ({ name: fact.label.slice(fact.name.length).trim(), si: fact.si }));
}

/** Bearings, seals, washers and bushes are called by bore, outside and width, in that order. */
function unnamed(sight: Sight, sizes: Size[]): Remark[] {
  const { reading, entry, what, part } = sight;
  if (reading.kind !== "product" || productNames(sight) || sizes.length !== 3) return [];
  const [a, b, c] = sizes;
  if (!a || !b || !c || !/\b(?:bearing|seal|bush|bushing|washer)\b/.test(`${what} ${part}`) || a.si < b.si)
    return [];
  return [
    {
      severity: "doubtful",
      found: `“${entry.text}”: the first size is not smaller than the second.`,
      expected: "Bore, outside diameter and width, in this order.",
      meant: "the first two changed places?",
    },
  ];
}

/** "bore 30, OD 55, width 13 mm": millimetres by name. */
function labelled(text: string): [number, number, number] | null {
  if (!/\bmm\b/.test(text)) return null;
  const [bore, outside, width] = labels.map((label) => label.exec(text)?.[1]);
  return bore && outside && width ? [Number(bore), Number(outside), Number(width)] : null;
}

const labels = ["bore|id|d", "od|outside|outer", "width|wide|b"].map(
  (names) => new RegExp(`\\b(?:${names})\\b\\D{0,3}(\\d+(?:\\.\\d+)?)`, "i"),
);

/** A bearing's number gives its sizes. */
function numbered(sight: Sight): Remark[] {
  const { reading, main } = sight;
  const told = labelled(sight.entry.text);
  if (main?.dimension !== "length" && !told) return [];
  const number = sight.named.find((one) => one.designation.type === "bearing");
  const text = `${sight.entry.context.part ?? ""} ${sight.entry.what} ${sight.entry.context.spec ?? ""} ${sight.entry.context.fastener ?? ""}`;
  const row = number?.designation.type === "bearing" ? bearing(number.designation.number) : bearingIn(text);
  if (!row) return [];
  const size = { bore: row.bore, outside: row.outside, width: row.width };
  const words = `${plain(size.bore)} x ${plain(size.outside)} x ${plain(size.width)} mm (bore x OD x width)`;
  if (reading.kind === "product" && reading.quantities.length >= 2) {
    const names = productNames(sight) ?? ["bore", "od", "width"];
    const off = reading.quantities.some((one, i) => {
      const name = names[i] ?? "";
      const should = outside.test(name)
        ? size.outside
        : inside.test(name)
          ? size.bore
          : /\b(?:w|width|wide|thick\w*|b)\b/i.test(name)
            ? size.width
            : undefined;
      return should !== undefined && !near(one.si * 1000, should, 0.012);
    });
    return off
      ? [
          {
            severity: "wrong",
            found: `“${sight.entry.text}” for ${row.number}.`,
            expected: words,
            meant: `${words}?`,
            source: "ISO 15",
          },
        ]
      : [];
  }
  if (told)
    return [size.bore, size.outside, size.width].every((mm, i) => near(told[i] ?? 0, mm, 0.012))
      ? []
      : [
          {
            severity: "wrong",
            found: `“${sight.entry.text}” for ${row.number}.`,
            expected: words,
            source: "ISO 15",
          },
        ];
  if (
    main?.dimension !== "length" ||
    !/\bbearing\b/.test(`${sight.what} ${sight.part}`) ||
    /\b(?:housing|clearance|shaft|fit|float|play|depth|shim|spacer|journal)\b/.test(sight.what)
  )
    return [];
  const should = outside.test(sight.what)
    ? size.outside
    : /\b(?:bore|inside|inner)\b/.test(sight.what)
      ? size.bore
      : /\bwidth\b/.test(sight.what)
        ? size.width
        : undefined;
  if (should === undefined || near(main.si * 1000, should, 0.01)) return [];
  return [
    {
      severity: "wrong",
      found: `${sight.what} ${main.raw} for ${row.number}.`,
      expected: words,
      source: "ISO 15",
    },
  ];
}

function bearingIn(text: string) {
  const number = /\b(6[0-9]{2,4}|16\d{3}|62\/\d{2})\b/.exec(text)?.[1];
  return number && /bearing|race|\bball\b/i.test(text) ? bearing(number) : undefined;
}

/** Inside and outside given apart. */
function pairs({ what, facts, main, reading }: Sight): Remark[] {
  if (main?.dimension !== "length") return [];
  const own =
    reading.kind === "list"
      ? facts.filter((fact) => fact.from === "text" && fact.dimension === "length")
      : [];
  const tags = own.map((fact) => ({ fact, tag: fact.label.slice(fact.name.length).trim() }));
  for (const one of tags)
    for (const other of tags)
      if (one !== other && smaller(one.tag, other.tag) && one.fact.si > other.fact.si)
        return [
          {
            severity: "wrong",
            found: `“${one.fact.raw}”: ${one.tag} is not below ${other.tag}.`,
            expected: `${one.tag} below ${other.tag}.`,
            meant: "the two changed places?",
          },
        ];
  for (const other of facts.filter((fact) => fact.from === "related" && fact.dimension === "length")) {
    const [small, large] =
      smaller(what, other.name) || bored(what, other.name)
        ? [main, other]
        : smaller(other.name, what) || bored(other.name, what)
          ? [other, main]
          : [null, null];
    if (!small || !large || small.si <= large.si * 1.0001) continue;
    return [
      {
        severity: "wrong",
        found: `${small.name} ${small.raw}, ${large.name} ${large.raw}.`,
        expected: `${small.name} below ${large.name}.`,
        meant: "the two changed places?",
      },
    ];
  }
  return [];
}

const wholes: [RegExp, RegExp][] = [
  [/^(?:solid|compressed|fitted|installed|closed|loaded)$/, /^free$/],
  [/\b(?:inside|inner|internal|i\.?d\.?) ?(?:diameter|dia)?\b/, /\b(?:outside|outer|external|o\.?d\.?)\b/],
  [
    /\bwire (?:diameter|dia|gauge|thickness)\b/,
    /\b(?:coil|spring) (?:outside|outer|o\.?d|diameter|dia)\b|\boutside diameter\b/,
  ],
  [/\b(?:core|root|minor) dia\w*\b/, /\b(?:major|outside|crest) dia\w*\b/],
  [
    /\b(?:solid|compressed|coil-?bound|fitted|installed|closed) (?:length|height)\b/,
    /\bfree (?:length|height)\b/,
  ],
  [/\bcoil-?bound\b|\bsolid (?:length|height)\b/, /\bfree (?:length|height)?\b/],
  [/\bsolid (?:length|height)\b|\bcoil-?bound\b/, /\b(?:fitted|installed|working) (?:length|height)\b/],
  [
    /\b(?:thread(?:ed)?) length\b|\blength of thread\b/,
    /\b(?:overall|bolt|screw|stud|total) length\b|\blength overall\b/,
  ],
  [
    /\b(?:hole|counterbore|keyway|slot|recess|groove|pocket|thread|blind) depth\b|\bdepth of (?:hole|counterbore|keyway|slot|recess|groove|thread|blind)\b/,
    /\b(?:plate|wall|block|flange|casting|boss|material|section|floor) thickness\b|\bthickness of (?:the )?(?:plate|wall|block|flange|casting|boss)\b/,
  ],
  [
    /\b(?:thread(?:ed)?|tapped|tapping) depth\b|\bdepth of (?:the )?thread\b|\bdepth tapped\b/,
    /\b(?:hole|drill(?:ed|ing)?|drilled) depth\b|\bdepth of (?:the )?(?:blind )?hole\b/,
  ],
  [
    /\b(?:keyway|groove|slot|flat) depth\b|\bdepth of (?:the )?(?:keyway|groove|slot|flat)\b/,
    /\b(?:shaft|rod|pin|spindle|bar) dia(?:meter)?\b/,
  ],
  [/\bbolt (?:circle|pcd)|\bpcd\b|\bpitch circle\b/, /\bflange (?:outside |outer )?(?:diameter|od)\b/],
  [
    /\b(?:throat|venturi|jet|waist) (?:diameter|dia|bore)\b/,
    /\b(?:flange|mouth|inlet|intake) (?:diameter|dia|bore)\b/,
  ],
  [/\b(?:closed|shut) (?:gap|height)\b/, /\bopen (?:gap|height)\b/],
  [/\broot dia\w*\b/, /\bpitch (?:circle )?dia\w*\b/],
  [/\bpitch (?:circle )?dia\w*\b/, /\boutside dia\w*\b|\btip dia\w*\b/],
];

/** The bore and the outside of one thing, by a word that both labels share: "bore of the jet", "jet outside diameter". */
function bored(a: string, b: string): boolean {
  if (!/\bbore\b/.test(a) || /\b(?:outside|outer|o\.?d)\b/.test(a) || !/\b(?:outside|outer|o\.?d)\b/.test(b))
    return false;
  const nouns = (label: string): string[] => label.match(/[a-z]{3,}/g) ?? [];
  const plain = /^(?:bore|outside|outer|diameter|dia|the|inner|and|for|new|worn|race|ring|bearing)$/;
  return nouns(a).some((word) => !plain.test(word) && nouns(b).includes(word));
}

/** Whether a name is that of a smaller size at all. */
const aSmaller = new RegExp(wholes.map(([small]) => small.source).join("|"));

const smaller = (a: string, b: string): boolean =>
  aSmaller.test(a) && wholes.some(([small, large]) => small.test(a) && large.test(b) && !large.test(a));

/** Of a wheel and a pinion that turn together or in one another, the pinion is the small one. */
function pinion({ entry: { text } }: Sight): Remark[] {
  const of = (name: string): number =>
    Number(new RegExp(`\\b${name}\\b\\D{0,10}?(\\d{1,3})\\b(?!\\.\\d)`, "i").exec(text)?.[1] ?? Number.NaN);
  const [wheel, leaves] = [of("wheel"), of("pinion")];
  return leaves > wheel
    ? [
        {
          severity: "doubtful",
          found: `“${text}”: the pinion has more teeth than the wheel.`,
          expected: "The pinion is the smaller of the two.",
          meant: "the two changed places?",
        },
      ]
    : [];
}

/** Two named values that are each other's specification. */
function against({ facts, entry }: Sight): Remark[] {
  const own = facts.filter((fact) => fact.from === "text" && fact.quantity.high === undefined);
  if (own.length !== 2) return [];
  const spec = facts.filter(
    (fact) =>
      fact.from === "spec" ||
      (fact.from === "related" && /\bspec|manual|book|should|maker|list|data/.test(fact.name)),
  );
  const [a, b] = own;
  const [x, y] = spec;
  if (spec.length !== 2 || !a || !b || !x || !y || near(x.si, y.si, 0.02)) return [];
  if (a.dimension !== b.dimension || x.dimension !== a.dimension || x.dimension !== y.dimension) return [];
  const [na, nb, nx, ny] = [tag(a), tag(b), tag(x), tag(y)];
  const straight = na === nx && nb === ny;
  const crossed = na === ny && nb === nx;
  const [first, second] = straight ? [x, y] : crossed ? [y, x] : [null, null];
  if (!first || !second || na === "" || na === nb) return [];
  const inside = (fact: Fact, limits: Fact) =>
    fact.si >= (limits.low ?? 0) * 0.97 && fact.si <= (limits.high ?? Number.POSITIVE_INFINITY) * 1.03;
  if (inside(a, first) || inside(b, second) || !inside(a, second) || !inside(b, first)) return [];
  return [
    {
      severity: "wrong",
      found: `“${entry.text}”, where “${x.raw}” was specified.`,
      expected: `${na} ${first.raw === second.raw ? "" : first.raw}`.trim(),
      meant: "the two changed places?",
    },
  ];
}

const tag = (fact: Fact): string =>
  fact.label
    .slice(fact.name.length)
    .match(
      /\b(?:inlet|in|exhaust|ex|front|rear|left|right|top|bottom|upper|lower|inner|outer|primary|secondary|inside|outside|driver|driven|hot|cold|positive|negative|drive|free)\b/,
    )?.[0]
    ?.replace(/^in$/, "inlet")
    .replace(/^ex$/, "exhaust") ?? "";
