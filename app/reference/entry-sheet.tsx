"use client";
import {
  type Entry,
  type Figure,
  inInches,
  inMillimetres,
  type SideBySide,
  type Source,
} from "#lib/reference/index.ts";

/** One answer as a ruled sheet: the sentence, the figures in both systems, what stands beside it, the sources. */
export function EntrySheet({ entry, first }: { entry: Entry; first: boolean }) {
  const { title, about, says, figures, beside, notes } = entry;
  const sources = [...new Set([...figures.map(({ source }) => source), ...(beside?.sources ?? [])])];
  const mark = (source: Source): string => `${sources.indexOf(source) + 1}`;
  return (
    <article className={first ? "entry first" : "entry"} aria-label={title}>
      <header>
        <h2>{title}</h2>
        <span className="soft small">{about}</span>
      </header>
      {says && <p className="says">{says}</p>}
      {figures.length > 0 && <Figures figures={figures} mark={mark} />}
      {beside && <Beside beside={beside} mark={mark} />}
      {notes.map((note) => (
        <p key={note} className="soft small note">
          {note}
        </p>
      ))}
      <Sources sources={sources} />
    </article>
  );
}

function Figures({ figures, mark }: { figures: Figure[]; mark: (source: Source) => string }) {
  return (
    <table className="figures">
      <thead>
        <tr>
          <th scope="col">figure</th>
          <th scope="col">metric</th>
          <th scope="col">inch</th>
          <th scope="col" className="mark">
            source
          </th>
        </tr>
      </thead>
      <tbody>
        {figures.map((figure) => (
          <tr key={`${figure.label} ${figure.value ?? figure.mm}`}>
            <th scope="row">{figure.label}</th>
            {figure.mm === undefined ? (
              figure.other === undefined ? (
                <td colSpan={2}>{figure.value}</td>
              ) : (
                <>
                  <td>{figure.value}</td>
                  <td>{figure.other}</td>
                </>
              )
            ) : (
              <>
                <td>{inMillimetres(figure.mm)}</td>
                <td>{inInches(figure.mm)}</td>
              </>
            )}
            <td className="mark">{mark(figure.source)}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

function Beside({ beside, mark }: { beside: SideBySide; mark: (source: Source) => string }) {
  const { caption, columns, rows, sources } = beside;
  const align = columns.map((_, index) => columnClass(rows.map(({ cells }) => cells[index] ?? "")));
  return (
    <div className="sideways" role="region" aria-label={caption} tabIndex={0}>
      <table className="facing">
        <caption>
          {caption} <span className="marks">{sources.map(mark).join(", ")}</span>
        </caption>
        <thead>
          <tr>
            <td />
            {columns.map((column, index) => (
              <th key={column} scope="col" className={align[index]}>
                {column}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map(({ label, cells }) => (
            <tr key={label}>
              <th scope="row">{label}</th>
              {cells.map((cell, index) => (
                // biome-ignore lint/suspicious/noArrayIndexKey: a cell has no other name than its column
                <td key={index} className={align[index]}>
                  {cell}
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}

const isFigure = (cell: string): boolean => /^[-+−±×\d–][\d\s.,–to+−%°µm]*$/u.test(cell) || cell === "";

/** A column of figures stands to the right, so that their points are under each other; one of words to the left. */
export function columnClass(cells: readonly string[]): "words" | undefined {
  return cells.filter(isFigure).length * 2 > cells.length ? undefined : "words";
}

/** The sources of a sheet, numbered as the figures are; what is only remembered says so. */
export function Sources({ sources }: { sources: Source[] }) {
  return (
    <ol className="sources small" aria-label="Sources">
      {sources.map((source) => (
        <li key={`${source.standard} ${source.seen}`}>
          {source.standard}.{" "}
          {source.how === "memory" ? (
            <b>From memory, to be verified.</b>
          ) : (
            <span className="soft">
              {source.how === "read" ? "Read in" : "Worked out:"} {source.seen}.
            </span>
          )}
          {source.doubt && <> Doubt: {source.doubt}.</>}
        </li>
      ))}
    </ol>
  );
}
