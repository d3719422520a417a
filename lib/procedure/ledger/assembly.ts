import { type BuildDocument, present } from "#lib/build/index.ts";
import { type Mark, typedOf, wordsOf } from "#lib/mark/index.ts";
import { stepsOf } from "../compile.ts";
import type { Procedure, Step } from "../tree.ts";
import type { Account } from "./account.ts";
import { type Circle, type Covering, coveringsOf, legalOrder } from "./covers.ts";
import type { LedgerEvent } from "./events.ts";
import { fastenersOf } from "./fasteners.ts";
import { itemFinder } from "./item-finder.ts";
import { type Ledger, putsOn } from "./ledger.ts";
import { onOf } from "./pieces.ts";

/** What strip-down reversed never has, and assembly needs; asked of each part. */
export const assemblyQuestions = [
  { name: "clean", ask: "Cleaned?" },
  { name: "inspect", ask: "Inspected?" },
  { name: "measure", ask: "Measured?" },
  { name: "renew", ask: "Renewed?" },
  { name: "lubricate", ask: "Lubricated, with what?" },
  { name: "seal", ask: "Sealed, with what?" },
  { name: "torque", ask: "Torque, in which stages and sequence?" },
  { name: "lock", ask: "Locked, with what?" },
  { name: "set", ask: "Set to what?" },
  { name: "cure", ask: "Left to cure, how long?" },
  { name: "re-check", ask: "Looked at again afterwards?" },
] as const;
export type AssemblyQuestion = (typeof assemblyQuestions)[number]["name"];

/** A question of one part: answered by a mark, by the restorer's word, or open. */
export interface Asked {
  name: AssemblyQuestion;
  ask: string;
  /** The mark that answers it. */
  mark: string | null;
  /** The restorer's answer in words. */
  answer: string | null;
  /** Under which key an answer is kept. */
  key: string;
}

/** One line of the assembly: a part that came off, and how it goes back. */
export interface AssemblyEntry {
  item: string;
  name: string;
  /** Its last taking-off: the second to look at. */
  off: LedgerEvent;
  count: number;
  state: "off" | "back" | "left out" | "scrapped";
  back: LedgerEvent | null;
  /** As found is not as right: what was wrong with it. */
  foundWrong: string;
  /** Parts that must be on before it. */
  after: string[];
  /** What was found out about it in the trial fit. */
  fromTrial: { mark: string; words: string }[];
  asked: Asked[];
}

export interface AssemblyDraft {
  entries: AssemblyEntry[];
  circles: Circle[];
}

/**
 * A skeleton for putting it together: what came off, in the reverse order, moved as little as what covers what asks
 * for; each with the second it came off and the questions that reversal does not answer.
 */
export function draftAssembly(ledger: Ledger, procedure: Procedure, document: BuildDocument): AssemblyDraft {
  const coverings = coveringsOf(ledger);
  const reversed = ledger.accounts
    .flatMap((account) => {
      const off = lastOff(account);
      return off ? [{ account, off }] : [];
    })
    .sort((a, b) => b.off.order - a.off.order);
  const { legal, circles } = legalOrder(
    reversed.map(({ account }) => account.item),
    coverings,
  );
  const rest = reversed.map(({ account }) => account.item).filter((item) => !legal.includes(item));
  const byItem = new Map(reversed.map((one) => [one.account.item, one]));
  const about = factsOf(ledger, procedure, document);
  const entries = [...legal, ...rest].flatMap((item) => {
    const one = byItem.get(item);
    return one ? [entryOf(one.account, one.off, coverings, about)] : [];
  });
  return { entries, circles };
}

function lastOff({ lines }: Account): LedgerEvent | undefined {
  return lines.findLast((line) => line.act === "off" && line.event.stage !== "trial fit")?.event;
}

function entryOf(
  account: Account,
  off: LedgerEvent,
  coverings: readonly Covering[],
  about: Facts,
): AssemblyEntry {
  const { item, name, lines, now } = account;
  const back = lines.findLast(
    ({ event }) => putsOn(event) && event.stage !== "trial fit" && event.order > off.order,
  );
  return {
    item,
    name,
    off,
    count: Math.max(
      1,
      now.cameOff + now.trialOld || (lines.findLast((line) => line.event === off)?.moved ?? 1),
    ),
    state: stateOf(account, back !== undefined),
    back: back?.event ?? null,
    foundWrong: lines.map(({ event }) => event.says.foundWrong).findLast(Boolean) ?? "",
    after: coverings.filter((one) => one.over === item).map((one) => one.underName),
    fromTrial: about.trial.get(item) ?? [],
    asked: assemblyQuestions.map(({ name: question, ask }) => {
      const key = `assembly/${item}/${question}`;
      return {
        name: question,
        ask,
        key,
        mark: about.answering(account, off, question),
        answer: about.said(key),
      };
    }),
  };
}

function stateOf({ now }: Account, back: boolean): AssemblyEntry["state"] {
  if (now.cameOff > 0 || now.trialOld > 0) return "off";
  if (back || onOf(now) > 0) return "back";
  if (now.fresh > 0) return "off";
  return now.leftOut > 0 ? "left out" : "scrapped";
}

