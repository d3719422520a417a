export {
  clearanceLost,
  type Expansion,
  expansionOf,
  expansions,
  growth,
  perFahrenheit,
  riseFor,
  spill,
  volumeExpansions,
} from "./expansion.ts";
