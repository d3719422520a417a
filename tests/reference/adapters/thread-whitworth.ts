import { jawMarked } from "#lib/reference/index.ts";
import { first, threads } from "../read/figures.ts";
import type { Adapter, Answer } from "../row.ts";

/** "spanner marked 7/16 BS and 3/8 W" */
function spanner(text: string): Answer {
  const marks = [...text.matchAll(/[\d/-]+ (?:BSF|BSW|BS|W|BA|AF|mm)\b/g)].map(([mark]) => jawMarked(mark));
  const sizes = marks.map((jaw) => jaw?.mm);
  return { jaw_in: (sizes[0] ?? 0) / 25.4, same_jaw: sizes.every((size) => size === sizes[0]) };
}

export const adapter: Adapter = ({ input }) => {
  if (/spanner/.test(input.text)) return spanner(input.text);
  const thread = first(threads(input.text), "the thread");
  return {
    tpi: thread.tpi,
    angle_deg: thread.angle,
    core_diameter_in: (thread.minor ?? 0) / 25.4,
    effective_diameter_in: (thread.effective ?? 0) / 25.4,
  };
};
