import type { Example } from "./rule.ts";

/** What the rule for cautions must find, and must leave alone. */
export const cautionExamples: readonly Example[] = [
  { said: "Don't ream sintered bronze, you smear the pores shut.", gives: ["Don't ream sintered bronze"] },
  { said: "Never reach in there with the wheel turning.", gives: ["Never reach"] },
  {
    said: "Mind your fingers when you spin it, the lever comes down like a guillotine.",
    gives: ["Mind your fingers"],
  },
  { said: "Keep your sleeves out of that flywheel.", gives: ["Keep your sleeves"] },
  { said: "Wear your goggles for that bit.", gives: ["Wear your goggles"] },
  {
    said: "Hold the lead screw up when the last bolt comes out, because it'll drop.",
    gives: ["Hold the lead screw"],
  },
  { said: "I wouldn't go past seven foot pound.", gives: ["I wouldn't go past"] },
  { said: "When you run it in the barrel, pull the prop. I mean it.", gives: ["When you run it"] },
  { said: "you do not want to be leaning on that", gives: ["you do not want"] },
  { said: "I don't know what that is.", gives: [] },
  { said: "They don't make them any more.", gives: [] },
  { said: "Don't tell the wife.", gives: [] },
  { said: "Should I be wearing gloves? No, you're fine.", gives: [] },
  { said: "People say you mustn't clean it with a wire wheel. Rubbish, it's fine.", gives: [] },
  { said: "You don't need to take the cover off.", gives: [] },
];
