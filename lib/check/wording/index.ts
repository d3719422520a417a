import type { Rule } from "../rule.ts";
import { lateCondition } from "./late-condition.ts";
import { longSentence } from "./long-sentence.ts";
import { missingStep } from "./missing-step.ts";
import { numberAlone } from "./number-alone.ts";
import { orderInNote } from "./order-in-note.ts";
import { reverseOfRemoval } from "./reverse-of-removal.ts";
import { twoCommands } from "./two-commands.ts";
import { unitsDisagreeInWords } from "./units-disagree-in-words.ts";
import { vague } from "./vague.ts";
import { verbFirst } from "./verb-first.ts";
import { waitWithoutTime } from "./wait-without-time.ts";
import { weakOrder } from "./weak-order.ts";
import { whichPart } from "./which-part.ts";

/** Rules about the words of a step. They are silent for a build that is not in English. */
export const wordingRules: readonly Rule[] = [
  // what the document itself contradicts
  missingStep,
  unitsDisagreeInWords,
  // what will be misread
  numberAlone,
  waitWithoutTime,
  reverseOfRemoval,
  // what reads badly at the bench
  verbFirst,
  twoCommands,
  lateCondition,
  whichPart,
  vague,
  weakOrder,
  orderInNote,
  longSentence,
];
