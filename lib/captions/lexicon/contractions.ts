/**
 * Words that stand for several: the rules below see the words on the right. Recognisers leave apostrophes out, so
 * those spellings are listed too. Endings ('s, 're, 've, 'll, n't) are taken apart by rule and need no line here.
 */
export const contractions: Readonly<Record<string, string>> = {
  "won't": "will not",
  "can't": "can not",
  "shan't": "shall not",
  "ain't": "is not",
  cannot: "can not",
  dont: "do not",
  doesnt: "does not",
  didnt: "did not",
  wont: "will not",
  isnt: "is not",
  wasnt: "was not",
  wouldnt: "would not",
  shouldnt: "should not",
  havent: "have not",
  hasnt: "has not",
  thats: "that is",
  theres: "there is",
  youll: "you will",
  youre: "you are",
  ive: "i have",
  im: "i am",
  gonna: "going to",
  wanna: "want to",
  gotta: "got to",
  kinda: "kind of",
  gimme: "give me",
  "'cause": "because",
  cuz: "because",
  coz: "because",
  "'em": "them",
  dunno: "do not know",
  "y'all": "you",
  cos: "because",
  "'cos": "because",
  "let's": "let us",
};

/** Endings taken off a word, and the word each of them stands for. "'s" may be is, has or of; the rules allow for all. */
export const endings: Readonly<Record<string, string>> = {
  "n't": "not",
  "'re": "are",
  "'ve": "have",
  "'ll": "will",
  "'d": "would",
  "'m": "am",
  "'s": "is",
};
