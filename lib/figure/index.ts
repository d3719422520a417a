/** Figures: what is drawn on a still, how the still is shown, and where balloons and dimension lines stand. */

export type { DimensionLines } from "./dimension.ts";
export { type Drawable, drawableOf, type NumberOf, type ShownPicture, type WordsOf } from "./drawable.ts";
export {
  type Balloon,
  type Crop,
  type Dimension,
  type Drawing,
  drawing,
  type HandSeat,
  hasLines,
  isAsTaken,
  isPlain,
  type Point,
  plainDrawing,
  point,
  wholePicture,
} from "./drawing.ts";
export type { Box, Segment } from "./geometry.ts";
export type { Sheet } from "./layout.ts";
export {
  asSeat,
  atOriginal,
  type BalloonLines,
  type FigureLines,
  type FigureSize,
  figureLines,
} from "./lines.ts";
export { type Frame, type PlaceOptions, type Placing, placeBalloons, type Target } from "./place.ts";
export { lightFactor, type Matrix, type Shown, type Size, shown, turnedSize } from "./shown.ts";
export { overlayOf, type PictureOfFigure, svgOf } from "./svg.ts";
