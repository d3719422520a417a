import { type Gotcha, type Outcome, type Severity, severities } from "#lib/build/index.ts";
import { applies, type Match, type Opening, type Tie } from "./applies.ts";
import { type Book, type Entry, entriesOf, scopesOf } from "./book.ts";
import { type Standing, sayStanding, standingOf, type Trust } from "./standing.ts";
import { names } from "./words.ts";

/** One thing to know before an assembly is opened. */
export interface BriefLine {
  entry: Entry;
  standing: Standing;
  match: Match;
  /** Why it is shown, a sentence each. */
  why: string[];
  score: number;
  /** What the restorer has answered in this build; null while it is open. */
  answered: Outcome | null;
}

/** More than this is not read before work begins. */
export const briefLength = 5;

/** What it costs when it bites, each grade three times the one before; judgement. Not graded counts as lost hours. */
const costOf: Record<Severity | "", number> = {
  "": 3,
  nuisance: 1,
  hours: 3,
  part: 9,
  machine: 27,
  injury: 81,
};

/** How likely it is true at all; judgement. */
const trustOf: Record<Trust, number> = { heard: 0.8, "seen once": 0.95, repeated: 1, proven: 1 };

/**
 * What to know before an assembly is opened: five at most, the dearest to miss first: by what it costs when it bites,
 * times how often it does, times how likely it holds here. Never one that another has taken
 * the place of, and none of which the restorer has said that it does not apply to this machine.
 */
export function brief(book: Book, opening: Opening, today: string): BriefLine[] {
  return applying(book, opening, today).slice(0, briefLength);
}

/** All that applies to an opening, in the order of the brief. */
export function applying(book: Book, opening: Opening, today: string): BriefLine[] {
  return [...entriesOf(book).values()]
    .map((entry) => lineOf(entry, opening, today))
    .filter((line) => line !== null)
    .sort(
      (a, b) =>
        Number(a.match.tie === "sister") - Number(b.match.tie === "sister") ||
        b.score - a.score ||
        (a.entry.gotcha.id < b.entry.gotcha.id ? -1 : 1),
    );
}

function lineOf(entry: Entry, opening: Opening, today: string): BriefLine | null {
  if (entry.superseded || ruledOut(entry, opening)) return null;
  const match = applies(scopesOf(entry), opening);
  if (match === null) return null;
  const standing = standingOf(entry, today);
  if (match.tie === "sister" && standing.trust === "heard") return null;
  const score =
    costOf[entry.gotcha.severity] * recurrence(standing) * match.closeness * trustOf[standing.trust];
  const why = [sayTie(match.tie, entry), `${capital(sayStanding(standing))}.`, ...sayMatch(match)];
  return { entry, standing, match, why, score, answered: answerIn(entry, opening.buildId) };
}

/** How often it bites of those who look, with one look each way added: a single sighting is no certainty. */
function recurrence({ happened, avoided, absent }: Standing): number {
  return (happened + avoided + 1) / (happened + avoided + absent + 2);
}

/** Whether the last word on this very machine, in another build, was that it does not apply to it. */
function ruledOut({ sightings }: Entry, { machine, buildId }: Opening): boolean {
  const here = sightings.filter((one) => one.machineId === machine.id && one.buildId !== buildId);
  return here.at(-1)?.outcome === "not applicable";
}

/** What was answered in a build, and not merely marked in it as a first lesson. */
function answerIn({ sightings }: Entry, buildId: string | null): Outcome | null {
  if (buildId === null) return null;
  return sightings.filter((one) => one.buildId === buildId).at(-1)?.outcome ?? null;
}

const tieWords: Record<Tie, string> = {
  assembly: "The same assembly of the same model.",
  inside: "An assembly inside this one, of the same model.",
  maker: "The same assembly, on any machine of this maker.",
  kind: "The same kind of assembly, whoever made it.",
  thing: "The same part or kit, whatever it is used in.",
  model: "Concerns the whole machine.",
  sister: "Met on the same assembly of another model of this maker; it may not hold here.",
};

function sayTie(tie: Tie, { gotcha }: Entry): string {
  return gotcha.origin === "" ? tieWords[tie] : `${tieWords[tie]} From ${gotcha.origin}.`;
}

function sayMatch({ unknown, holds }: Match): string[] {
  return [
    ...(holds.length > 0 ? [`It holds here: ${holds.join(", ")}.`] : []),
    ...(unknown.length > 0 ? [`Not known of this machine: ${unknown.join("; ")}.`] : []),
  ];
}

/** How bad it is and what follows, in words: "a spoiled part. A new gland nut has to be made"; empty where nobody said. */
export function sayCost({ severity, consequence }: Gotcha): string {
  const bad = severities.find((one) => one.value === severity)?.label ?? "";
  return [bad, consequence].filter((text) => text.trim() !== "").join(". ");
}

function capital(text: string): string {
  return text.slice(0, 1).toUpperCase() + text.slice(1);
}

/** Entries of a brief that concern a part, by the name that is being written; for a hint beside it. */
export function hintsFor(lines: readonly BriefLine[], part: string): BriefLine[] {
  if (part.trim().length < 3) return [];
  return lines.filter(({ entry }) => {
    const parts = scopesOf(entry)
      .appliesTo.map((scope) => scope.item)
      .filter(Boolean);
    return parts.some((name) => names(name, part) || names(part, name));
  });
}
