/**
 * Words with which a speaker takes back a number just said. The next number of the same kind replaces it. "Hang on"
 * alone takes nothing back: people say it while they read an instrument.
 */
export const takingBack = [
  "no hang on",
  "no hold on",
  "no wait",
  "no sorry",
  "no *2 tell a lie",
  "tell a lie",
  "i tell a lie",
  "told a lie",
  "i am lying",
  "i lie",
  "scratch that",
  "strike that",
  "correction",
  "make that",
  "or rather",
  "i beg your pardon",
  "what am i saying",
  "that can not be right",
  "that is not right",
  "that is wrong",
  "let me check that",
  "sorry",
  "wait",
  "no what did i",
  "no that is the old/other/wrong one",
  "no not {number}",
  "no it is not",
  "no it was",
  "no it is",
  "no i have got",
  "no i have",
  "no i am",
  "no i",
  "no no",
  "no actually",
  "actually no",
  "i mean {number}",
] as const;

/** With these a speaker takes back every number of the sentence before: two were changed over. */
export const changedOver = [
  "the wrong way round/about/around",
  "the other way round/around/about",
  "backwards/mixed up",
] as const;
