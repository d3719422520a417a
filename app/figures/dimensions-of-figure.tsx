"use client";
import { changeDimension, withoutDimension } from "#lib/figure/change.ts";
import type { Dimension, Drawing } from "#lib/figure/index.ts";
import { dimensionText, type MeasurementLine } from "#lib/procedure/index.ts";
import { KindSign } from "../parts/kind-sign.tsx";
import { DeedButton } from "./deed-button.tsx";
import { NumberField } from "./number-field.tsx";
import type { FigureDeeds } from "./parts-of-figure.tsx";

/** The measurements that dimension lines can stand for, those of the step first, each with its lines. */
export function DimensionsOfFigure({
  own,
  others,
  drawing,
  undrawn,
  deeds,
}: {
  own: MeasurementLine[];
  others: MeasurementLine[];
  drawing: Drawing;
  /** Ids of what points outside the shown picture. */
  undrawn: ReadonlySet<string>;
  deeds: FigureDeeds;
}) {
  const drawn = new Set(drawing.dimensions.map((one) => one.mark));
  const rows = (lines: MeasurementLine[]) =>
    lines.map((line) => (
      <MeasurementRow
        key={line.mark}
        line={line}
        undrawn={undrawn}
        dimensions={drawing.dimensions.filter((one) => one.mark === line.mark)}
        deeds={deeds}
      />
    ));
  const listed = new Set([...own, ...others].map((line) => line.mark));
  const strays = drawing.dimensions.filter((one) => !listed.has(one.mark));
  const away = others.filter((line) => !drawn.has(line.mark));
  return (
    <section className="figure-block" aria-labelledby="figure-measurements">
      <h2 id="figure-measurements">Measurements</h2>
      {own.length + others.length === 0 && (
        <p className="soft small">A dimension line stands for a measurement, and this build has none yet.</p>
      )}
      <ul className="lines">
        {rows([...own, ...others.filter((line) => drawn.has(line.mark))])}
        {strays.map((one) => (
          <li key={one.id} className="figure-row">
            <KindSign mark={{ kind: "measurement", fields: { v: 1 } }} />
            <span>A dimension line whose measurement has been struck out. It does not print.</span>
            <TakeOff dimension={one} name="without a measurement" deeds={deeds} />
          </li>
        ))}
      </ul>
      {away.length > 0 && (
        <details>
          <summary>Other measurements of this build, {away.length}</summary>
          <ul className="lines">{rows(away)}</ul>
        </details>
      )}
    </section>
  );
}

function MeasurementRow({
  line,
  dimensions,
  undrawn,
  deeds,
}: {
  line: MeasurementLine;
  dimensions: Dimension[];
  undrawn: ReadonlySet<string>;
  deeds: FigureDeeds;
}) {
  const { mark } = line;
  const name = line.what || "a measurement without words";
  const text = dimensionText(line);
  return (
    <li className="figure-row">
      <span className="sign light">
        <span className="dimension" aria-hidden="true" />
        <span>
          {name} <span className="num">{text === line.what ? "no value yet" : text}</span>
        </span>
      </span>
      <DeedButton
        words={dimensions.length === 0 ? "Draw it" : "Draw another"}
        of={name}
        onClick={() => deeds.take({ deed: "dimension", mark, name, from: null })}
      />
      {dimensions.map((one) => (
        <DimensionOf key={one.id} dimension={one} name={name} outside={undrawn.has(one.id)} deeds={deeds} />
      ))}
    </li>
  );
}

function DimensionOf({
  dimension,
  name,
  outside,
  deeds,
}: {
  dimension: Dimension;
  name: string;
  outside: boolean;
  deeds: FigureDeeds;
}) {
  const { id, stand } = dimension;
  return (
    <div className="drawn-line">
      {outside && (
        <span className="small soft">
          An end lies outside what is shown of the picture; it does not print
        </span>
      )}
      <NumberField
        label="Stands off by, % of the width"
        of={name}
        value={Math.round(stand * 1000) / 10}
        least={-100}
        most={100}
        step={1}
        keep={(percent) =>
          deeds.draw(`Dimension line moved: ${name}`, (drawing) =>
            changeDimension(drawing, id, { stand: percent / 100 }),
          )
        }
      />
      <span className="row-of-buttons">
        {(["from", "to"] as const).map((end) => (
          <DeedButton
            words={end === "from" ? "Move the first end" : "Move the second end"}
            of={name}
            key={end}
            onClick={() => deeds.take({ deed: "end", dimension: id, name, end })}
          />
        ))}
        <TakeOff dimension={dimension} name={name} deeds={deeds} />
      </span>
    </div>
  );
}

function TakeOff({ dimension, name, deeds }: { dimension: Dimension; name: string; deeds: FigureDeeds }) {
  return (
    <DeedButton
      words="Take off"
      of={name}
      onClick={() =>
        deeds.draw(`Dimension line taken off: ${name}`, (drawing) => withoutDimension(drawing, dimension.id))
      }
    />
  );
}
