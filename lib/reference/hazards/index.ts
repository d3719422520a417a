/** Hazards of the workshop and what usually is said of them, each with its source. Nothing here calls anything safe. */
export { type StatementCode, statements } from "./statements.ts";
export { type Substance, substances } from "./substances.ts";
export { cautionsFor, type UsualCaution, usualCautions } from "./usual.ts";
