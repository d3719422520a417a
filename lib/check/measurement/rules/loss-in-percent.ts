import { near, plain, sayIn } from "../figures.ts";
import type { EntryRule } from "../rule.ts";
import { type Fact, readOnce, type Sight } from "../sight.ts";
import { decisionIn } from "../words.ts";

/** A limit told as a share of the size when new, worked out. */
export const lossInPercent: EntryRule = {
  id: "loss-in-percent",
  title: "Worn by so many per cent",
  explanation:
    "Ropes, chains, linings and plates are renewed when they have lost, or stretched by, a share of their size when new. With that size known the limit is a figure, and the one measured stands above or below it.",
  source: "arithmetic: the share given, of the size given",
  check: (sight) => {
    const { main, entry } = sight;
    const limit = shareIn(`${entry.context.spec ?? ""}; ${entry.context.limit ?? ""}`.toLowerCase());
    const fresh = limit && main && newSize(sight, main);
    if (!limit || !main || !fresh) return [];
    const bound = fresh * (1 + (limit.grows ? limit.share : -limit.share));
    const beyond = limit.grows ? main.si > bound * 1.0005 : main.si < bound * 0.9995;
    const decided = decisionIn(`${sight.verdict} ${sight.remarks}`);
    if (!beyond || !near(main.si, bound, 0.5) || decided === "rejected") return [];
    return [
      {
        severity: decided === "accepted" ? ("wrong" as const) : ("doubtful" as const),
        found: `${main.raw}, new ${sayIn(fresh, main.quantity)}: ${plain(100 * Math.abs(1 - main.si / fresh), 3)} %.`,
        expected: `${plain(100 * limit.share)} % at the most: ${sayIn(bound, main.quantity)}.`,
      },
    ];
  },
  examples: [
    {
      says: "a twelfth of a rope is more than a twentieth",
      entry: {
        text: "11.0 mm",
        what: "rope diameter",
        context: {
          part: "wire rope, 12 mm nominal",
          spec: "discard at 7 % loss of diameter",
          verdict: "left in service",
        },
      },
      finds: 1,
    },
    {
      says: "a twentieth is less than a tenth",
      entry: {
        text: "11.4 mm",
        what: "rope diameter",
        context: {
          part: "wire rope, 12 mm nominal",
          spec: "discard at 10 % loss of diameter",
          verdict: "left in service",
        },
      },
      finds: 0,
    },
    {
      says: "a chain stretched by more than two per cent",
      entry: {
        text: "614 mm",
        what: "length over 24 links",
        context: {
          related: [{ what: "length when new", text: "600 mm" }],
          limit: "2 % elongation",
          verdict: "refitted",
        },
      },
      finds: 1,
    },
  ],
};

const lossWord = "loss|wear|worn|reduc(?:tion|ed)|wast(?:ing|ed)|corro(?:sion|ded)|thinn(?:ing|er)";
const growthWord = "stretch(?:ed|ing)?|elongat(?:ion|ed)|extension|lengthening|growth";
const told = new RegExp(
  `(\\d+(?:\\.\\d+)?) ?(?:%|per ?cent)[a-z ]{0,14}?\\b(${lossWord}|${growthWord})\\b|\\b(${lossWord}|${growthWord})\\b[a-z ]{0,22}?(\\d+(?:\\.\\d+)?) ?(?:%|per ?cent)`,
);
const growth = new RegExp(`\\b(?:${growthWord})\\b`);

function shareIn(text: string): { share: number; grows: boolean } | null {
  const hit = text.includes("%") || text.includes("per") ? told.exec(text) : null;
  if (!hit) return null;
  return { share: Number(hit[1] ?? hit[4]) / 100, grows: growth.test(hit[2] ?? hit[3] ?? "") };
}

const whenNew = /\b(?:nominal|new|original(?:ly)?|as made|unworn|catalogue|nominally|full)\b/;

/** The size when new, in SI units: of a related value, else in the part's own name. */
function newSize({ facts, part, decimal, what }: Sight, main: Fact): number | null {
  const fresh = facts.find(
    (fact) => fact.from === "related" && fact.dimension === main.dimension && whenNew.test(fact.name),
  );
  if (fresh) return fresh.si;
  for (const text of [part, what].filter((one) => /\d/.test(one))) {
    const reading = readOnce(text, decimal);
    const [own] = reading.kind === "quantity" ? reading.quantities : [];
    if (own?.dimension === main.dimension && !own.high) return own.si;
  }
  return null;
}
