import { type Cleaner, note, type Replaced } from "../clean.ts";
import type { Coverage } from "./coverage.ts";

/** Printed where the fonts have no sign: an upright box, unlike the square one that is there to be ticked. */
export const missingSign = "\u25af";

/** Characters without a shape, such as joiners and the choice of a variant; not those that turn the writing. */
const formless = /(?![\u202a-\u202e\u2066-\u2069])\p{Default_Ignorable_Code_Point}/gu;
const control = /(?![\n\t])[\p{Cc}\p{Cf}\p{Co}\p{Cn}\p{Cs}\p{Zl}\p{Zp}]/u;
const graphemes = new Intl.Segmenter("en", { granularity: "grapheme" });

/**
 * A cleaner for print: each character the fonts have no sign for is replaced by one box, and noted. Controls
 * and overrides of the direction of writing count among them, since they can reorder digits unseen.
 */
export function printCleaner(covers: Coverage, replaced: Replaced): Cleaner {
  const prints = (text: string) => !control.test(text) && covers(text.replace(/[\n\t]/g, ""));
  const shape = (text: string) => text.replace(formless, "");
  return (text) => {
    const plain = text.replace(/\r\n?/g, "\n").normalize("NFC");
    if (prints(shape(plain))) return shape(plain);
    return Array.from(graphemes.segment(plain), ({ segment }) => {
      const [base = "", ...rest] = shape(segment);
      if (prints(base + rest.join(""))) return base + rest.join("");
      const kept = prints(base) ? base : "";
      for (const character of kept ? rest : [base, ...rest]) note(replaced, character);
      return kept + missingSign;
    }).join("");
  };
}

/**
 * Lets a run of more than `longest` characters break (at U+200B): after its dashes and strokes, and within what
 * is still too long, so that no line can be too long to print. What a no-break space ties together is one run.
 */
export function breakable(text: string, longest: number): string {
  return text.replace(/[^ \t\n\u200b]+/gu, (run) => {
    if (run.length <= longest) return run;
    return run
      .split(/(?<=[–\-/,;:·)])/u)
      .map((piece) => chopped(piece, longest))
      .join("\u200b");
  });
}

function chopped(piece: string, longest: number): string {
  const signs = Array.from(graphemes.segment(piece), ({ segment }) => segment);
  if (signs.length <= longest) return piece;
  const step = Math.max(4, Math.floor(longest / 3));
  return signs.map((sign, index) => (index > 0 && index % step === 0 ? `\u200b${sign}` : sign)).join("");
}
