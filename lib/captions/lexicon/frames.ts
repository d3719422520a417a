/**
 * Where a number without a unit may be a measurement that goes on from the last one: "…18 thou of backlash. Book says
 * anything over 12."
 */

/** Words that lead up to such a number. */
export const leadingWords = new Set(
  "is was are were be being reads read reading measures measured measure get got getting gives gave give giving make made makes showing shows say says said call calls called came comes come at to under over within below above want wants wanted need needs needed should spec limit max maximum min minimum allow allows between from went opened opens pops popped set gapped running doing seeing see saw marked stamped exactly now used than past beyond exceed had have has on book manual reckon lifts lifted blew trips tripped cut turned ground opened closed dropped down up then".split(
    " ",
  ),
);

/** Words that may stand between them and the number. */
export const fillers = new Set(
  "it them those that me about around roughly more barely hardly scarcely nearly almost maybe perhaps probably like just only still even er uh um erm well exactly bang dead really the right a".split(
    " ",
  ),
);

/** Words that may follow it, where no comma or full stop does. */
export const followingWords = new Set(
  "and but so which at on in inside outside out for after before with now max maximum minimum tops or off when because that then there here even both across wide long deep thick high tall from all to near ish if as where while today instead either per each yesterday over cold hot dry free you i it we they he she so near a until till dial right exactly by loose tight total together who is was today again okay thick round square diameter bore front rear left right top bottom of flat maybe running".split(
    " ",
  ),
);

/** How a length lies, behind the figure: "a quarter thick", "twelve outside". */
export const sizeWords = new Set(
  "thick thickness outside inside wide width long length deep depth high height tall bore diameter dia across id od strong round around square hex flat apart above below centres centers radius".split(
    " ",
  ),
);

/** What has the size, behind a fraction: "five eighths shaft". Behind a whole number it is counted: "five pin". */
export const sizeNouns = new Set(
  "shaft bar rod plate drill pin round felt leather ball balls bearing tube pipe dowel reamer socket spanner stock cord line stroke lift wire key keyway bolt stud hole travel throw pitch sheet strip".split(
    " ",
  ),
);

/** Words that tell what a bare number near them measures: the unit last said for that goes on, however far back. */
export const hintWords: readonly (readonly [string, string])[] = [
  [
    "rotational speed",
    "running runs revs speed speeds idle idles idling tickover governed governor spinning fast motor doing",
  ],
  ["voltage", "bias volts ht heater grid screen anode rail supply"],
  ["angle", "amplitude"],
  ["torque", "torque torqued tighten tightened tightening"],
  ["pressure", "compression pressure pops popped pop lifts bleeds pumped gauge"],
  ["current", "draws drawing current draw"],
  ["temperature", "degrees temperature hot oven thermometer"],
  ["mass", "weighs weighed weigh weight scale scales"],
  ["force", "pull tension"],
  ["frequency", "dial kilocycles beat beats"],
  [
    "length",
    "gap gapped clearance backlash float runout wide long length free thick thickness deep depth across bore diameter feeler thou width height",
  ],
];
