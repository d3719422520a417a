import { drawableOf } from "#lib/figure/index.ts";
import { finding } from "#lib/finding/index.ts";
import { type DrawnFigure, type Figure, stepsOf } from "#lib/procedure/index.ts";
import type { Rule } from "../rule.ts";

/** A balloon or a dimension that stands for nothing, or points outside what is shown. */
export const lineUndrawn: Rule = {
  id: "line-undrawn",
  title: "A balloon or dimension that is not drawn",
  explanation:
    "A balloon belongs to a part and a dimension to a measurement. Where that has gone, or the picture has been cropped so that the place is no longer on it, the line is kept and left out of what is printed.",
  source: "ISO 6433: an item reference stands for an item of the list",
  check: ({ procedure }) =>
    stepsOf(procedure).flatMap((step) =>
      step.stills.flatMap((figure) =>
        figure.drawn ? undrawnOf({ ...figure, drawn: figure.drawn }, step.number) : [],
      ),
    ),
  examples: [
    {
      says: "a balloon of a part that is in the parts list, and a dimension of a measurement that is there",
      sketch: {
        marks: [
          [1, "action", { words: "Take off the cover" }],
          [2, "part", { item: "Cover", event: "removed" }],
          [3, "measurement", { words: "Bore", asFitted: { typed: "12 mm" } }],
        ],
        drawings: [{ mark: "action@1", items: ["name:cover"], measurements: ["measurement@3"] }],
      },
      finds: 0,
    },
    {
      says: "a balloon of a part that no mark names any more, and a dimension whose measurement is gone",
      sketch: {
        marks: [[1, "action", { words: "Take off the cover" }]],
        drawings: [{ mark: "action@1", items: ["name:cover"], measurements: ["measurement@3"] }],
      },
      finds: 2,
    },
  ],
};

function undrawnOf(figure: Figure & { drawn: DrawnFigure }, step: number) {
  const { drawing, numbers, values } = figure.drawn;
  const numberOf = (item: string) => numbers.find((one) => one.item === item)?.number ?? null;
  const wordsOf = (mark: string) => values.find((one) => one.mark === mark)?.text ?? null;
  const size = figure.width > 0 && figure.height > 0 ? figure : { width: 4, height: 3 };
  const { undrawn } = drawableOf(drawing, size, numberOf, wordsOf);
  return undrawn.map((id) => {
    const balloon = drawing.balloons.find((one) => one.id === id);
    const dimension = drawing.dimensions.find((one) => one.id === id);
    const number = balloon ? numberOf(balloon.item) : null;
    const text = dimension ? wordsOf(dimension.mark) : null;
    const what = balloon
      ? `balloon${number === null ? "" : ` ${number}`}`
      : `dimension${text === null ? "" : ` “${text}”`}`;
    const gone = balloon ? "its part is not in the parts list" : "its measurement has gone";
    const outside = "it points at what the picture no longer shows";
    return finding({
      rule: "line-undrawn",
      severity: "doubtful",
      place: { mark: figure.mark, still: figure.still, field: id },
      evidence: `${id}\n${number ?? text ?? ""}`,
      found: `A ${what} on a picture of step ${step} is not drawn: ${number === null && text === null ? gone : outside}.`,
      expected:
        "A balloon of a part in the list, a dimension of a measurement, each pointing at what is shown.",
      todo: "Tie it to the part or measurement that is meant, show more of the picture, or take it off.",
      source: lineUndrawn.source,
    });
  });
}
