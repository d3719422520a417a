import type { MeasureAt } from "./measure.ts";
import { riseWords } from "./roles.ts";
import type { ReadOptions } from "./types.ts";

const angleWords =
  /\b(?:[ab]?[bt]dc|before|after|advance[d]?|retard(?:ed)?|angle|taper|lead|rake|included|crank(?:shaft)?|camber|castor|dwell|thread|bevel|cone|point|helix|timing|rotation|turn(?:ed)?|round|tilt|chamfer|square)\b/i;
const heatWords =
  /\b(?:oven|heat(?:ed|ing)?|hot|cold|warm(?:ed)?|boil(?:ing)?|water|oil|temperature|temp|ambient|room|freezer|cool(?:ed)?|bath|flash point|melts?|solder)\b/i;
const ohmWords = /\bresist|\bohm|\bpot(?:entiometer)?\b|\btrack\b|\bgrid\b|\bbias\b|\banode\b/i;
const perRegion: Record<string, string> = { GB: "Cel", US: "[degF]", metric: "Cel" };

/** Settles "degrees" by the words about it (an angle, or heat), and by the region once it is known to be heat. */
export function narrowed(text: string, measure: MeasureAt, options: ReadOptions): MeasureAt {
  const codes = measure.quantities.map((one) => one.ucum);
  if (codes.includes("K"))
    return kept(measure, riseWords.test(text) ? ["K"] : ohmWords.test(text) ? ["kOhm"] : codes);
  if (!codes.includes("deg") && !(codes.includes("Cel") && codes.includes("[degF]"))) return measure;
  if (codes.every((code) => code === codes[0])) return measure;
  const heat = options.expect === "temperature" || (heatWords.test(text) && !angleWords.test(text));
  const region = options.region && perRegion[options.region];
  const keep = heat ? (region ? [region] : ["Cel", "[degF]"]) : angleWords.test(text) ? ["deg"] : codes;
  return kept(measure, keep);
}

function kept(measure: MeasureAt, codes: string[]): MeasureAt {
  const quantities = measure.quantities.filter((one) => codes.includes(one.ucum));
  if (quantities.length === 0) return measure;
  return { ...measure, quantities, asks: quantities.length === 1 ? [] : measure.asks };
}
