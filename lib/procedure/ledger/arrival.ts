import { type BuildDocument, present } from "#lib/build/index.ts";
import { typedOf } from "#lib/mark/index.ts";
import type { Ledger } from "./ledger.ts";

/** What is asked of a machine on its arrival: once it has been taken apart, most of it cannot be found out any more. */
export const arrivalQuestions = [
  { name: "plates", ask: "Plates and serial numbers, as they read" },
  { name: "completeness", ask: "What is there, and what is missing" },
  { name: "turns", ask: "What turns, and what does not" },
  { name: "bodges", ask: "What others have done to it" },
  { name: "settings", ask: "Settings counted out or measured before they are disturbed" },
  { name: "aim", ask: "The aim: conserve, run, or show" },
] as const;

/** A question of the survey, and what is known. */
export interface Surveyed {
  name: string;
  ask: string;
  answer: string | null;
  key: string;
}

/** The survey of a machine's arrival with what it still lacks; whether the first part has come off already. */
export interface Arrival {
  asked: Surveyed[];
  lacking: number;
  begun: boolean;
}

export function arrivalOf(ledger: Ledger, document: BuildDocument): Arrival {
  const answers = new Map(present(document.answers).map((one) => [one.key, one.reason]));
  const known: Record<string, string | null> = {
    plates: document.machine.serial.trim() || null,
    settings: countedOut(document),
  };
  const asked = arrivalQuestions.map(({ name, ask }) => {
    const key = `arrival/${name}`;
    return { name, ask, key, answer: answers.get(key) ?? known[name] ?? null };
  });
  return { asked, lacking: asked.filter((one) => one.answer === null).length, begun: ledger.stripped };
}

function countedOut(document: BuildDocument): string | null {
  const found = present(document.marks).filter(
    (mark) => mark.kind === "measurement" && typedOf(mark, "asFound") !== "",
  );
  return found.length > 0 ? `${found.length} measured as found` : null;
}
