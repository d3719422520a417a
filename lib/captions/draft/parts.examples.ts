import type { Example } from "./rule.ts";

/** What the rule for parts must find, and must leave alone. */
export const partExamples: readonly Example[] = [
  { said: "The belt has had it, it's gone hard, so that's a new one.", gives: ["replace belt"] },
  { said: "The feed dogs are worn but I'm going to reuse them.", gives: ["reuse feed dogs"] },
  { said: "I turned up a new thrust washer, phosphor bronze.", gives: ["make thrust washer"] },
  { said: "The worm, clean it, stone it, put it back.", gives: ["repair worm"] },
  { said: "Two new seals.", gives: ["replace seals"] },
  { said: "Press in a sintered bronze bush.", gives: ["fit sintered bronze bush"] },
  { said: "Don't reuse those washers.", gives: [] },
  { said: "The new one's too stiff.", gives: [] },
];
