export {
  dilutionReadings,
  gramsFor,
  mixPercent,
  mixRatio,
  oilFor,
  type Recipe,
  recipeNamed,
  recipes,
  stockFor,
} from "./mixes.ts";
