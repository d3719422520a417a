import { unitByCode } from "#lib/quantity/index.ts";
import type { Amount } from "../amount.ts";
import type { Qualified } from "../qualifier.ts";

/** Units whose first spelling is not what a restorer would type, or that two codes share. */
const symbols: Readonly<Record<string, string>> = {
  "[mil_i]": "thou",
  "[in_i]": "in",
  circ: "turns",
  deg: "deg (angle)",
  "1": "",
  "{tooth}": "teeth",
  "10*-1.mm": "tenths of a mm",
  "10*-4.[in_i]": "tenths of a thou",
  "L/min": "L/min",
  "[gal_us]/min": "gal/min",
  "[gal_br]/min": "gal/min",
  "mL/min": "ml/min",
  "[tbs_us]": "tablespoons",
  "[tsp_us]": "teaspoons",
  "%": "%",
};

const lead: Record<string, string> = { about: "about ", min: "at least ", max: "at most " };

/** The value as a restorer would type it; reading it gives the value back. */
export function typedValueOf(amount: Amount, meant: Qualified): string {
  if (amount.designation !== undefined) return amount.designation;
  if (amount.dimension === "ratio" && amount.unit === "1")
    return `${lead[meant.qualifier] ?? ""}${amount.typed}:1`;
  const unit = amount.unit === null ? "" : symbolOf(amount.unit);
  const number = amount.typedHigh === undefined ? amount.typed : `${amount.typed} to ${amount.typedHigh}`;
  const tolerance = meant.tolerance ? ` ± ${meant.tolerance.typed} ${unit}` : "";
  const about = meant.approx ? "about " : "";
  const per = amount.per ? `/${amount.per}` : "";
  return `${about}${lead[meant.qualifier] ?? ""}${number} ${unit}${per}${tolerance}`.trim();
}

function symbolOf(code: string): string {
  return symbols[code] ?? unitByCode(code)?.symbol ?? code;
}
