import { observances } from "./observances.ts";
import { type StatementCode, statementSource, statements } from "./statements.ts";
import { type Substance, substanceSource, substances } from "./substances.ts";

/**
 * What usually is said of a hazard, as the fields of a caution: the signal word follows from whom it harms, how badly
 * and how surely. It is offered and never put in by itself.
 */
export interface UsualCaution {
  name: string;
  /** Words of a step in which the hazard is met, or may be: then the caution is offered. */
  met: RegExp;
  /**
   * Words that leave no doubt, so that a step with them and no caution is a finding; null where the restorer alone can
   * tell, since a rule that cries wolf is not read.
   */
  needed: RegExp | null;
  /** Words by which a caution is known to speak of it. */
  said: RegExp;
  hazard: string;
  consequence: string;
  avoid: string;
  harms: "person";
  severity: "serious" | "minor";
  likelihood: "could";
  source: string;
  /** What of it belongs to licensed practice; then no figure stands in it. */
  defer?: string;
}

/** Precautions printed of a substance: the data sheet has them all. */
const mostPrecautions = 4;

/** Every hazard that is known here, substances first. */
export const usualCautions: readonly UsualCaution[] = [...substances.map(ofSubstance), ...observances];

/** The usual cautions for hazards that a text meets; those that the words of a caution speak of already are left out. */
export function cautionsFor(text: string, warned: readonly string[] = []): UsualCaution[] {
  return usualCautions.filter(
    ({ met, needed, said }) =>
      (meets(text, met) || (needed !== null && meets(text, needed))) &&
      !warned.some((words) => said.test(words)),
  );
}

/** "No compressed air", "without petrol" meets nothing. */
function meets(text: string, met: RegExp): boolean {
  const all = text.matchAll(new RegExp(met.source, `${met.flags}g`));
  return [...all].some(
    ({ index }) => !/\b(?:no|not|never|without|instead of)\s+(?:\w+\s+)?$/i.test(text.slice(0, index)),
  );
}

function ofSubstance(substance: Substance): UsualCaution {
  const { name, met, needed, said, label, hazards, precautions, own, who, defer } = substance;
  const harmful = hazards.filter((code) => /^H[23]/.test(code) && code !== "H290");
  const whole = precautions.filter((code) => /^P[24]/.test(code) && isWhole(code)).slice(0, mostPrecautions);
  const avoid = [own, ...whole.map((code) => statements[code])].filter(Boolean).join(" ");
  return {
    name,
    met,
    needed,
    said,
    hazard: name,
    consequence: harmful.map((code) => withoutClauses(statements[code])).join(" "),
    avoid: avoid || "Follow the safety data sheet of the product.",
    harms: "person",
    severity: label === "Danger" ? "serious" : "minor",
    likelihood: "could",
    source: `${who ? `${who}; ` : ""}${statementSource.standard}: ${[...harmful, ...whole].join(", ")}; ${substanceSource}`,
    ...(defer && { defer }),
  };
}

/** A slash or `...` is for the writer of a label to settle: such a text is not printed raw. */
function isWhole(code: StatementCode): boolean {
  return !/\/(?!122)|\.\.\.|[[<]/.test(statements[code]);
}

function withoutClauses(text: string): string {
  return text.replace(/ <\w+>/g, "");
}
