/** Parts of the body that are no parts of machines. */
export const digitWords = new Set(
  "finger fingers thumb thumbs knuckles knuckle skin hair sleeve sleeves cuff wrist toe toes eyebrows fingertip fingertips".split(
    " ",
  ),
);

/** Parts of the body. */
export const bodyWords = new Set(
  "mouth lungs back finger fingers hand hands eye eyes hair sleeve sleeves cuff thumb thumbs face head arm toes feet knuckles knuckle skin fingertips wrist tie clothes clothing ears foot legs".split(
    " ",
  ),
);

/** What is worn against harm. */
export const guardWords = new Set(
  "goggles gloves mask glasses respirator visor specs apron ear-plugs earplugs plugs defenders eyeshield shield muffs chaps helmet gauntlets boots overalls".split(
    " ",
  ),
);

/** Harm done to people: such cautions are of injury. */
export const injuryWords = new Set(
  "finger fingers hand hands eye eyes hair skin cuff sleeves thumb kill shock bite lethal poison asbestos radium lead mercury burn burns live mains charge goggles gloves mask hospital wrist lungs breathe explode".split(
    " ",
  ),
);
