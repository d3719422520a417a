export { type BandedResistor, bandsFor, colourBands, colourRows } from "./colours.ts";
export { type Circuit, inParallel, inSeries, lostPrefixes, ohmsLaw } from "./ohm.ts";
export {
  coarsestSeries,
  isPreferred,
  nearestPreferred,
  preferredSeries,
  preferredSource,
  type SeriesName,
  seriesNames,
} from "./preferred.ts";
