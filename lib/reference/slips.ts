/** What may have gone wrong when a figure is so many times what it should be. */
export interface Slip {
  /** The factor that such a slip gives, found over expected. */
  factor: number;
  /** In plain words: "decimal place (factor 10)". */
  words: string;
}

type Kind = "torque" | "length" | "pressure" | "volume" | "any";

const known: readonly { factor: number; words: string; kind: Kind }[] = [
  { factor: 10, words: "decimal place (factor 10)", kind: "any" },
  { factor: 100, words: "decimal place (factor 100)", kind: "any" },
  { factor: 1000, words: "decimal place or prefix (factor 1000)", kind: "any" },
  { factor: 12, words: "lbf in written as lbf ft (factor 12)", kind: "torque" },
  { factor: 9.80665, words: "kgf taken for newtons (factor 9.81)", kind: "torque" },
  { factor: 10.19716, words: "kgf cm written as N m (factor 10.2)", kind: "torque" },
  { factor: 1.3558179, words: "lbf ft written as N m (factor 1.36)", kind: "torque" },
  { factor: 25.4, words: "inches taken for millimetres (factor 25.4)", kind: "length" },
  { factor: 2, words: "radius taken for diameter, or the reverse (factor 2)", kind: "length" },
  { factor: 6.894757, words: "psi taken for kPa (factor 6.89)", kind: "pressure" },
  { factor: 14.503774, words: "psi taken for bar (factor 14.5)", kind: "pressure" },
  { factor: 1.2009499, words: "US measure taken for imperial (factor 1.2)", kind: "volume" },
];

/**
 * Slips that explain a ratio of found to expected, nearest first; 1.9 % either way for a figure that was rounded, more
 * where `within` says so. A factor of one explains nothing. The factors are exact definitions (NIST SP 811, B.8).
 */
export function slipsOf(ratio: number, kind: string = "any", within = 0.019): Slip[] {
  if (!(ratio > 0) || !Number.isFinite(ratio)) return [];
  const off = (factor: number): number => Math.abs(Math.log(ratio / factor));
  return known
    .filter((slip) => slip.kind === "any" || slip.kind === kind)
    .flatMap((slip) => [
      { factor: slip.factor, words: slip.words },
      { factor: 1 / slip.factor, words: slip.words },
    ])
    .filter(({ factor }) => off(factor) <= within)
    .sort((a, b) => off(a.factor) - off(b.factor));
}
