import type { Rule } from "../rule.ts";
import { anotherNumber } from "./another-number.ts";
import { anotherPlace } from "./another-place.ts";
import { countsDiffer } from "./counts-differ.ts";
import { coversInACircle } from "./covers-in-a-circle.ts";
import { deferredWaitsForNothing } from "./deferred-waits-for-nothing.ts";
import { fittedBeforeCovered } from "./fitted-before-covered.ts";
import { holdPoint } from "./hold-point.ts";
import { kitLeftOver } from "./kit-left-over.ts";
import { kitNotToUse } from "./kit-not-to-use.ts";
import { kitShort } from "./kit-short.ts";
import { neverObtained } from "./never-obtained.ts";
import { notTorqued } from "./not-torqued.ts";
import { obtainedNotUsed } from "./obtained-not-used.ts";
import { onlyTrialFitted } from "./only-trial-fitted.ts";
import { partNotBack } from "./part-not-back.ts";
import { partUnsaid } from "./part-unsaid.ts";
import { scrappedNotReplaced } from "./scrapped-not-replaced.ts";
import { singleUseRefitted } from "./single-use-refitted.ts";
import { soakTime } from "./soak-time.ts";
import { stackDiffers } from "./stack-differs.ts";
import { stackThickness } from "./stack-thickness.ts";
import { swapped } from "./swapped.ts";
import { turnedRound } from "./turned-round.ts";

/** The rules over the ledger, in the order in which they speak. */
export const partRules: readonly Rule[] = [
  // parts off = parts on
  partNotBack,
  countsDiffer,
  neverObtained,
  obtainedNotUsed,
  scrappedNotReplaced,
  onlyTrialFitted,
  partUnsaid,
  // each in its place, and the right way round
  stackDiffers,
  stackThickness,
  swapped,
  anotherPlace,
  turnedRound,
  anotherNumber,
  fittedBeforeCovered,
  coversInACircle,
  // held, and once
  notTorqued,
  singleUseRefitted,
  // kits
  kitNotToUse,
  kitShort,
  kitLeftOver,
  // left for later
  soakTime,
  holdPoint,
  deferredWaitsForNothing,
];
