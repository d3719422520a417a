/** The rules of drafting, one for each kind of mark. */
import { actions } from "./actions.ts";
import { cautions } from "./cautions.ts";
import { deferred } from "./deferred.ts";
import { gotchas } from "./gotchas.ts";
import { measurements } from "./measure/measurements.ts";
import { parts } from "./parts.ts";
import type { DraftRule } from "./rule.ts";
import { consumables, tools } from "./tools.ts";

/** By the kind of mark that each proposes. */
export const draftRules: Readonly<Record<string, DraftRule>> = {
  caution: cautions,
  action: actions,
  part: parts,
  measurement: measurements,
  tool: tools,
  consumable: consumables,
  gotcha: gotchas,
  deferred,
};
