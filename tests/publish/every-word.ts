import type { BuildDocument } from "#lib/build/index.ts";
import { type Fields, type KindName, kinds, type Mark } from "#lib/mark/index.ts";
import { sampleDocument, sampleMark } from "../sample.ts";

/** Forms of fields whose words the restorer writes; a choice has words of its own. */
const written = new Set(["text", "line", "item", "count", "quantity"]);

/** A word that stands in one field of one mark and nowhere else, and the field it stands in. */
export interface Written {
  word: string;
  field: string;
  step: number;
}

/**
 * A build of so many steps, each with a mark of every kind after its action, and in every field that is written by
 * hand words that occur once. Every stage has an eighth of them.
 */
export function everyWord(steps: number): { document: BuildDocument; words: Written[] } {
  const words: Written[] = [];
  const marks: Mark[] = [];
  const say = (field: string, step: number, form: string) => {
    const number = words.length + 10_000;
    const word = form === "quantity" ? `0.${number} mm` : form === "count" ? String(number) : `q${number}z`;
    words.push({ word, field, step });
    return form === "quantity" ? { typed: word } : word;
  };
  for (let step = 1; step <= steps; step++) {
    const begins = step * 60;
    Object.values(kinds).forEach(({ kind, fields }) => {
      const values = fields
        .filter(({ form }) => written.has(form))
        .map(({ name, form }) => [name, say(`${kind || "unsorted"}.${name}`, step, form)]);
      const at = kind === "action" ? begins : kind === "caution" ? begins - 1 : begins + 1;
      const chosen = {
        ...choices(kind as KindName, step / steps),
        ...Object.fromEntries(values),
      } as Partial<Fields>;
      marks.push(sampleMark(at, kind as KindName, chosen, { id: `${kind}-${step}` }));
    });
  }
  return { document: sampleDocument({ marks }), words };
}

/** What is chosen and not written; `far` is how far through the job the step stands, 0 to 1. */
function choices(kind: KindName, far: number): Record<string, string> {
  const stages = ["strip", "clean", "inspect", "repair", "trial fit", "assemble", "set up", "prove"];
  if (kind === "action") return { stage: stages[Math.ceil(far * 8) - 1] as string };
  if (kind === "part") return { event: "removed" };
  if (kind === "caution")
    return [
      { harms: "person", severity: "serious", likelihood: "will" },
      { harms: "person", severity: "minor", likelihood: "could" },
      { harms: "thing", severity: "damage", likelihood: "could" },
    ][Math.round(far * 600) % 3] as Record<string, string>;
  return {};
}
