/** Numbers that are no measurements, by the words about them. */

/** Behind a number: money. */
export const moneyBehind = new Set(
  "quid dollar dollars buck bucks cent cents pence p penny pennies euro euros grand tenner fiver shilling shillings bob".split(
    " ",
  ),
);

/** Behind a number: people who watch, and other counts of the film's own. */
export const audienceBehind = new Set(
  "of subscribers subscriber viewers views view people followers comments likes members patrons folks episodes videos".split(
    " ",
  ),
);

/** Before a number: it is a name and not an amount. */
export const labelBefore = new Set(
  "number numbers no part parts model type mark mk grade chapter episode serial page figure fig sae iso series dash step day week lesson version channel volume road route hole cylinder size gauge station class bearing drawing sheet plate item valve socket pin position test gear speed room age aged r c v q".split(
    " ",
  ),
);

/** Behind a number: it names a grade or a sort. */
export const gradeBehind = new Set(
  "weight grade grit gauge series dash something grain ply cotton proof".split(" "),
);

/** Before a number that counts something already spoken of. */
export const countBefore = new Set(
  "another other all both only the these those every each first last next my your his her any some no took takes".split(
    " ",
  ),
);

/** Behind "half" or "quarter": a part's name or a figure of speech. */
export const notAfterHalf = new Set(
  "nut nuts moon full empty way time dead round link links shell shells asleep hour decent light past to term price of the it shaft cup built as plate light".split(
    " ",
  ),
);

/** Sayings in which a unit is no unit. */
export const sayings = [
  "count to ten/three/five/10/3/5",
  "miles away/off/from/better/out",
  "a mile away/off",
  "six foot under",
  "inch by inch",
  "give an inch",
  "a ton of",
  "every inch of",
  "by a mile",
  "a hundred percent",
  "one hundred percent",
  "100 percent",
  "100 %",
  "pounds lighter",
  "pint down/at the pub",
  "for a pint",
  "one second",
  "two seconds",
  "a degree in",
] as const;

/** Bets: "ten to one it's the coil". */
export const betWords = new Set("odds bet bets betting chance chances reckon says".split(" "));

/** Verbs that show a distance travelled to belong to the work: "run it in for fifty miles". */
export const travelWords = new Set(
  "run running ride ridden rode drive mileage bed bedded retorque check".split(" "),
);
