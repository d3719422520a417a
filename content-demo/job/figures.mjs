import { plainDrawing } from "#lib/figure/index.ts";
import { markId } from "./build.mjs";
import { itemId } from "./machine.mjs";

/**
 * What is drawn on the stills, by the mark that they show: parts with the places that their leaders point at, and
 * measurements with the places they are taken between, in fractions of the picture.
 */
const drawings = {
  desk: {
    parts: [
      ["gasket", 0.227, 0.457],
      ["seal", 0.705, 0.42],
      ["washer", 0.755, 0.675],
    ],
  },
  coverOff: {
    parts: [
      ["cover", 0.62, 0.5],
      ["gasket", 0.387, 0.42],
      ["impellerNut", 0.456, 0.335],
    ],
  },
  impellerOn: {
    parts: [
      ["impeller", 0.54, 0.49],
      ["shaft", 0.411, 0.4125],
      ["seal", 0.371, 0.417],
      ["key", 0.418, 0.374],
    ],
  },
  measure: {
    view: "view A",
    crop: { x: 0.2, y: 0, width: 0.6, height: 1 },
    parts: [["shaft", 0.435, 0.535]],
    measurements: [["shaft-diameter", [0.515, 0.555], [0.5, 0.63], -0.16]],
  },
  coverOn: {
    parts: [
      ["cover", 0.58, 0.35],
      ["gasket", 0.39, 0.4],
      ["impeller", 0.425, 0.45],
    ],
  },
};

/** The drawing of the still of that mark; a plain one where nothing is drawn on it. */
export function drawingOf(of) {
  const { parts = [], measurements = [], ...shown } = drawings[of] ?? {};
  return {
    ...plainDrawing,
    ...shown,
    balloons: parts.map(([name, x, y], index) => ({
      id: `balloon-${index + 1}`,
      item: itemId(name),
      at: { x, y },
      seat: null,
    })),
    dimensions: measurements.map(([name, from, to, stand], index) => ({
      id: `dimension-${index + 1}`,
      mark: markId(name),
      from: { x: from[0], y: from[1] },
      to: { x: to[0], y: to[1] },
      stand,
    })),
  };
}
