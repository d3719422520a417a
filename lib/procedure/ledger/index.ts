/** The ledger: what has become of every part, from the marks alone. */
export type { Account, Line } from "./account.ts";
export { fold, type LedgerEvent, namesIn } from "./events.ts";
export type { KitEntry } from "./kit.ts";
export { type KitLine, readKit } from "./kit-text.ts";
export { type Ledger, ledgerOf, putsOn } from "./ledger.ts";
export { type Gained, knownOf, offOf, onOf, type Pool, type Pools } from "./pieces.ts";
export { type KitAccount, reconcileKits } from "./reconcile.ts";
