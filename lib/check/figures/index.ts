import type { Rule } from "../rule.ts";
import { lineUndrawn } from "./line-undrawn.ts";
import { partNotPointedOut } from "./part-not-pointed-out.ts";

/** Rules about what is drawn on pictures. */
export const figureRules: readonly Rule[] = [lineUndrawn, partNotPointedOut];
