import { type BuildDocument, present } from "#lib/build/index.ts";
import { type Drawing, isPlain } from "#lib/figure/index.ts";
import type { DrawnFigure, MeasurementLine, PartLine, Step } from "./tree.ts";

/** Gives the figures of steps what is drawn on their stills, with the numbers and values that stand there. */
export function withDrawings(
  steps: readonly Step[],
  parts: readonly PartLine[],
  measurements: readonly MeasurementLine[],
  document: BuildDocument,
): Step[] {
  const drawings = new Map(present(document.stills).map(({ id, drawing }) => [id, drawing]));
  return steps.map((step) => ({
    ...step,
    stills: step.stills.map((figure) => {
      const drawing = drawings.get(figure.still);
      if (!drawing || isPlain(drawing)) return figure;
      return { ...figure, drawn: drawnFigure(drawing, parts, measurements) };
    }),
  }));
}

/** A drawing with what its balloons and dimensions stand for. */
export function drawnFigure(
  drawing: Drawing,
  parts: readonly PartLine[],
  measurements: readonly MeasurementLine[],
): DrawnFigure {
  const items = [...new Set(drawing.balloons.map(({ item }) => item))];
  const marks = [...new Set(drawing.dimensions.map(({ mark }) => mark))];
  return {
    drawing,
    numbers: items.flatMap((item) => {
      const part = parts.find((line) => line.item === item) ?? parts.find((line) => nameKey(line) === item);
      return part ? [{ item, number: part.balloon }] : [];
    }),
    values: marks.flatMap((mark) => {
      const line = measurements.find((one) => one.mark === mark);
      return line ? [{ mark, text: dimensionText(line) }] : [];
    }),
  };
}

/** What an item is called while it has no id of its own: a balloon from then still finds it. */
function nameKey({ name }: PartLine): string {
  return `name:${name.toLowerCase().replace(/\s+/g, " ")}`;
}

/** The most that stands on a dimension, in letters; the table of the measurement has everything. */
const mostLetters = 24;

/**
 * What stands on the dimension of a measurement: the value as fitted, else as specified, and the limit where there is
 * room for it; where nobody has said one, what is measured. As found is not as it should be: the table alone has it.
 */
export function dimensionText({ values, what }: Pick<MeasurementLine, "values" | "what">): string {
  const typed = (name: keyof typeof values) => values[name]?.typed.replace(/\s+/g, " ").trim() ?? "";
  const value = typed("asFitted") || typed("specified");
  const limit = typed("limit") && `limit ${typed("limit")}`;
  const alone = value || limit || what.trim() || "not said what";
  const both = value && limit ? [`${value} (${limit})`] : [];
  // The same in other units, in brackets, is the first to go.
  const choices = [...both, alone, alone.replace(/\s*\([^()]*\)$/, "")];
  const fits = choices.find((text) => [...text].length <= mostLetters);
  return fits ?? cutAtWord(alone);
}

/** As many whole words as there is room for: half a number would be another one. */
function cutAtWord(text: string): string {
  const start = [...text].slice(0, mostLetters - 1).join("");
  return `${start.replace(/\s+\S*$/, "")}…`;
}
