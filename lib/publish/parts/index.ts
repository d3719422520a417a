export { toPartsCsv } from "./parts-csv.ts";
