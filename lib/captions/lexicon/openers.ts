/**
 * Words that begin a new thought. Automatic captions often have no full stops; then these, and silences, part the
 * sentences. Behind some words the same word means something else ("so far", "or so").
 */
export const openers: ReadonlyMap<string, { notBefore?: string; notAfter?: string }> = new Map([
  ["okay", {}],
  ["ok", {}],
  ["alright", {}],
  ["anyway", {}],
  [
    "so",
    {
      notBefore: "far much many long tight hard tightly on called soft thin small big stiff bad",
      notAfter: "or think do not is are hope ever just be was mine say",
    },
  ],
  [
    "now",
    {
      notBefore: "and is for it on or when",
      notAfter: "for by right until till is are just up from even and",
    },
  ],
  ["oh", { notBefore: "one two three four five six seven eight nine" }],
  ["then", { notAfter: "and but since by now or until till back" }],
]);

/** Words that begin a clause within a sentence. */
export const joiners = new Set(
  "and but so because which if when once until till unless otherwise or while though although then except since whereas".split(
    " ",
  ),
);

/** Words with which a restorer turns to the next thing, where a sentence begins with them. */
export const topicWords = new Set("right okay ok alright next now first then last anyway".split(" "));
