import type { Gotcha } from "#lib/build/index.ts";
import { areContrary, mishapsIn, type Said, saidBy } from "./said.ts";
import { names } from "./words.ts";

/** Two entries that may say the same. */
export interface Alike {
  ids: [string, string];
  /** From 0 to 1. */
  likeness: number;
}

/** From this on two are offered as perhaps the same; chosen on pairs told twice by hand (tests/gotcha/alike.test.ts). */
export const alikeFrom = 0.4;

/** What is left of the likeness of two that tell contrary things (left, right), or mishaps that are not of a kind. */
const AGAINST = 0.5;

/**
 * Pairs that may say the same, most alike first. Where both say why, the two reasons are compared: the same reason at
 * the same assembly is the same trap, however it showed itself. Else the symptoms are, but for the beginning that they
 * share, which names what they are about and not what is the matter with it. What the restorer has said is not the same
 * is not offered again.
 *
 * @param only pairs with this one alone, as when it is being written
 */
export function alikes(gotchas: readonly Gotcha[], only?: Gotcha): Alike[] {
  const present = gotchas.filter(
    (one) => one.gone === null && one.joinedInto === null && one.id !== only?.id,
  );
  const all = (only ? [only, ...present] : present).map(saidBy);
  const weigh = rarity(all);
  const pairs: Alike[] = [];
  const meet = meeting();
  const compare = (one: Said, other: Said) => {
    if (!couldBeSame(one, other, meet)) return;
    const likeness = likenessOf(one, other, weigh);
    if (likeness >= alikeFrom) pairs.push({ ids: [one.gotcha.id, other.gotcha.id], likeness });
  };
  const [first, ...others] = all;
  if (only && first) for (const other of others) compare(first, other);
  else eachThatCould(all, weigh, compare);
  return pairs.sort((a, b) => b.likeness - a.likeness);
}

/** How much a term tells: the rarer among the entries, the more. */
type Weigh = (term: string) => number;

/** The square of the logarithm of the number of entries over that of those which have the term. */
function rarity(all: readonly Said[]): Weigh {
  const count = new Map<string, number>();
  for (const said of all) for (const term of said.all) count.set(term, (count.get(term) ?? 0) + 1);
  const weights = new Map([...count].map(([term, of]) => [term, Math.log(1 + all.length / of) ** 2]));
  return (term) => weights.get(term) ?? 0;
}

/** How much of what each tells the other says too: the geometric mean of the two shares. */
function likenessOf(one: Said, other: Said, weigh: Weigh): number {
  const [mine, its] = tellingOf(one, other);
  const likeness = Math.sqrt(shareOf(mine, other.all, weigh) * shareOf(its, one.all, weigh));
  const against = areContrary(mine, its) || (ofAnotherKind(mine, other) && ofAnotherKind(its, one));
  return against ? likeness * AGAINST : likeness;
}

/** Whether something is told to have gone wrong, and nothing of that kind is in what the other says. */
function ofAnotherKind(telling: ReadonlySet<string>, { all }: Said): boolean {
  const mishaps = mishapsIn(telling);
  return mishaps.length > 0 && !mishaps.some((kind) => all.has(kind));
}

/** What tells two apart or makes them the same: their reasons, else their symptoms after a beginning that they share. */
function tellingOf(one: Said, other: Said): [Set<string>, Set<string>] {
  if (one.why.length > 0 && other.why.length > 0) return [new Set(one.why), new Set(other.why)];
  const parted = one.symptom.findIndex((term, at) => other.symptom[at] !== term);
  const from = parted < 0 || parted === other.symptom.length ? 0 : parted;
  return [new Set(one.symptom.slice(from)), new Set(other.symptom.slice(from))];
}

function shareOf(telling: ReadonlySet<string>, said: ReadonlySet<string>, weigh: Weigh): number {
  let [shared, all] = [0, 0];
  for (const term of telling) {
    all += weigh(term);
    if (said.has(term)) shared += weigh(term);
  }
  return all === 0 ? 0 : shared / all;
}

/**
 * The pairs that can be alike enough, and not all others. Of two that are, the share of what one tells that the other
 * says reaches the threshold; so the other has one of its rarest terms, those without which all the rest together could
 * not reach it (prefix filtering: Bayardo, Ma, Srikant 2007, "Scaling up all pairs similarity search"; from memory).
 * A beginning that both share only adds to what the whole symptom shares, so the whole one is asked.
 */
function eachThatCould(all: readonly Said[], weigh: Weigh, compare: (one: Said, other: Said) => void): void {
  const having = new Map<string, number[]>();
  for (const [at, said] of all.entries()) {
    for (const term of said.all) {
      const there = having.get(term);
      if (there) there.push(at);
      else having.set(term, [at]);
    }
  }
  const met = all.map((said) => {
    const rarest = [...rarestOf(said.symptom, weigh), ...rarestOf(said.why, weigh)];
    return new Set(rarest.flatMap((term) => having.get(term) ?? []));
  });
  for (const [at, others] of met.entries()) {
    for (const other of others) {
      if (other === at || (other < at && met[other]?.has(at))) continue;
      compare(all[Math.min(at, other)] as Said, all[Math.max(at, other)] as Said);
    }
  }
}

/** The rarest terms of a text, until the others together weigh less than the threshold asks. */
function rarestOf(terms: readonly string[], weigh: Weigh): string[] {
  const rarestFirst = [...new Set(terms)].sort((a, b) => weigh(b) - weigh(a));
  let left = rarestFirst.reduce((sum, term) => sum + weigh(term), 0);
  const least = left * alikeFrom;
  return rarestFirst.filter((term) => {
    const before = left;
    left -= weigh(term);
    return before >= least;
  });
}

type Meet = (a: string, b: string) => boolean;

/** Whether one of two names means the other; the same names come again and again in a book. */
function meeting(): Meet {
  const known = new Map<string, Map<string, boolean>>();
  return (a, b) => {
    const ofA = known.get(a) ?? new Map<string, boolean>();
    const told = ofA.get(b) ?? (names(a, b) || names(b, a));
    if (ofA.size === 0) known.set(a, ofA);
    ofA.set(b, told);
    return told;
  };
}

/**
 * Not where the restorer has said no, nor where they name different assemblies or makers, or one speaks of an original
 * part and the other of a reproduction. Model and variant may differ: a mark brings those it was met on. What is an
 * assembly to one may be a part to another: the foot valve, or the foot valve of the barrel.
 */
function couldBeSame(one: Said, other: Said, meet: Meet): boolean {
  const apart = ({ gotcha: { notSame, supersedes } }: Said, { gotcha: { id } }: Said) =>
    notSame.includes(id) || supersedes.includes(id);
  if (apart(one, other) || apart(other, one)) return false;
  const [a, b] = [one.where, other.where];
  const any = (some: readonly string[], others: readonly string[]) =>
    some.some((name) => others.some((its) => meet(name, its)));
  const agree = (what: "assembly" | "maker" | "make") =>
    a[what].length === 0 || b[what].length === 0 || any(a[what], b[what]);
  const inside = any(a.assembly, b.item) || any(b.assembly, a.item);
  return agree("maker") && agree("make") && (agree("assembly") || inside);
}
