import type { Rule } from "../rule.ts";
import { guessOnAJoint } from "./guess-on-a-joint.ts";
import { threadCondition } from "./thread-condition.ts";
import { tighteningOrder } from "./tightening-order.ts";

/** Rules about what belongs to the value of a joint. */
export const jointRules: readonly Rule[] = [threadCondition, tighteningOrder, guessOnAJoint];
