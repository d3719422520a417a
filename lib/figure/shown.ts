import type { Drawing, Point } from "./drawing.ts";

/** Width and height, in whichever unit is said. */
export interface Size {
  width: number;
  height: number;
}

/** From original pixels to shown ones: x' = a·x + c·y + e, y' = b·x + d·y + f, as SVG and CSS write a matrix. */
export interface Matrix {
  a: number;
  b: number;
  c: number;
  d: number;
  e: number;
  f: number;
}

/** A picture as a drawing shows it: its size in whole pixels, and the way there and back. */
export interface Shown extends Size {
  /** From pixels of the original to pixels of the shown picture. */
  matrix: Matrix;
  /** From a place on the original, in fractions of it, to pixels of the shown picture. */
  toShown: (at: Point) => Point;
  /** From pixels of the shown picture to fractions of the original. */
  fromShown: (at: Point) => Point;
}

type Turn = Pick<Drawing, "quarter" | "straighten" | "crop">;

/** How a drawing shows a picture of `size` pixels: turned, straightened, cropped. `toShown` and `fromShown` undo each other. */
export function shown(drawing: Turn, size: Size): Shown {
  const { matrix, width, height } = matrixOf(drawing, size);
  const back = inverse(matrix);
  return {
    width,
    height,
    matrix,
    toShown: ({ x, y }) => through(matrix, { x: x * size.width, y: y * size.height }),
    fromShown: (at) => {
      const { x, y } = through(back, at);
      return { x: x / size.width, y: y / size.height };
    },
  };
}

/** How many times as light the picture is shown, of what its pixels say. */
export function lightFactor({ light }: Pick<Drawing, "light">): number {
  return 2 ** light;
}

/** The size of a picture after its quarter turns and its straightening, before it is cropped. */
export function turnedSize({ quarter, straighten }: Omit<Turn, "crop">, size: Size): Size {
  const turned = quarter % 180 === 0 ? size : { width: size.height, height: size.width };
  const part = upright(straighten, turned);
  return { width: turned.width * part, height: turned.height * part };
}

/**
 * How much of a picture is left when it is turned by a few degrees and its empty corners are cut off: the largest
 * upright rectangle of its own proportions inside the turned one.
 */
function upright(degrees: number, { width, height }: Size): number {
  const angle = Math.abs(degrees * (Math.PI / 180));
  return 1 / (Math.cos(angle) + Math.sin(angle) * Math.max(width / height, height / width));
}

function matrixOf(drawing: Turn, size: Size): Size & { matrix: Matrix } {
  const { quarter, straighten, crop } = drawing;
  const turned = turnedSize(drawing, size);
  const width = Math.max(1, Math.round(turned.width * crop.width));
  const height = Math.max(1, Math.round(turned.height * crop.height));
  const [sx, sy] = [width / (turned.width * crop.width), height / (turned.height * crop.height)];
  const [cos, sin] = turn(quarter, straighten);
  // About the middle of the original, which becomes the middle of the turned picture.
  const middle = { x: (0.5 - crop.x) * turned.width, y: (0.5 - crop.y) * turned.height };
  const [x, y] = [size.width / 2, size.height / 2];
  const matrix = {
    a: sx * cos,
    b: sy * sin,
    c: -sx * sin,
    d: sy * cos,
    e: sx * (middle.x - cos * x + sin * y),
    f: sy * (middle.y - sin * x - cos * y),
  };
  return { width, height, matrix };
}

/** Cosine and sine of the whole turn; exact for quarter turns. */
function turn(quarter: Drawing["quarter"], straighten: number): [cos: number, sin: number] {
  const angle = straighten * (Math.PI / 180);
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  const turns: Record<Drawing["quarter"], [number, number]> = {
    0: [cos, sin],
    90: [-sin, cos],
    180: [-cos, -sin],
    270: [sin, -cos],
  };
  return turns[quarter];
}

function through({ a, b, c, d, e, f }: Matrix, { x, y }: Point): Point {
  return { x: a * x + c * y + e, y: b * x + d * y + f };
}

function inverse({ a, b, c, d, e, f }: Matrix): Matrix {
  const area = a * d - b * c;
  return {
    a: d / area,
    b: -b / area,
    c: -c / area,
    d: a / area,
    e: (c * f - d * e) / area,
    f: (b * e - a * f) / area,
  };
}
