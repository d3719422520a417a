import { readCaptionText } from "#lib/captions/index.ts";
import type { Adapter } from "../row.ts";

/** A row gives either a time line, or two cues by their beginnings, the later one first. */
export const adapter: Adapter = ({ input }) => {
  const { problems } = readCaptionText(`WEBVTT\n\n${cuesOf(input.text)}`);
  return {
    conforming: problems.length === 0,
    reason: problems.map((one) => one.found + one.expected).join(" "),
  };
};

function cuesOf(text: string): string {
  if (text.includes("-->")) return `${text}\nwords`;
  const [second, first] = text.match(/[\d:.]+\d/g) ?? [];
  return [first, second].map((start) => `${start} --> 00:59.000\nwords`).join("\n\n");
}
