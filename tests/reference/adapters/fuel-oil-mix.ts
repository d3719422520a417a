import { mixPercent, mixRatio, oilFor } from "#lib/reference/index.ts";
import { figures, inUnit, of } from "../read/figures.ts";
import type { Adapter } from "../row.ts";

export const adapter: Adapter = ({ input }) => {
  const { text } = input;
  const parts = Number(/([\d.]+):1/.exec(text)?.[1]);
  const [one, other] = figures(text).filter(({ dimension }) => dimension === "volume");
  if (Number.isNaN(parts)) {
    return { ratio: one && other ? mixRatio(inUnit(other, "mL"), inUnit(one, "mL")) : undefined };
  }
  const { ofPetrol, ofMixture } = mixPercent(parts);
  const [petrol = Number.NaN] = of(text.replace(/[\d.]+:1/, ""), "volume", "mL");
  const oil = oilFor(parts, petrol);
  return {
    oil_mL: oil,
    oil_US_fl_oz: oil / 29.5735295625,
    oil_imp_fl_oz: oil / 28.4130625,
    of_petrol_pct: ofPetrol,
    of_mixture_pct: ofMixture,
  };
};
