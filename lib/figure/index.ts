/** Figures: what is drawn on a still, how the still is shown, and where balloons and dimension lines stand. */
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
export { lightFactor, type Matrix, type Shown, type Size, shown, turnedSize } from "./shown.ts";
