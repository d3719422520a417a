/**
 * The pools in which pieces of one item lie. On the machine are `on`, and `trialOld` and `trialNew`: put on for a
 * trial, with where they go back to. Off it are `cameOff` and `fresh`: new, and not fitted yet.
 */
export interface Pools {
  on: number;
  trialOld: number;
  trialNew: number;
  cameOff: number;
  fresh: number;
  leftOut: number;
  scrapped: number;
}
export type Pool = keyof Pools;

export const noPieces: Pools = {
  on: 0,
  trialOld: 0,
  trialNew: 0,
  cameOff: 0,
  fresh: 0,
  leftOut: 0,
  scrapped: 0,
};

/** How pieces became known: they came with the machine, were obtained, made, or went on from nowhere. */
export interface Gained {
  found: number;
  obtained: number;
  made: number;
  unexplained: number;
}
export const nothingGained: Gained = { found: 0, obtained: 0, made: 0, unexplained: 0 };

/** One movement of pieces of one item. */
export interface Move {
  act: "off" | "obtain" | "make" | "on" | "new on" | "scrap" | "leave";
  /** Null where it was not said: all there are to move, else one. */
  count: number | null;
  trial: boolean;
  /** It is the old pieces that are scrapped or left out, never new ones that wait to be fitted. */
  old: boolean;
  /** New pieces that may be drawn upon without an event of their own: a kit's, or what the mark says where from. */
  reserve: number;
}

/** What a movement came to. */
export interface Moved {
  after: Pools;
  count: number;
  gained: Gained;
  /** From which pools pieces were taken. */
  from: Partial<Pools>;
  /** How many of the reserve were drawn. */
  drawn: number;
}

/** Moves pieces. None is lost, and each that was not known before is counted as gained. */
export function move(before: Pools, wanted: Move): Moved {
  const count = wanted.count ?? supposed(before, wanted);
  const taken = take(before, sourcesOf(wanted), count);
  const drawn = drawsOn(wanted) ? Math.min(taken.short, wanted.reserve) : 0;
  const rest = taken.short - drawn;
  const after = { ...taken.left };
  if (wanted.act === "off") {
    // A trial is undone to where its pieces came from.
    after.fresh += taken.from.trialNew ?? 0;
    after.cameOff += count - (taken.from.trialNew ?? 0);
  } else if (isOn(wanted) && wanted.trial) {
    const old = (taken.from.cameOff ?? 0) + (taken.from.trialOld ?? 0);
    after.trialOld += old;
    after.trialNew += count - old;
  } else after[into(wanted)] += count;
  return { after, count, from: taken.from, drawn, gained: gainedBy(wanted, drawn, rest) };
}

/** On the machine, trials among them. */
export function onOf(pools: Pools): number {
  return pools.on + pools.trialOld + pools.trialNew;
}

/** Off the machine, old and new. */
export function offOf(pools: Pools): number {
  return pools.cameOff + pools.fresh;
}

/** All that are known. */
export function knownOf(pools: Pools): number {
  return onOf(pools) + offOf(pools) + pools.leftOut + pools.scrapped;
}

function isOn({ act }: Move): boolean {
  return act === "on" || act === "new on";
}

function drawsOn(wanted: Move): boolean {
  return isOn(wanted) || ((wanted.act === "leave" || wanted.act === "scrap") && !wanted.old);
}

/** From which pools an act takes, the likeliest first. What none of them has is new to the account. */
function sourcesOf({ act, trial, old }: Move): Pool[] {
  switch (act) {
    case "off":
      return ["trialNew", "trialOld", "on"];
    case "on":
      return trial ? ["fresh", "cameOff"] : ["trialNew", "trialOld", "fresh", "cameOff"];
    case "new on":
      return trial ? ["fresh"] : ["trialNew", "fresh"];
    case "scrap":
    case "leave":
      return old ? ["cameOff", "on"] : ["cameOff", "fresh", "trialNew", "trialOld", "on"];
    default:
      return [];
  }
}

function take(before: Pools, pools: Pool[], count: number) {
  const left = { ...before };
  const from: Partial<Pools> = {};
  let short = count;
  for (const pool of pools) {
    const some = Math.min(short, left[pool]);
    if (some === 0) continue;
    left[pool] -= some;
    from[pool] = some;
    short -= some;
  }
  return { left, from, short };
}

function into({ act }: Move): Pool {
  if (act === "scrap") return "scrapped";
  if (act === "leave") return "leftOut";
  return act === "obtain" || act === "make" ? "fresh" : "on";
}

function gainedBy(wanted: Move, drawn: number, rest: number): Gained {
  const gained = { ...nothingGained, obtained: drawn };
  if (wanted.act === "obtain") gained.obtained += rest;
  else if (wanted.act === "make") gained.made = rest;
  else if (isOn(wanted)) gained.unexplained = rest;
  else gained.found = rest;
  return gained;
}

/** How many a mark means that does not say: all that can be moved so, else one. */
function supposed(pools: Pools, { act, trial }: Move): number {
  const trials = pools.trialOld + pools.trialNew;
  const there = {
    off: trials || pools.on,
    obtain: 0,
    make: 0,
    on: (trial ? 0 : trials) || pools.fresh || pools.cameOff,
    "new on": (trial ? 0 : pools.trialNew) || pools.fresh,
    scrap: pools.cameOff,
    leave: pools.cameOff || pools.fresh,
  };
  return there[act] || 1;
}
