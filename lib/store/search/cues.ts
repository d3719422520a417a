/** What was said at a moment. */
export interface SpokenCue {
  /** Seconds of the clock that the captions keep. */
  start: number;
  text: string;
}

const timing = /^\s*(?:(\d+):)?(\d{1,2}):(\d{1,2})(?:[.,](\d{1,3}))?\s*-->/;

/** Times and words of WebVTT or SRT, for finding them again. What is neither gives none. */
export function spokenCues(text: string): SpokenCue[] {
  return text
    .replace(/\r\n?/g, "\n")
    .split(/\n{2,}/)
    .flatMap((block) => {
      const lines = block.split("\n");
      const at = lines.findIndex((line) => timing.test(line));
      const found = timing.exec(lines[at] ?? "");
      if (!found) return [];
      const [, hours = "0", minutes, seconds, parts = "0"] = found;
      const start = Number(hours) * 3600 + Number(minutes) * 60 + Number(seconds) + Number(`0.${parts}`);
      const words = lines
        .slice(at + 1)
        .join(" ")
        .replace(/<[^>]*>/g, "")
        .trim();
      return words === "" ? [] : [{ start, text: words }];
    });
}
