export { type AircraftTorque, aircraftTorque, aircraftTorques } from "./aircraft-torque.ts";
export {
  gradesByLines,
  ksi,
  markSuitsThread,
  nominalStrength,
  type StrengthClass,
  strengthClass,
  strengthClasses,
} from "./classes.ts";
export {
  againstEstimate,
  type Lubrication,
  leastEngagement,
  proofLoad,
  softMetalCeiling,
  stressArea,
  stressAreaInch,
  stressAreaMetric,
  type TappedMetal,
  type TorqueEstimate,
  torqueFactor,
  torqueFor,
} from "./load.ts";