/** What the marks say beside the ledger: steps of fittings, measurements, soaks and lessons of a part. */
interface Facts {
  trial: Map<string, { mark: string; words: string }[]>;
  answering: (account: Account, off: LedgerEvent, question: AssemblyQuestion) => string | null;
  said: (key: string) => string | null;
}

/** Words by which a step says that it did what reversal has not. */
const wordsFor: Partial<Record<AssemblyQuestion, RegExp>> = {
  lubricate: /\b(oil(ed)?|greas\w*|lubricat\w*)\b/i,
  seal: /\b(sealant|sealing compound|jointing|gasket cement)\b/i,
  lock: /\b(thread ?lock\w*|lock ?wire|split pin|cotter pin|tab washer|lock ?nut|staked?)\b/i,
  cure: /\b(cur(e|ed|ing)|set hard|overnight)\b/i,
};

function factsOf(ledger: Ledger, procedure: Procedure, document: BuildDocument): Facts {
  const itemOf = itemFinder(document);
  const marks = present(document.marks);
  const steps = stepsOf(procedure);
  const stepOf = new Map(steps.flatMap((step) => step.marks.map((mark) => [mark, step] as const)));
  const ofItem = (kind: string) => {
    const found = new Map<string, Mark[]>();
    for (const mark of marks.filter((one) => one.kind === kind)) {
      const item = itemOf(mark)?.item;
      if (item) found.set(item, [...(found.get(item) ?? []), mark]);
    }
    return found;
  };
  const [measured, deferred, gotchas] = [ofItem("measurement"), ofItem("deferred"), ofItem("gotcha")];
  const torqued = new Map(fastenersOf(ledger, document).map((one) => [one.item, one]));
  const answers = new Map(present(document.answers).map((one) => [one.key, one.reason]));
  return {
    trial: trialLessons(gotchas, deferred, stepOf),
    said: (key) => answers.get(key) ?? null,
    answering: (account, off, question) => {
      const found = byEvent(account, off, question);
      if (found !== null) return found;
      if (question === "torque" && torqued.get(account.item)?.figure) return off.mark;
      const soak = question === "cure" ? deferred.get(account.item)?.find(hasLimit) : undefined;
      if (soak) return soak.id;
      const value = byMeasurement(measured.get(account.item) ?? [], question, stepOf);
      return value ?? byWords(account, question, stepOf);
    },
  };
}

function hasLimit(mark: Mark): boolean {
  return typedOf(mark, "least") !== "" || typedOf(mark, "longest") !== "";
}

function trialLessons(
  gotchas: ReadonlyMap<string, Mark[]>,
  deferred: ReadonlyMap<string, Mark[]>,
  stepOf: ReadonlyMap<string, Step>,
): Facts["trial"] {
  const lessons: Facts["trial"] = new Map();
  for (const [item, marks] of [...gotchas, ...deferred]) {
    const tried = marks.filter((mark) => stepOf.get(mark.id)?.stage === "trial fit");
    const words = tried.map((mark) => ({ mark: mark.id, words: wordsOf(mark) }));
    if (words.length > 0) lessons.set(item, [...(lessons.get(item) ?? []), ...words]);
  }
  return lessons;
}

const events: Partial<Record<AssemblyQuestion, readonly string[]>> = {
  clean: ["cleaned"],
  inspect: ["inspected", "repaired", "scrapped"],
  renew: ["replaced", "substituted", "obtained", "made", "repaired"],
  torque: ["torqued"],
};

function byEvent({ lines }: Account, off: LedgerEvent, question: AssemblyQuestion): string | null {
  const back = lines.findLast(({ event }) => putsOn(event))?.event.order ?? Number.POSITIVE_INFINITY;
  const found = lines.find(({ event }) => {
    if (question === "re-check") return event.event === "inspected" && event.order > back;
    return events[question]?.includes(event.event) && (question === "renew" || event.order > off.order);
  });
  return found?.event.mark ?? null;
}

function byMeasurement(
  marks: readonly Mark[],
  question: AssemblyQuestion,
  stepOf: ReadonlyMap<string, Step>,
): string | null {
  if (question !== "measure" && question !== "set" && question !== "re-check") return null;
  const late = new Set(["set up", "prove"]);
  const found = marks.find((mark) => question === "measure" || late.has(stepOf.get(mark.id)?.stage ?? ""));
  return found?.id ?? null;
}

/** The step in which it went on may say so: in its words, or by what it used up. */
function byWords(
  account: Account,
  question: AssemblyQuestion,
  stepOf: ReadonlyMap<string, Step>,
): string | null {
  const pattern = wordsFor[question];
  if (!pattern) return null;
  for (const { event } of account.lines.filter((line) => putsOn(line.event))) {
    const step = stepOf.get(event.mark);
    if (!step) continue;
    const texts = [event.says.words, step.title, ...step.details.map((one) => one.text)];
    if ([...texts, ...step.consumables.map((one) => one.name)].some((text) => pattern.test(text)))
      return step.mark;
  }
  return null;
}
