/**
 * A finding is what a check says. Findings are values: they never stop saving or printing, and an
 * unanswered `wrong` stops a release and nothing else.
 */

/** How sure a finding is: proved by arithmetic or a published standard, worth a look, or a kindness. */
export type Severity = "wrong" | "doubtful" | "advice";

export const severities: readonly Severity[] = ["wrong", "doubtful", "advice"];

/** What a finding speaks of: ids of records, and the field where it matters. */
export interface Place {
  mark?: string;
  still?: string;
  edit?: string;
  field?: string;
}

/** A quick mend that a finding offers: a change known by name, which `mend` in lib/check makes of a document. */
export interface Mend {
  name: string;
  /** What it does, as the words of a button: "Move the condition first". */
  says: string;
  /** What it needs beside the finding: the name of a tool. */
  with?: string;
}

export interface Finding {
  /** Rule, subject ids and field: the same finding has the same key however it is worded. */
  key: string;
  /** The values that were read. An answer holds for this key and this evidence. */
  evidence: string;
  rule: string;
  severity: Severity;
  place: Place;
  found: string;
  expected: string;
  todo: string;
  /** Where the rule comes from: a standard, a table, or "common practice, no source". */
  source: string;
  /** What may have been meant, where a likely slip explains it: "0.015 in?". */
  meant?: string;
  /** Quick mends, the likeliest first; none where only the restorer can say what was meant. */
  mends?: readonly Mend[];
  /** The restorer's reason for letting it stand, while the evidence is what it spoke of. */
  answer?: string;
}

/** A reason given for letting a finding stand; it is kept for good, and holds while the evidence agrees. */
export interface Answer {
  id: string;
  key: string;
  evidence: string;
  reason: string;
}

type FindingWords = Omit<Finding, "key" | "answer">;

/** Makes a finding of its words; the key follows from rule and place. */
export function finding(words: FindingWords): Finding {
  const { mark, still, edit, field } = words.place;
  const key = [words.rule, mark ?? "", still ?? "", edit ?? "", field ?? ""].join("/");
  return { key, ...words };
}

/** Puts to each finding the answer that holds for it, if there is one. */
export function withAnswers(findings: Finding[], answers: readonly Answer[]): Finding[] {
  const reasons = new Map(answers.map((answer) => [`${answer.key}\n${answer.evidence}`, answer.reason]));
  return findings.map((one) => {
    const answer = reasons.get(`${one.key}\n${one.evidence}`);
    return answer === undefined ? one : { ...one, answer };
  });
}

/** Findings that still ask for something: those without an answer. */
export function open(findings: readonly Finding[]): Finding[] {
  return findings.filter((one) => one.answer === undefined);
}

/** "1 wrong · 3 doubtful", or "nothing open"; advice is counted last. */
export function sayCount(findings: readonly Finding[]): string {
  const counts = severities
    .map((severity) => [severity, open(findings).filter((one) => one.severity === severity).length] as const)
    .filter(([, count]) => count > 0)
    .map(([severity, count]) => `${count} ${severity}`);
  return counts.length > 0 ? counts.join(" · ") : "nothing open";
}

/** Worst first; within a severity the order in which the checks spoke. */
export function worstFirst(findings: readonly Finding[]): Finding[] {
  return severities.flatMap((severity) => findings.filter((one) => one.severity === severity));
}

export { ToldError, type Words } from "./told-error.ts";
