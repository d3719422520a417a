export {
  againstLimits,
  type Deviation,
  type Fit,
  fit,
  fitOf,
  holeDeviation,
  type Limits,
  limitsOf,
  pairing,
  shaftDeviation,
  usualFits,
} from "./fit.ts";
export { type Grade, gradeRows, toleranceGrade } from "./grades.ts";
