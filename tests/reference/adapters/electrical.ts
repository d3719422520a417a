import {
  type Circuit,
  colourBands,
  copperAt,
  copperWire,
  gaugeNumber,
  inParallel,
  inSeries,
  isPreferred,
  lostPrefixes,
  nearestPreferred,
  ohmsLaw,
  preferredSeries,
  type SeriesName,
  seriesNames,
} from "#lib/reference/index.ts";
import { designations, first, of } from "../read/figures.ts";
import type { Adapter, Answer } from "../row.ts";

/** The quantities of a circuit that a text gives, in plain units. */
function known(text: string): Partial<Circuit> {
  const [volts] = of(text, "voltage", "V");
  const [amperes] = of(text, "current", "A");
  const [ohms] = of(text, "resistance", "Ohm");
  const [watts] = of(text, "power", "W");
  const all = { volts, amperes, ohms, watts };
  return Object.fromEntries(Object.entries(all).filter(([, value]) => value !== undefined));
}

function circuit(text: string): Answer {
  const [first = "", claim] = text.split(", stated ");
  const given = known(first);
  const whole = ohmsLaw(given);
  const answer: Answer = { A: whole?.amperes, V: whole?.volts, ohm: whole?.ohms, W: whole?.watts };
  if (claim === undefined || !whole) return answer;
  const stated = known(claim);
  const agrees = (Object.entries(stated) as [keyof Circuit, number][]).every(
    ([name, value]) => Math.abs(value / whole[name] - 1) < 0.05,
  );
  return {
    ...answer,
    consistent: agrees,
    likely_slip: agrees ? null : lostPrefixes(given, stated).join("; "),
  };
}

function drop(text: string): Answer {
  const gauge = designations(text).find((one) => one.type === "wire gauge");
  const number = gauge?.type === "wire gauge" ? gaugeNumber(gauge.size) : Number.NaN;
  const kilometres = first(of(text, "length", "m"), "the length") / 1000;
  const amperes = first(of(text, "current", "A"), "the current");
  return { V: copperWire(number).ohmPerKm * kilometres * amperes };
}

function preferred(text: string): Answer {
  const [ohms] = of(text, "resistance", "Ohm");
  const value = first(ohms === undefined ? [] : [ohms], "the resistance");
  const scale = /k(?:ohm|Ω)/.test(text) ? 1000 : /M(?:ohm|Ω)/.test(text) ? 1e6 : 1;
  return Object.fromEntries(
    seriesNames.flatMap((series) => [
      [series, isPreferred(value, series)],
      [`nearest_${series}`, (nearestPreferred(value, series) ?? Number.NaN) / scale],
    ]),
  );
}

function banded(text: string): Answer {
  const found = colourBands(text);
  return {
    ohm: found?.ohms,
    tol_pct: found?.tolerance,
    range_ohm: found && [found.least, found.most],
  };
}

export const adapter: Adapter = ({ input }) => {
  const { text } = input;
  if (/bands/.test(text)) return banded(text);
  const series = /^(E\d+) values/.exec(text)?.[1];
  if (series) return { values: [...preferredSeries[series as SeriesName]] };
  if (/preferred/.test(text)) return preferred(text);
  if (/voltage drop/.test(text)) return drop(text);
  const ohms = of(text, "resistance", "Ohm");
  if (/parallel/.test(text)) return { ohm: inParallel(...ohms) };
  if (/series/.test(text)) return { ohm: inSeries(...ohms) };
  if (/^code/.test(text)) return { ohm: ohms[0] };
  if (/copper winding/.test(text)) {
    const [from = 20, to = 20] = of(text, "temperature", "Cel");
    return { ohm: copperAt(ohms[0] ?? Number.NaN, to) / copperAt(1, from) };
  }
  return circuit(text);
};
