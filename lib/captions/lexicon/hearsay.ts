/** Jokes: "don't tell the wife". */
export const jokeWords = new Set(
  "wife husband missus mother mum mom dad boss accountant taxman landlord neighbours neighbors cat dog kids subscribe comment comments youtube bank police vicar".split(
    " ",
  ),
);

/** Questions that a "no" answers away: "should I be wearing gloves? no, you're fine". */
export const dangerQuestions = [
  "is it *2 dangerous/safe",
  "is any of this",
  "is this dangerous/safe",
  "is it going to",
  "is this going to",
  "will it *2 explode/hurt/kill/bite/burn/blow/catch",
  "do i/you/we need",
  "do i/you/we have to",
  "should i/you/we",
  "does it need",
  "do you have to",
  "is it worth",
  "are you supposed to",
] as const;

/** How such a question is answered away. */
export const refusals = new Set(
  "no nah nope rubbish nonsense fine relax kidding heck never course rarely".split(" "),
);

/** What others say, to be denied in the next breath. */
export const hearsay = [
  "people/folk/folks/some/blokes/chaps/lads/fellas/guys/others/experts *1 say/says/tell/reckon/think/swear/insist/claim/warn",
  "people/folk/folks/some *1 {plain} say/tell/reckon/think/swear/insist/claim",
  "people say/tell/reckon/think/will",
  "people always say",
  "they say/tell/reckon",
  "they will tell",
  "some people say/tell/reckon/think",
  "everybody/everyone *8 says/tells/reckons/said",
  "somebody/someone said/says/told/asked",
  "you will hear",
  "you hear people",
  "the internet says/reckons",
  "the forum/forums/books say/says/reckons",
  "folks say/will tell/tell",
] as const;

/** How what others say is denied. */
export const denials = [
  "hogwash",
  "bunkum",
  "twaddle",
  "tosh",
  "load of",
  "do not listen",
  "ignore them",
  "never had any",
  "i always have",
  "i always do",
  "it does not",
  "not so",
  "no it does not",
  "no you do not",
  "you do not have to",
  "no it is not",
  "rubbish",
  "nope",
  "nonsense",
  "baloney",
  "that is not true",
  "not true",
  "it is fine",
  "that is fine",
  "they are wrong",
  "you do not need",
  "no need",
  "never had a problem",
  "never done me any harm",
  "do not believe it",
  "you are fine",
  "poppycock",
  "codswallop",
  "old wives",
  "i never have",
  "it does not matter",
  "makes no difference",
] as const;
