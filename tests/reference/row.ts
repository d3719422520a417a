/** One row of a file of values: what is asked, what a published source says, and how near the answer must come. */
export interface Row {
  id: string;
  topic?: string;
  category?: string;
  input: { text: string } & Record<string, unknown>;
  expected: Record<string, unknown>;
  /** Absent in files whose every value is exact. */
  tolerance?: Record<string, unknown>;
  source: string;
  how: "read" | "computed" | "memory";
  note?: string;
}

/** What the program says: the same names as `expected`, and how surely it says it. */
export interface Answer extends Record<string, unknown> {
  /** Set where the program asks instead of answering. */
  question?: string;
  /** Set where it gives a span of common practice: never more than a doubt. */
  guidance?: boolean;
}

/** Answers the rows of one topic with the program's own reading and look-ups. */
export type Adapter = (row: Row) => Answer;
