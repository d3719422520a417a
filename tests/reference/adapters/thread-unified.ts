import { rational, toNumber } from "#lib/quantity/index.ts";
import { allThreads, threadOf } from "#lib/reference/index.ts";
import { designations } from "../read/figures.ts";
import type { Adapter } from "../row.ts";

export const adapter: Adapter = ({ input }) => {
  const thread = designations(input.text).find((one) => one.type === "thread");
  if (thread?.type !== "thread") return { question: "no thread was read" };
  const [row] = threadOf(thread);
  const ofSize = allThreads.filter(({ system, size }) => system === "UN" && size === thread.size);
  const count = thread.tpi === undefined ? undefined : toNumber(rational(thread.tpi));
  const sharing = allThreads.filter(({ system, tpi }) => system === "UN" && tpi === count);
  const inches = (mm: number | undefined) => mm && mm / 25.4;
  return {
    valid: row !== undefined,
    angle_deg: row?.angle,
    pitch_mm: row?.pitch,
    pitch_diameter_in: inches(row?.effective),
    minor_diameter_in: inches(row?.minor),
    tpi_UNC: ofSize.find(({ series }) => series === "UNC")?.tpi,
    tpi_UNF: ofSize.find(({ series }) => series === "UNF")?.tpi,
    note: `${count} tpi: ${sharing.map(({ size, series }) => `${size} ${series}`).join(", ")}`,
  };
};
