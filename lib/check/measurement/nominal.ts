import type { Designation } from "#lib/quantity/index.ts";
import { drillNamed, gaugeSize } from "#lib/reference/index.ts";
import { threadsOf } from "./threads-of.ts";

/** The size in mm that a designation stands for; null where it stands for none, as a pipe thread. */
export function nominalOf(designation: Designation): number | null {
  if (designation.type === "drill") {
    const name = designation.scale === "number" ? `No. ${designation.size}` : `letter ${designation.size}`;
    return drillNamed(name)?.mm ?? null;
  }
  if (designation.type === "wire gauge") return gaugeSize(designation.system, designation.size)?.mm ?? null;
  if (designation.type !== "thread") return null;
  const [thread] = threadsOf(designation);
  return thread && thread.system !== "BSP" && thread.system !== "NPT" ? thread.major : null;
}
