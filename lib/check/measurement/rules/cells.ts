import { near, plain, sayIn } from "../figures.ts";
import { type EntryRule, firstOf, type Remark } from "../rule.ts";
import type { Sight } from "../sight.ts";

/** A battery's volts against those of its cells. */
export const cells: EntryRule = {
  id: "cells-mismatch",
  title: "Cells and volts",
  explanation:
    "The volts of cells in a row add up. A lead-acid cell has two, a little less when it is run down and up to 2.7 while it gasses on charge.",
  source: "arithmetic; nominal voltage of a lead-acid cell: common practice, no source",
  check: (sight) => firstOf(sight, saidEach, eachAndAll, oneCell, counted, atRest),
  examples: [
    {
      says: "six cells of 1.5 V are 9 V",
      entry: { text: "18 V", what: "dry battery, 6 cells of 1.5 V" },
      finds: 1,
    },
    { says: "as they should", entry: { text: "9 V", what: "dry battery, 6 cells of 1.5 V" }, finds: 0 },
    {
      says: "four volts in one cell",
      entry: {
        text: "4 V per cell",
        what: "accumulator on test",
        context: { part: "lead-acid accumulator" },
      },
      finds: 1,
    },
    {
      says: "two volts in one cell",
      entry: { text: "2.1 V", what: "cell voltage", context: { part: "lead-acid cell" } },
      finds: 0,
    },
    {
      says: "six cells of 2.1 V, and 6.2 V in all",
      entry: {
        text: "6.2 V over the whole battery",
        what: "voltage after charging",
        context: {
          part: "lead-acid battery, 6 cells in series",
          related: [{ what: "each cell alone", text: "2.1 V" }],
        },
      },
      finds: 1,
    },
    {
      says: "no battery of six volts stands at fourteen",
      entry: { text: "14.2 V", what: "battery at rest", context: { part: "6 V battery" } },
      finds: 1,
    },
  ],
};

/** "6 cells of 1.5 V". */
function saidEach({ main, all }: Sight): Remark[] {
  const said = /\b(\d{1,3}) (?:[a-z]+ )?cells? (?:of|at|x|each) (\d+(?:\.\d+)?) ?v/.exec(all);
  if (!said || main?.dimension !== "voltage" || /\bparallel|per cell|each cell\b/.test(all)) return [];
  const should = Number(said[1]) * Number(said[2]);
  if (near(main.si, should, 0.2) || near(main.si, Number(said[2]), 0.2)) return [];
  return [
    {
      severity: "doubtful",
      found: `${main.raw} from ${said[0]}.`,
      expected: `About ${sayIn(should, main.quantity, 3)}.`,
      meant: `${plain(should)} V?`,
    },
  ];
}

const wordCounts = ["two", "three", "four", "five", "six"];

/** So many cells in a row, what each of them has, and what all have together. */
function eachAndAll({ main, all, what, facts, entry }: Sight): Remark[] {
  const told = /\b(\d{1,3}|two|three|four|five|six)[- ](?:[a-z-]+ )?cells?\b/.exec(all)?.[1];
  const each = facts.find(
    (fact) =>
      fact.from === "related" &&
      fact.dimension === "voltage" &&
      /\b(?:each|per|one|a|every)\b.*\bcell\b|\bcell (?:voltage|volts)\b|\bcells? each\b/.test(fact.label),
  );
  if (!told || !each || main?.dimension !== "voltage" || /\bparallel\b/.test(all)) return [];
  if (
    /\bcell\b/.test(`${what} ${entry.text.toLowerCase()}`) &&
    !/\b(?:whole|battery|total|all)\b/.test(`${what} ${entry.text.toLowerCase()}`)
  )
    return [];
  const count = wordCounts.includes(told) ? wordCounts.indexOf(told) + 2 : Number(told);
  const should = count * each.si;
  if (near(main.si, should, 0.12)) return [];
  return [
    {
      severity: "doubtful",
      found: `${main.raw}, and ${each.name} ${each.raw}.`,
      expected: `About ${sayIn(should, main.quantity, 3)} from ${count} cells.`,
      meant: `${sayIn(should, main.quantity, 3)}?`,
      source: "Kirchhoff's laws",
    },
  ];
}

/** "6 V battery" and 14 V at its terminals. */
function atRest({ main, what, part, facts }: Sight): Remark[] {
  if (main?.dimension !== "voltage") return [];
  const about = `${what} ${part}`;
  const said = /\b(\d{1,2}) ?(?:v|volts?)\b/.exec(about);
  if (!said || !/\b(?:battery|accumulator)\b/.test(about)) return [];
  if (
    /\b(?:charg\w*|supply|series|bank|ht|h\.t|dynamo|generator|grid)\b/.test(about) ||
    !/\b(?:rest|voltage|terminals?|volts|open circuit|standing)\b/.test(what)
  )
    return [];
  const nominal = Number(said[1]);
  if (facts.filter((fact) => fact.dimension === "voltage").length > 2 || main.si <= nominal * 1.3) return [];
  return [
    {
      severity: "doubtful",
      found: `${what}: ${main.raw}, of a battery of ${nominal} V.`,
      expected: `Up to ${plain(nominal * 1.2, 3)} V off the charger.`,
      source: "common practice, no source: nominal voltage of a lead-acid cell",
    },
  ];
}

function oneCell({ main, what, all, entry }: Sight): Remark[] {
  const each = /\b(?:per|each|a) cell\b|\bcell voltage\b|\bvoltage of (?:the |one |each )?cell\b/;
  if (main?.dimension !== "voltage" || !/\blead[- ]acid\b/.test(all)) return [];
  if (!each.test(`${what} ${entry.text.toLowerCase()}`) || /\b(?:dead|short(?:ed)?|flat|charger)\b/.test(all))
    return [];
  if (main.si >= 1.7 && main.si <= 2.8) return [];
  return [
    {
      severity: "doubtful",
      found: `${main.raw} in one cell.`,
      expected: "About 2 V; 2.7 V at the end of a charge.",
      source: "common practice, no source",
    },
  ];
}

/** A lead-acid battery has two volts a cell. */
function counted(sight: Sight): Remark[] {
  if (
    !/\b(?:lead[- ]acid|battery|accumulator)\b/.test(sight.all) ||
    /\b(?:nickel|nife|dry|lithium|zinc|alkaline|leclanch)/.test(sight.all)
  )
    return [];
  const count =
    sight.facts.find(
      (fact) => /\bcells?\b/.test(fact.label) && (fact.dimension === "count" || fact.dimension === "number"),
    ) ?? sight.facts.find((fact) => fact.dimension === "count" && /cell/.test(fact.quantity.unit));
  const volts = sight.facts.filter((fact) => fact.dimension === "voltage");
  const [v] = volts;
  if (!count || !v || volts.length !== 1 || /\bper cell|each|a cell\b/.test(sight.all)) return [];
  const each = v.si / count.si;
  if (each > 1.5 && each < 2.8) return [];
  return [
    {
      severity: "doubtful",
      found: `${v.raw} from ${count.si} cells.`,
      expected: `About ${sayIn(count.si * 2, v.quantity, 3)}: two volts a cell.`,
      source: "common practice, no source: nominal voltage of a lead-acid cell",
    },
  ];
}
