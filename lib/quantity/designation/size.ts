import { exact, multiply, over, rational, subtract } from "../rational.ts";
import type { Value } from "../types.ts";

/** A nominal size in one fixed spelling: "1/4", "1-3/8", "0.75". */
export function sizeText(value: Value): string {
  if (value.style.kind === "decimal" && value.style.places > 0) return `${value.number}`;
  const size = rational(value.exact);
  const whole = size.n / size.d;
  const part = exact(subtract(size, multiply(over(whole, 1n), rational("1"))));
  if (part === "0") return `${whole}`;
  return whole === 0n ? part : `${whole}-${part}`;
}
