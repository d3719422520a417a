import type { Entry, EntryFinding } from "./entry.ts";
import type { EntryRule } from "./rule.ts";
import { againstRelated } from "./rules/against-related.ts";
import { againstSpec } from "./rules/against-spec.ts";
import { anotherKind } from "./rules/another-kind.ts";
import { belowNought } from "./rules/below-nought.ts";
import { beltLength } from "./rules/belt-length.ts";
import { boltCircle } from "./rules/bolt-circle.ts";
import { boltLength } from "./rules/bolt-length.ts";
import { boltSize } from "./rules/bolt-size.ts";
import { camSpeed } from "./rules/cam-speed.ts";
import { capacitorCode } from "./rules/capacitor-code.ts";
import { ceilings } from "./rules/ceilings.ts";
import { cells } from "./rules/cells.ts";
import { clockTrain } from "./rules/clock-train.ts";
import { colourCode } from "./rules/colour-code.ts";
import { compoundTrain } from "./rules/compound-train.ts";
import { contradiction } from "./rules/contradiction.ts";
import { densityOf } from "./rules/density.ts";
import { dividingHead } from "./rules/dividing-head.ts";
import { electricalRatings } from "./rules/electrical-ratings.ts";
import { electrics } from "./rules/electrics.ts";
import { engine } from "./rules/engine.ts";
import { fitClass } from "./rules/fit-class.ts";
import { follows } from "./rules/follows.ts";
import { fullCircle } from "./rules/full-circle.ts";
import { gainsOrLoses } from "./rules/gains-or-loses.ts";
import { gears } from "./rules/gears.ts";
import { headOfWater } from "./rules/head-of-water.ts";
import { holeFor } from "./rules/hole-for.ts";
import { instrument } from "./rules/instrument.ts";
import { lossInPercent } from "./rules/loss-in-percent.ts";
import { markedUnit } from "./rules/marked-unit.ts";
import { milliOrMicro } from "./rules/milli-or-micro.ts";
import { mixTold } from "./rules/mix-told.ts";
import { mixes } from "./rules/mixes.ts";
import { motorSpeed } from "./rules/motor-speed.ts";
import { namedElsewhere } from "./rules/named-elsewhere.ts";
import { noneAndSome } from "./rules/none-and-some.ts";
import { oppositeWord } from "./rules/opposite-word.ts";
import { order } from "./rules/order.ts";
import { pairFit } from "./rules/pair-fit.ts";
import { pairedNames } from "./rules/paired-names.ts";
import { pitchCount } from "./rules/pitch-count.ts";
import { pressureOrder } from "./rules/pressures.ts";
import { rimSpeed } from "./rules/rim-speed.ts";
import { roundSizes } from "./rules/round.ts";
import { screwTravel } from "./rules/screw-travel.ts";
import { shrink } from "./rules/shrink.ts";
import { sideBySide } from "./rules/side-by-side.ts";
import { sineBar } from "./rules/sine-bar.ts";
import { smallerUnit } from "./rules/smaller-unit.ts";
import { spanner } from "./rules/spanner.ts";
import { spokes } from "./rules/spokes.ts";
import { sums } from "./rules/sums.ts";
import { swappedRange } from "./rules/swapped-range.ts";
import { tally } from "./rules/tally.ts";
import { threadDrills } from "./rules/thread-drills.ts";
import { threadMates } from "./rules/thread-mates.ts";
import { threads } from "./rules/threads.ts";
import { throughRatio } from "./rules/through-ratio.ts";
import { torque } from "./rules/torque.ts";
import { transformerTurns } from "./rules/transformer.ts";
import { turnsTold } from "./rules/turns-told.ts";
import { unitsDisagree } from "./rules/units-disagree.ts";
import { usual } from "./rules/usual.ts";
import { wheelSize } from "./rules/wheel-size.ts";
import { whoseUnit } from "./rules/whose-unit.ts";
import { workedSize } from "./rules/worked-size.ts";
import { workingVoltage } from "./rules/working-voltage.ts";
import { writtenSums } from "./rules/written-sums.ts";
import { years } from "./rules/years.ts";
import { type Decimal, type Sight, sightOf } from "./sight.ts";

/** Every rule about measured values, in the order in which they speak. */
export const entryRules: readonly EntryRule[] = [
  // the figures themselves
  unitsDisagree,
  whoseUnit,
  swappedRange,
  smallerUnit,
  belowNought,
  ceilings,
  writtenSums,
  sums,
  follows,
  order,
  namedElsewhere,
  pairedNames,
  // what is said beside them
  againstSpec,
  anotherKind,
  lossInPercent,
  againstRelated,
  contradiction,
  oppositeWord,
  noneAndSome,
  tally,
  workedSize,
  roundSizes,
  pressureOrder,
  headOfWater,
  densityOf,
  years,
  instrument,
  markedUnit,
  // fasteners and fits
  threads,
  threadMates,
  threadDrills,
  torque,
  spanner,
  pairFit,
  fitClass,
  holeFor,
  boltLength,
  boltSize,
  boltCircle,
  fullCircle,
  // what follows from what
  gears,
  turnsTold,
  compoundTrain,
  throughRatio,
  rimSpeed,
  beltLength,
  dividingHead,
  wheelSize,
  spokes,
  pitchCount,
  screwTravel,
  sineBar,
  camSpeed,
  clockTrain,
  gainsOrLoses,
  motorSpeed,
  electrics,
  sideBySide,
  colourCode,
  capacitorCode,
  milliOrMicro,
  electricalRatings,
  transformerTurns,
  workingVoltage,
  cells,
  mixes,
  mixTold,
  engine,
  shrink,
  // guidance
  usual,
];

/** What the rules say of one measured value. Pure: the same entry gives the same findings. */
export function checkEntry(entry: Entry, decimal: Decimal = "."): EntryFinding[] {
  return findingsOf(sightOf(entry, decimal));
}

/** How many entries are read before the rules are asked: the processor's cache holds the code of the one or of the other. */
const batch = 200;

/** What the rules say of many measured values, in their order: as `checkEntry` for each, in less time. */
export function checkEntries(entries: readonly Entry[], decimal: Decimal = "."): EntryFinding[][] {
  const findings: EntryFinding[][] = [];
  for (let from = 0; from < entries.length; from += batch) {
    const sights = entries.slice(from, from + batch).map((entry) => sightOf(entry, decimal));
    for (const sight of sights) findings.push(findingsOf(sight));
  }
  return findings;
}

function findingsOf(sight: Sight): EntryFinding[] {
  const findings: EntryFinding[] = [];
  for (const rule of entryRules)
    for (const remark of rule.check(sight)) findings.push({ rule: rule.id, source: rule.source, ...remark });
  return findings;
}

export { type Entry, type EntryContext, type EntryFinding, entry } from "./entry.ts";
export type { EntryExample, EntryRule, Remark } from "./rule.ts";
export { readOnce } from "./sight.ts";
