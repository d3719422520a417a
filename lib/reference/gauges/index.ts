export { type CopperWire, copperAt, copperResistivity, copperWire } from "./copper.ts";
export {
  awgInches,
  type GaugeSize,
  type GaugeSystem,
  gaugeNumber,
  gaugeSize,
  gaugesNear,
  gaugeText,
  screwInches,
  sheetInches,
  swgInches,
} from "./wire.ts";
