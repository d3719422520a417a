export { type Clearance, clearanceFor, inchClearanceRows, metricClearanceRows } from "./clearance.ts";
export {
  allDrills,
  type Drill,
  type DrillSet,
  drillNamed,
  drillsNear,
  fraction,
  fractionDrills,
  letterDrills,
  metricDrills,
  numberDrills,
} from "./drill.ts";
export {
  drillForPercent,
  type TapDrill,
  tapDrillFor,
  tapDrillSuits,
  tapDrillsAround,
  threadPercent,
  threadPercentOf,
} from "./tapping.ts";
