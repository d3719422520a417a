export { toMeasurementsCsv } from "./measurements-csv.ts";
