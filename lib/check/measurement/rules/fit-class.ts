import { againstLimits, limitsOf } from "#lib/reference/index.ts";
import { plain, stepOf } from "../figures.ts";
import type { EntryRule, Remark } from "../rule.ts";
import type { Fact, Sight } from "../sight.ts";
import { decisionIn, type Side, sideOf } from "../words.ts";
import { notASize } from "./pair-fit.ts";

/** A measured size against a class of ISO 286. */
export const fitClass: EntryRule = {
  id: "outside-fit-class",
  title: "Outside its class of fit",
  explanation:
    "H7 or g6 behind a size says between which two sizes it lies, to a thousandth of a millimetre. A measured size outside them was made wrongly, or measured against another class.",
  source: "ISO 286-1, as in the reference tables",
  check: (sight) => classOf(sight),
  examples: [
    {
      says: "25 g6 is 24.980 to 24.993 mm",
      entry: { text: "25.010 mm", what: "shaft diameter", context: { spec: "25 g6" } },
      finds: 1,
    },
    {
      says: "and 24.985 mm is within",
      entry: { text: "24.985 mm", what: "shaft diameter", context: { spec: "25 g6" } },
      finds: 0,
    },
  ],
};

function classOf(sight: Sight): Remark[] {
  const { main } = sight;
  if (main?.dimension !== "length" || main.quantity.ucum !== "mm" || notASize.test(sight.what)) return [];
  if (!/[a-z]\d/i.test(`${sight.entry.context.spec ?? ""} ${sight.all}`)) return [];
  for (const found of classes(sight, main)) {
    const limits = limitsOf(found.nominal, found.name);
    if (!limits) continue;
    const verdict = againstLimits(main.si * 1000, limits);
    if (verdict.inside) continue;
    const slack = stepOf(main) * 500;
    if (Math.max(verdict.over, verdict.under) <= slack * 1.001) continue;
    if (decisionIn(`${sight.verdict} ${sight.remarks}`) === "rejected") continue;
    return [
      {
        severity: "wrong",
        found: `${main.raw}, where ${plain(found.nominal)} ${found.name} was asked for.`,
        expected: `${limits.least.toFixed(3)} to ${limits.most.toFixed(3)} mm.`,
        source: "ISO 286-1, as in the reference tables",
      },
    ];
  }
  return [];
}

function classes(sight: Sight, main: Fact): { nominal: number; name: string }[] {
  const own: Side | null = sideOf(sight.what) ?? sideOf(`${sight.what} ${sight.part}`);
  const spoken = [
    sight.entry.context.spec,
    ...(sight.entry.context.related ?? []).map((one) =>
      /\b(?:fit|tolerance|class|spec|drawing|limit|nominal)/i.test(one.what) ? one.text : "",
    ),
    sight.entry.what,
    sight.entry.text,
  ];
  for (const text of spoken) {
    const names = [
      ...(text ?? "").matchAll(
        /(?<![\p{L}\d])(?:(\d{1,3}(?:\.\d{1,3})?)\s?(?:mm )?)?([A-HJ-NP-Z]{1,2}|[a-hj-np-z]{1,2})(\d{1,2})(?![\p{L}\d.])/gu,
      ),
    ].filter((hit) => /^(?:[A-HJKMNPRSTU]|JS|js|[a-hjkmnprstuvxz])$/.test(hit[2] ?? ""));
    const hit = names.find((one) => own === null || (own === "out") === (one[2] === one[2]?.toUpperCase()));
    const nominal = names.find((one) => one[1] !== undefined)?.[1];
    if (!hit || ((hit[2] ?? "").toLowerCase() === "m" && nominal === undefined)) continue;
    const size = nominal === undefined ? Math.round(main.si * 1000) : Number(nominal);
    if (Math.abs(size - main.si * 1000) > 0.03 * size + 0.2) continue;
    return [{ nominal: size, name: `${hit[2]}${hit[3]}` }];
  }
  return [];
}
