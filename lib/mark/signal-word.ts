import type { Fields } from "./define.ts";

/**
 * The signal words of ANSI Z535.6 (from public summaries of Z535.4 clause 4.14; neither was read whole):
 * DANGER, death or serious injury will result; WARNING, it could; CAUTION, minor or moderate injury could;
 * NOTICE, property damage only. Damage alone never takes a word of injury.
 */
export type SignalWord = "DANGER" | "WARNING" | "CAUTION" | "NOTICE";

/** The word that follows from who is harmed, how badly and how surely; null until that has been said. */
export function signalWord(fields: Fields): SignalWord | null {
  const { harms, severity, likelihood } = fields;
  if (harms === "thing") return "NOTICE";
  if (harms !== "person") return null;
  if (severity === "minor") return "CAUTION";
  if (severity !== "serious") return null;
  if (likelihood === "will") return "DANGER";
  return likelihood === "could" ? "WARNING" : null;
}
