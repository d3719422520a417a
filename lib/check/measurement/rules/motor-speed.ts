import { plain } from "../figures.ts";
import type { EntryRule, Remark } from "../rule.ts";
import type { Sight } from "../sight.ts";

/** A motor that outruns its field. */
export const motorSpeed: EntryRule = {
  id: "motor-speed",
  title: "Poles, frequency and speed",
  explanation:
    "A motor on alternating current turns no faster than its field: 120 times the frequency over its poles. An induction motor stays a few per cent behind.",
  source: "arithmetic: 120 × frequency / poles",
  check: (sight) => motor(sight),
  examples: [
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
    {
      says: "1440 they can",
      entry: {
        text: "1440 rpm",
        what: "motor speed",
        context: {
          related: [
            { what: "poles", text: "4" },
            { what: "supply", text: "50 Hz" },
          ],
        },
      },
      finds: 0,
    },
  ],
};

/** The supply's frequency in Hz: a value, else a word of the part ("4-pole, 50 Hz"). */
function frequencyOf({ facts, all }: Sight): number | null {
  const value = facts.find((fact) => fact.dimension === "frequency" && fact.si >= 15 && fact.si <= 100)?.si;
  const word = /\b(\d{2}(?:\.\d+)?) ?(?:hz|c\/s|cycles?)\b/.exec(all)?.[1];
  return value ?? (word ? Number(word) : null);
}

/** An alternating-current motor turns no faster than its field: 120 times the frequency over the poles. */
function motor(sight: Sight): Remark[] {
  const hertz = frequencyOf(sight);
  if (hertz === null) return [];
  const speed = sight.facts.find(
    (fact) =>
      fact.dimension === "rotational speed" &&
      /\b(?:motor|speed|rpm|rated|full load|no load)\b/.test(fact.name) &&
      !/pulley|spindle|counter|output/.test(fact.name),
  );
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
    !(poles > 0) ||
    poles % 2 === 1 ||
    /\b(?:pairs|dc|direct current|brush|universal|series|generator|alternator|export\w*|above synchronous|over-?run|driven above|vfd|inverter)\b/.test(
      sight.all,
    )
  )
    return [];
  const field = (2 * hertz) / poles;
  const ratio = speed.si / field;
  const light = /\b(?:running light|no[- ]load|unloaded|off load|idling)\b/.test(sight.all);
  if (ratio <= 1.003 && ratio >= (light ? 0.9 : 0.85)) return [];
  return [
    {
      severity: "wrong",
      found: `${speed.raw} from ${poles} poles at ${hertz} Hz.`,
      expected: `Just below ${plain(field * 60)} rpm.`,
      meant: `${plain(field * 60 * 0.96, 3)} rpm?`,
      source: "arithmetic: 120 × frequency / poles",
    },
  ];
}
