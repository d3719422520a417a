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
