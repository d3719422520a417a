import { isInIso262, isoForm, threadOf, unlistedNearest } from "#lib/reference/index.ts";
import { designations } from "../read/figures.ts";
import type { Adapter } from "../row.ts";

export const adapter: Adapter = ({ input }) => {
  const thread = designations(input.text).find((one) => one.type === "thread");
  if (thread?.type !== "thread") return { question: "no thread was read" };
  const [row] = threadOf(thread);
  const diameter = row?.major ?? Number(thread.size);
  const pitch = row?.pitch ?? Number(input.P_mm ?? thread.name.split("x")[1]);
  const sizes = row?.minor === undefined ? isoForm(diameter, pitch) : row;
  const listed = isInIso262(diameter, pitch);
  return {
    pitch_mm: pitch,
    angle_deg: row?.angle ?? 60,
    pitch_diameter_mm: sizes.effective,
    minor_diameter_mm: sizes.minor,
    in_ISO_262_table: listed,
    listed_in_ISO_262: listed,
    nearest: unlistedNearest(thread).map(({ name }) => name),
  };
};
