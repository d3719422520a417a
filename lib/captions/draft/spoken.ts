/** A number as it was said, and as it is typed: "one and three eighths" is 1-3/8. */
export interface Spoken {
  value: number;
  typed: string;
  form: "whole" | "decimal" | "fraction" | "mixed";
  /** The part it was said in: 8 for eighths. */
  over?: number;
  /** Half-open, in tokens. */
  from: number;
  to: number;
  /** "two and a bit", "a hundred odd". */
  roughly?: true;
  /** "half", "quarter" without anything before it. */
  lone?: true;
  /** What else it may be: "four seventy" is 470 where a unit follows. */
  paired?: { value: number; to: number };
  /** "nineteen forty seven": more likely a year. */
  year?: true;
}

/** A number that stands from one word to another. */
export function made(value: number, typed: string, form: Spoken["form"], from: number, to: number): Spoken {
  return { value, typed, form, from, to };
}
