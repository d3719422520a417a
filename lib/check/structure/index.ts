import type { Rule } from "../rule.ts";
import { consumableNotListed } from "./consumable-not-listed.ts";
import { neverProved } from "./never-proved.ts";
import { noWayBack } from "./no-way-back.ts";
import { onePartTwoNames } from "./one-part-two-names.ts";
import { toolNotListed } from "./tool-not-listed.ts";

/** Rules about what a procedure has to have beside its steps. */
export const structureRules: readonly Rule[] = [
  onePartTwoNames,
  toolNotListed,
  consumableNotListed,
  noWayBack,
  neverProved,
];
