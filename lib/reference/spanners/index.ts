export type { Jaw, JawScale } from "./jaws.ts";
export { allJaws, hexagonsOf, type JawNear, jawMarked, spannersNear } from "./spanners.ts";
