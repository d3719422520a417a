import type { Rule } from "../rule.ts";
import { cautionAfterAct } from "./caution-after-act.ts";
import { cautionWithoutSource } from "./caution-without-source.ts";
import { hazardWithoutCaution } from "./hazard-without-caution.ts";
import { noticeOfInjury } from "./notice-of-injury.ts";
import { saysSafe } from "./says-safe.ts";
import { tooManyCautions } from "./too-many-cautions.ts";

/** Rules about messages that protect people. */
export const safetyRules: readonly Rule[] = [
  hazardWithoutCaution,
  cautionAfterAct,
  noticeOfInjury,
  saysSafe,
  cautionWithoutSource,
  tooManyCautions,
];
