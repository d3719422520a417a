/**
 * Moments, spans, time codes and frames.
 *
 * Seconds are doubles. Spans are half-open: a span holds its start and not its end.
 * A moment always belongs to one clock, and its name or its type says whose: a recording's
 * (HTMLMediaElement.currentTime), a sitting's, a cut's, or the wall's. `docs/time.md` says how
 * recording time relates to the time stamps inside a file.
 */
export {
  type ClockDoubt,
  type ClockFromMoments,
  clockFromMoments,
  type MomentPair,
  plausibleRate,
} from "./clock-from-moments.ts";
export {
  type Cut,
  type FilmPlace,
  filmPlaces,
  filmSpans,
  filmToRecording,
  makeCut,
  type PlacedSegment,
  type Segment,
  type SourceMoment,
  type SourceSpan,
  shownOf,
  sourcesAt,
  sourceTime,
} from "./cut.ts";
export { isoDuration, readIsoDuration } from "./duration.ts";
export {
  type FrameTimecode,
  type ReadTimecode,
  readFrameTimecode,
  sayFrameTimecode,
  timeOfFrame,
} from "./frame-timecode.ts";
export { type Frames, frameAt, intervalOf, middleOf } from "./frames.ts";
export { gapsBetween } from "./gaps.ts";
export { type MediaFragment, mediaFragment, readMediaFragment } from "./media-fragment.ts";
export {
  countedTo,
  droppedAtMinute,
  type FrameRate,
  rateOf,
  readRate,
  sayRate,
  writtenRates,
} from "./rate.ts";
export { readTimecode, sayMoment, sayWallDate, sayWallSpan, sayWallTime, timecode } from "./say.ts";
export { type ClockSetting, toRecordingTime, toSittingTime } from "./sitting.ts";
export type { Span } from "./span.ts";
