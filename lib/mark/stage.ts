/** The stages of a restoration, in the order in which a procedure prints them. */
export const stages = [
  "strip",
  "clean",
  "inspect",
  "repair",
  "trial fit",
  "assemble",
  "set up",
  "prove",
] as const;
export type Stage = (typeof stages)[number];

/** Whether a text names a stage. */
export function isStage(text: unknown): text is Stage {
  return (stages as readonly unknown[]).includes(text);
}
