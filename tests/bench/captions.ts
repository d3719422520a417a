import { type Cue, draft } from "#lib/captions/index.ts";
import { cuesOf, known } from "../captions/helpers.ts";
import { type BenchLine, ms, time } from "./measure.ts";

const tenHours = 90_000;

/** So many words of what restorers say: the recordings of the tests one behind another, over and over. */
function spoken(words: number): Cue[] {
  const cues: Cue[] = [];
  let said = 0;
  let clock = 0;
  const recordings = known.map(cuesOf);
  for (let i = 0; said < words; i++) {
    const one = recordings[i % recordings.length] ?? [];
    for (const cue of one) cues.push({ ...cue, start: cue.start + clock, end: cue.end + clock });
    said += one.reduce((sum, cue) => sum + cue.words.length, 0);
    clock += (one.at(-1)?.end ?? 0) + 5;
  }
  return cues;
}

export const captionsLine: BenchLine = {
  name: "draft from captions",
  measure: async () => {
    const [half, whole] = [spoken(tenHours), spoken(2 * tenHours)];
    const count = (cues: readonly Cue[]) => cues.reduce((sum, cue) => sum + cue.words.length, 0);
    const [small, large] = [await time(5, () => draft(half)), await time(5, () => draft(whole))];
    const ratio = (large * count(half)) / (small * count(whole));
    return [
      `${count(half).toLocaleString("en")} words (about ten hours) ${ms(small)}; ${count(whole).toLocaleString("en")} words ${ms(large)}`,
      `twice the words take ${(2 * ratio).toFixed(2)} times as long; ${draft(half).length.toLocaleString("en")} drafts in ten hours`,
    ];
  },
};
