/** What the scorer of the labelled recordings counts, for one kind of mark. */
export interface KindScore {
  must: number;
  predicted: number;
  hit: number;
  neutral: number;
  fa: number;
  trap: number;
}
export const KINDS: string[];
export function score(pred: unknown, gold: unknown): { kinds: Record<string, KindScore> };
export function prf(count: KindScore): { P: number; R: number; F1: number };
