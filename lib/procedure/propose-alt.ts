import type { Step } from "./tree.ts";

/** Words for what a still of this step shows, from its marks: a proposal until the restorer writes or takes it. */
export function proposeAlt(step: Pick<Step, "title" | "parts" | "stage">): string {
  const title = step.title.replace(/[.\s]+$/, "");
  const names = [...new Set(step.parts.map((part) => part.name).filter(Boolean))];
  const parts = names.length > 0 ? ` Parts: ${names.join(", ")}.` : "";
  return title === "" ? `A picture of the stage “${step.stage}”.${parts}` : `${title}.${parts}`;
}
