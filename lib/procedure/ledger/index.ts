/** The ledger: what has become of every part, from the marks alone. */
export type { Account, Line } from "./account.ts";
export { type Arrival, arrivalOf, arrivalQuestions, type Surveyed } from "./arrival.ts";
export {
  type Asked,
  type AssemblyDraft,
  type AssemblyEntry,
  type AssemblyQuestion,
  assemblyQuestions,
  draftAssembly,
} from "./assembly.ts";
export { type Container, containersOf, type Held } from "./containers.ts";
export { type Circle, type Covering, coveringsOf, legalOrder, type TooEarly, tooEarly } from "./covers.ts";
export { type LedgerEvent, namesIn } from "./events.ts";
export { type Fastener, fastenersOf } from "./fasteners.ts";
export { fold } from "./fold.ts";
export { type FirstReading, firstReadings, type HoldPoint, holdPointsOf } from "./hold-points.ts";
export type { KitEntry } from "./kit.ts";
export { type KitLine, readKit } from "./kit-text.ts";
export { type Ledger, ledgerOf, putsOn } from "./ledger.ts";
export { type Gained, knownOf, offOf, onOf, type Pool, type Pools } from "./pieces.ts";
export { type KitAccount, reconcileKits } from "./reconcile.ts";
export { oneSaid, type Seating, seatingsOf } from "./seats.ts";
export {
  type Clocks,
  runningSoak,
  type Soak,
  type SoakState,
  soakState,
  soaksOf,
  wallTimeOf,
  writtenTime,
} from "./soaks.ts";
export { type Layer, type Stack, type StackDifference, sayMillimetres, stacksOf } from "./stacks.ts";
export { type WhereWasI, whereWasI } from "./where.ts";
export { type WrittenDraft, writeDraft } from "./write-draft.ts";
