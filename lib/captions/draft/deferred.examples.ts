import type { Example } from "./rule.ts";

/** What the rule for things left provisional must find, and must leave alone. */
export const deferredExamples: readonly Example[] = [
  {
    said: "The face plate screw is only finger tight because I've got to come back and shim the bush.",
    gives: ["The face plate screw"],
  },
  {
    said: "I've put the old spring back, but it's temporary till I find one.",
    gives: ["I've put the old spring"],
  },
  { said: "The cotter's an old one, it's just bent over for now.", gives: ["The cotter's an old one"] },
  { said: "I'll torque them after the first hundred sheets.", gives: ["I'll torque them"] },
  { said: "The cover goes back on with four screws.", gives: [] },
];
