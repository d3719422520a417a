import { type Finding, finding } from "#lib/finding/index.ts";
import type { Passage } from "../passages.ts";
import type { Example } from "../rule.ts";

/** A finding about a text of a step. */
export function about(passage: Passage, words: Omit<Finding, "key" | "answer" | "place">): Finding {
  return finding({ ...words, place: { mark: passage.mark, field: passage.field } });
}

/** "Step 3" and the text in question, shortened where it is long. */
export function quoted({ step }: Passage, text: string): string {
  return `Step ${step.number}: “${text.length > 90 ? `${text.slice(0, 88).trimEnd()}…` : text}”`;
}

/** Examples of instructions of which each has one finding. */
export function fires(...instructions: string[]): Example[] {
  return instructions.map((words) => ({
    says: words,
    sketch: { marks: [[1, "action", { words }]] },
    finds: 1,
  }));
}

/** Examples of instructions, good workshop English, that have none. */
export function silent(...instructions: string[]): Example[] {
  return instructions.map((words) => ({
    says: words,
    sketch: { marks: [[1, "action", { words }]] },
    finds: 0,
  }));
}

/** Examples of paragraphs below an instruction. */
export function below(finds: number, ...details: string[]): Example[] {
  return details.map((detail) => ({
    says: `below the instruction: ${detail}`,
    sketch: { marks: [[1, "action", { words: "Fit the cover.", detail }]] },
    finds,
  }));
}
