/** What can be wrong: a book, a label, a kit. */
export const documents = new Set(
  "breakdown picture view photo photograph book manual diagram drawing schematic instructions packet kit label sheet leaflet catalogue catalog listing parts sticker handbook poster video chart marks markings".split(
    " ",
  ),
);

/** What a hand before did to a machine. */
export const bodgedWords = new Set(
  "packed screwed forced bodged glued drilled welded soldered put fitted used cut filed shoved swapped moved bent wired hammered replaced stuck jammed left reversed".split(
    " ",
  ),
);

/** What a thing did that was done wrong. */
export const wentWrong = new Set(
  "burned burnt broke snapped cracked jammed stuck fell dropped came stripped split bent locked leaked seized slipped sheared melted blew tore".split(
    " ",
  ),
);

/** What people do with a part that they should not. */
export const misdeeds = new Set(
  "throw throws leave leaves skip skips lose loses drop drops pull pulls pry pries cut cuts hit hits bend bends break breaks force forces overtighten overtightens ignore ignores mix mixes swap swaps order orders".split(
    " ",
  ),
);
