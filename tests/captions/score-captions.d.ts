declare module "*/score_captions.mjs" {
  interface Count {
    must: number;
    predicted: number;
    hit: number;
    neutral: number;
    fa: number;
    trap: number;
  }
  export const KINDS: string[];
  export function score(pred: unknown, gold: unknown): { kinds: Record<string, Count> };
  export function prf(count: Count): { P: number; R: number; F1: number };
}
