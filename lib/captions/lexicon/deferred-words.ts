/** What nothing is made of for good. */
export const makeshift = new Set(
  "hardboard plywood wood offcut offcuts string tape cardboard bungee gaffer twine bootlace shoelace matchstick matchsticks paperclip plasticine blutack clingfilm elastic baler coathanger".split(
    " ",
  ),
);

/** How a thing is held that is not done up. */
export const heldWords = new Set(
  "glued twisted clamped taped tied wired pinned wedged propped tacked nipped snugged pinched clipped balanced stuck held".split(
    " ",
  ),
);

/** What is done later to put a thing right. */
export const rightedVerbs = new Set(
  "clean switch change swap replace redo fix sort paint make fit set adjust nip tighten torque true time shim pin peen glue solder wire drill order".split(
    " ",
  ),
);

/** When it is to be done. */
export const seasonWords = new Set(
  "christmas easter winter spring summer autumn weekend tomorrow monday tuesday wednesday thursday friday saturday sunday january february march april may june july august september october november december".split(
    " ",
  ),
);

/** With these a speaker begins to tell what is not done yet: "so what's left?" */
export const leftHeadings = [
  "what is left",
  "what have i got left",
  "what is still to do",
  "still to do",
  "left to do",
  "what i have not done",
  "what is not done",
  "what i is not done",
  "things left to do",
  "bits left to do",
  "to finish off",
  "jobs left",
  "snags",
  "snag list",
] as const;

/** What is said of a part in such a list. */
export const leftStates = new Set(
  "just only old loose missing not wants needs want need still until till chipped bare rough untouched unfinished temporary next later".split(
    " ",
  ),
);
