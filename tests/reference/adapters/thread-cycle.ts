import { first, threads } from "../read/figures.ts";
import type { Adapter } from "../row.ts";

export const adapter: Adapter = ({ input }) => {
  const thread = first(
    threads(input.text.replace(/\/CEI.*/, ""), ({ system }) => system === "BSC"),
    "the cycle thread",
  );
  return {
    tpi: thread.tpi,
    angle_deg: thread.angle,
    form: `${thread.form}, crest and root`,
    effective_in: (thread.effective ?? 0) / 25.4,
    core_in: (thread.minor ?? 0) / 25.4,
  };
};
