/** A half-open stretch of one clock, in seconds: `start <= t < end`. */
export interface Span {
  start: number;
  end: number;
}
