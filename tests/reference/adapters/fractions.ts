import {
  convert,
  exact,
  quantitiesOf,
  rational,
  read,
  roundTo,
  subtract,
  toNumber,
} from "#lib/quantity/index.ts";
import { fraction } from "#lib/reference/index.ts";
import { first } from "../read/figures.ts";
import type { Adapter } from "../row.ts";

export const adapter: Adapter = ({ input }) => {
  const size = first(quantitiesOf(read(input.text.split(" to nearest ")[0] ?? "")), "a length");
  const inches = convert(size.value.exact, size.ucum, "[in_i]");
  const decimal = toNumber(rational(inches));
  if (typeof input.denominator !== "number")
    return { decimal_in: decimal, mm: toNumber(rational(convert(inches, "[in_i]", "mm"))) };
  const nearest = roundTo(rational(inches), rational(`1/${input.denominator}`));
  return {
    nearest_fraction: exact(nearest).includes("/")
      ? fraction(toNumber(nearest) * input.denominator, input.denominator)
      : exact(nearest),
    decimal_in: toNumber(nearest),
    error_in: Math.abs(toNumber(subtract(nearest, rational(inches)))),
  };
};
