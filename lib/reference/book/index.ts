import { fitChapter } from "./fits.ts";
import { holeChapter } from "./holes.ts";
import { bearingChapter, electricalChapter, materialChapter } from "./others.ts";
import { strengthChapter } from "./strength.ts";
import type { BookChapter } from "./table.ts";
import { threadChapter } from "./threads.ts";
import { toolChapter } from "./tools.ts";

export type { BookChapter, BookTable } from "./table.ts";

/** All tables, in the order in which they are shown. */
export const book: readonly BookChapter[] = [
  threadChapter,
  holeChapter,
  toolChapter,
  strengthChapter,
  fitChapter,
  bearingChapter,
  electricalChapter,
  materialChapter,
];
