import { createHash } from "node:crypto";
import type { CheckedProcedure } from "#lib/procedure/tree.ts";
import { canonicalJson } from "./canonical-json.ts";

/** SHA-256, in hex, of the procedure as canonical JSON: equal for equal procedures, on every machine. */
export function contentHash(checked: CheckedProcedure): string {
  return createHash("sha256").update(canonicalJson(checked.procedure), "utf8").digest("hex");
}
