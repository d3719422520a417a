/** Two of volts, amperes, ohms and watts give the others (Ohm's law, direct current or resistive load). */
export interface Circuit {
  volts: number;
  amperes: number;
  ohms: number;
  watts: number;
}

/** The whole circuit from the two that are known; nothing for fewer, or where a zero leaves the rest open. */
export function ohmsLaw(known: Partial<Circuit>): Circuit | undefined {
  const { volts: v, amperes: i, ohms: r, watts: p } = known;
  const pair =
    v !== undefined && i !== undefined
      ? [v, i]
      : v !== undefined && r !== undefined
        ? [v, v / r]
        : i !== undefined && r !== undefined
          ? [i * r, i]
          : v !== undefined && p !== undefined
            ? [v, p / v]
            : i !== undefined && p !== undefined
              ? [p / i, i]
              : r !== undefined && p !== undefined
                ? [Math.sqrt(p * r), Math.sqrt(p / r)]
                : undefined;
  const [volts = Number.NaN, amperes = Number.NaN] = pair ?? [];
  const circuit = { volts, amperes, ohms: volts / amperes, watts: volts * amperes };
  return Object.values(circuit).every(Number.isFinite) ? circuit : undefined;
}

/** Resistances in series. */
export const inSeries = (...ohms: number[]): number => ohms.reduce((sum, one) => sum + one, 0);

/** Resistances in parallel. */
export const inParallel = (...ohms: number[]): number => 1 / ohms.reduce((sum, one) => sum + 1 / one, 0);

const units = { volts: "V", amperes: "A", ohms: "Ω", watts: "W" } as const;
const prefixes = [
  { factor: 1e-3, prefix: "m" },
  { factor: 1e3, prefix: "k" },
  { factor: 1e-6, prefix: "µ" },
  { factor: 1e6, prefix: "M" },
] as const;

/**
 * Which prefix may have been lost: where one of the given figures, a thousandth or a thousand times as large, would
 * lead to what is stated. "0.5 mA for A gives 110 V." All in plain units.
 */
export function lostPrefixes(given: Partial<Circuit>, stated: Partial<Circuit>): string[] {
  const [claim] = Object.entries(stated) as [keyof Circuit, number][];
  if (!claim) return [];
  return (Object.entries(given) as [keyof Circuit, number | undefined][]).flatMap(([name, value]) =>
    prefixes.flatMap(({ factor, prefix }) => {
      if (value === undefined) return [];
      const would = ohmsLaw({ ...given, [name]: value * factor })?.[claim[0]];
      const agrees = would !== undefined && Math.abs(would / claim[1] - 1) < 0.05;
      const unit = units[name];
      return agrees
        ? [
            `${prefix}${unit} for ${unit}: ${value} ${prefix}${unit} gives ${Number(would.toPrecision(4))} ${units[claim[0]]}`,
          ]
        : [];
    }),
  );
}
