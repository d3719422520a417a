export { type Bearing, bearing, bearings, bearingsSized } from "./bearing.ts";
