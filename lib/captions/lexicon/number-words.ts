/** Numbers below a hundred as they are said. */
export const smallNumbers: ReadonlyMap<string, number> = new Map([
  ...list(
    "zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen",
    (i) => i,
  ),
  ...list("twenty thirty forty fifty sixty seventy eighty ninety", (i) => 20 + 10 * i),
  ["fourty", 40] as const,
]);

/** Single figures as they are said behind "point": "point oh one five". */
export const spokenFigures: ReadonlyMap<string, string> = new Map([
  ...list("zero one two three four five six seven eight nine", (i) => `${i}`),
  ["oh", "0"],
  ["o", "0"],
  ["nought", "0"],
  ["naught", "0"],
  ["nil", "0"],
]);

/** What may stand for nothing before "point". */
export const noughts = new Set(["oh", "nought", "naught", "zero", "o"]);

/** Parts of one, by the number they divide it in. Some are heard as other words ("three eights"). */
export const partWords: ReadonlyMap<string, number> = new Map(
  Object.entries({
    half: 2,
    halves: 2,
    third: 3,
    thirds: 3,
    quarter: 4,
    quarters: 4,
    fourth: 4,
    fourths: 4,
    fifth: 5,
    fifths: 5,
    sixth: 6,
    sixths: 6,
    eighth: 8,
    eighths: 8,
    eights: 8,
    tenth: 10,
    tenths: 10,
    twelfth: 12,
    twelfths: 12,
    sixteenth: 16,
    sixteenths: 16,
    sixteens: 16,
    twentieth: 20,
    twentieths: 20,
    hundredth: 100,
    hundredths: 100,
    "8th": 8,
    "8ths": 8,
    "16th": 16,
    "16ths": 16,
    "32nd": 32,
    "32nds": 32,
    "64th": 64,
    "64ths": 64,
    "10th": 10,
    "10ths": 10,
  }),
);

/** Parts of one that are said in two words. */
export const twoWordParts: readonly (readonly [string, ReadonlySet<string>, number])[] = [
  ["thirty", new Set(["second", "seconds"]), 32],
  ["sixty", new Set(["fourth", "fourths"]), 64],
];

/** Parts that are ordinals as well: "the third one". They count only with "of a" or a unit behind them. */
export const ordinalParts = new Set(
  "third fourth fifth sixth tenth twelfth eighth sixteenth twentieth hundredth".split(" "),
);

function list<T>(words: string, value: (i: number) => T): (readonly [string, T])[] {
  return words.split(" ").map((word, i) => [word, value(i)] as const);
}
