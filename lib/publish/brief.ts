import type { BuildDocument } from "#lib/build/index.ts";
import { applying, type Book, type BriefLine, briefOf, openingOf, sayCost } from "#lib/gotcha/index.ts";

/** One gotcha of the printed brief, as labels and texts in their order. */
export type BriefNote = readonly (readonly [label: string, text: string])[];

/** The heading of the printed brief. */
export const briefHeading = "What bit before";

/** The brief of a build as it is printed: what the book knew on that day of the assembly that is to be opened. */
export function printedBrief(book: Book, document: BuildDocument, date: string): BriefNote[] {
  return briefNotes(briefOf(applying(book, openingOf(document), date), document));
}

/** The lines of a brief as labels and texts. */
export function briefNotes(lines: readonly BriefLine[]): BriefNote[] {
  return lines.map(({ entry: { gotcha }, why }) => {
    const says: [string, string][] = [
      ["What bit:", gotcha.symptom],
      [gotcha.cause === "proven" ? "Why:" : "Why, as is suspected:", gotcha.mechanism],
      ["It costs:", sayCost(gotcha)],
      ["How to tell:", gotcha.tell],
      ["Instead:", gotcha.avoid],
      ["Shown because:", why.join(" ")],
    ];
    return says.filter(([, text]) => text.trim() !== "");
  });
}
