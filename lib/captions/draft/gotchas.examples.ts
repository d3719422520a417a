import type { Example } from "./rule.ts";

/** What the rule for gotchas must find, and must leave alone. */
export const gotchaExamples: readonly Example[] = [
  {
    said: "The washer goes in two ways round and only one of them works.",
    gives: ["The washer goes in two ways"],
  },
  { said: "It's left hand. It's the only left hand thread on the whole motor.", gives: ["It's left hand"] },
  {
    said: "The parts diagram shows both of them facing the same way. It's wrong.",
    gives: ["The parts diagram"],
  },
  { said: "The kit came with two springs and they look identical.", gives: ["The kit came with"] },
  {
    said: "The shaft has to go in before the pinion, because once the pinion's in you can't get the pin past it.",
    gives: ["The shaft has to go"],
  },
  { said: "I found that out with everything else bolted up.", gives: ["I found that out"] },
  { said: "It goes up to the saddle.", gives: [] },
  { said: "That's the wheel off.", gives: [] },
];
