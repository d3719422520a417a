"use client";
import { useId } from "react";
import { asTaken, cropped, turned } from "#lib/figure/change.ts";
import { type Drawing, isAsTaken, type Size, wholePicture } from "#lib/figure/index.ts";
import { useTyped } from "../log/typed.tsx";
import { NumberField } from "./number-field.tsx";
import type { FigureDeeds } from "./parts-of-figure.tsx";

/** How the picture is shown: name of the view, turned, straightened, cropped, lightened. The original stays as it is. */
export function ShownFields({
  drawing,
  size,
  deeds,
}: {
  drawing: Drawing;
  /** Of the original, in pixels. */
  size: Size;
  deeds: FigureDeeds;
}) {
  const { draw } = deeds;
  const isWhole = drawing.crop.width === 1 && drawing.crop.height === 1;
  return (
    <section className="figure-block" aria-labelledby="figure-shown">
      <h2 id="figure-shown">How it is shown</h2>
      <div className="form">
        <ViewName drawing={drawing} deeds={deeds} />
        <NumberField
          label="Straighten, degrees clockwise"
          value={drawing.straighten}
          least={-15}
          most={15}
          step={0.5}
          keep={(straighten) => draw("Picture straightened", (now) => ({ ...now, straighten }))}
        />
        <NumberField
          label="Light, 0 as taken, 1 twice as light, -1 half"
          value={drawing.light}
          least={-1}
          most={1}
          step={0.1}
          keep={(light) => draw("Light of a picture", (now) => ({ ...now, light }))}
        />
      </div>
      <div className="row-of-buttons">
        <button
          type="button"
          className="plain"
          onClick={() => draw("Turned a quarter", (now) => turned(now, 270, size))}
        >
          Turn a quarter to the left
        </button>
        <button
          type="button"
          className="plain"
          onClick={() => draw("Turned a quarter", (now) => turned(now, 90, size))}
        >
          Turn a quarter to the right
        </button>
      </div>
      <CutOff drawing={drawing} deeds={deeds} />
      <div className="row-of-buttons">
        <button type="button" className="plain" onClick={() => deeds.take({ deed: "crop", corner: null })}>
          Crop between two corners
        </button>
        {!isWhole && (
          <button
            type="button"
            className="plain"
            onClick={() => draw("Picture not cropped", (now) => cropped(now, wholePicture))}
          >
            The whole picture
          </button>
        )}
        {!isAsTaken(drawing) && (
          <button type="button" className="plain" onClick={() => draw("Picture as taken", asTaken)}>
            As it was taken
          </button>
        )}
      </div>
      <p className="soft small">Only the figure changes; the still is kept as it was taken.</p>
    </section>
  );
}

/** Names of views that are usual on drawings; any other words may be written. */
const usualViews = ["view A", "view B", "view C", "detail A", "detail B", "section", "before", "after"];

function ViewName({ drawing, deeds }: { drawing: Drawing; deeds: FigureDeeds }) {
  const id = useId();
  const { text, change, flush } = useTyped(drawing.view, (view) =>
    deeds.draw("Name of a view", (now) => ({ ...now, view: view.trim() })),
  );
  return (
    <div>
      <label htmlFor={id}>Name of the view: “view A”, “detail B”, “before”, “after”</label>
      <input
        id={id}
        value={text}
        maxLength={40}
        list={`${id}-usual`}
        autoComplete="off"
        onChange={(event) => change(event.target.value)}
        onBlur={flush}
      />
      <datalist id={`${id}-usual`}>
        {usualViews.map((view) => (
          <option key={view} value={view} />
        ))}
      </datalist>
    </div>
  );
}

/** What is cut off at each edge, in hundredths of the turned picture. */
function CutOff({ drawing, deeds }: { drawing: Drawing; deeds: FigureDeeds }) {
  const { x, y, width, height } = drawing.crop;
  const edges = [
    ["left", x, 0.95 - (1 - x - width)],
    ["right", 1 - x - width, 0.95 - x],
    ["top", y, 0.95 - (1 - y - height)],
    ["bottom", 1 - y - height, 0.95 - y],
  ] as const;
  const cut = (edge: (typeof edges)[number][0], part: number) =>
    deeds.draw("Picture cropped", (now) => cropped(now, cropFrom(now.crop, edge, part)));
  return (
    <fieldset className="cut-off">
      <legend>Cut off, % of the picture</legend>
      {edges.map(([edge, part, most]) => (
        <NumberField
          key={edge}
          label={`at the ${edge}`}
          value={hundredths(part)}
          least={0}
          most={Math.max(0, Math.floor(most * 100))}
          step={1}
          keep={(percent) => cut(edge, percent / 100)}
        />
      ))}
    </fieldset>
  );
}

const hundredths = (part: number) => Math.round(Math.max(0, part) * 1000) / 10;

function cropFrom(crop: Drawing["crop"], edge: "left" | "right" | "top" | "bottom", part: number) {
  const { x, y, width, height } = crop;
  if (edge === "left") return { ...crop, x: part, width: x + width - part };
  if (edge === "right") return { ...crop, width: 1 - part - x };
  if (edge === "top") return { ...crop, y: part, height: y + height - part };
  return { ...crop, height: 1 - part - y };
}
