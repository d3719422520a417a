/** Sounds a speaker makes while he thinks. They are no words: "it's, uh, 14" is "it's 14". */
export const hesitations = new Set("um umm uh uhh uhm er erm hm hmm".split(" "));
