"use client";
import { useState } from "react";
import { type BookTable, book, type Source } from "#lib/reference/index.ts";
import { columnClass, Sources } from "./entry-sheet.tsx";

/** All tables by standard, each opened when it is wanted. */
export function Book() {
  return book.map(({ title, tables }) => (
    <section key={title} className="chapter" aria-label={title}>
      <h3>{title}</h3>
      {tables.map((table) => (
        <Sheet key={table.id} table={table} />
      ))}
    </section>
  ));
}

function Sheet({ table }: { table: BookTable }) {
  const [open, setOpen] = useState(false);
  return (
    <details id={table.id} onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>
        <span>{table.title}</span> <span className="soft small">{table.standard}</span>
      </summary>
      {open && <Rows table={table} />}
    </details>
  );
}

function Rows({ table }: { table: BookTable }) {
  const rows = table.rows();
  const sources: Source[] = [...new Set(rows.flatMap((row) => row.sources))];
  const align = table.columns.map((_, column) => columnClass(rows.map(({ cells }) => cells[column] ?? "")));
  return (
    <>
      <div className="sideways" role="region" aria-label={table.title} tabIndex={0}>
        <table className="facing">
          <thead>
            <tr>
              {table.columns.map((column, index) => (
                <th key={column} scope="col" className={align[index]}>
                  {column}
                </th>
              ))}
              <th scope="col" className="mark">
                source
              </th>
            </tr>
          </thead>
          <tbody>
            {rows.map(({ cells, sources: own }, index) => (
              // biome-ignore lint/suspicious/noArrayIndexKey: rows do not move
              <tr key={index}>
                {cells.map((cell, column) =>
                  column === 0 ? (
                    <th key={table.columns[column]} scope="row">
                      {cell}
                    </th>
                  ) : (
                    <td key={table.columns[column]} className={align[column]}>
                      {cell}
                    </td>
                  ),
                )}
                <td className="mark">{own.map((source) => sources.indexOf(source) + 1).join(", ")}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
      <Sources sources={sources} />
    </>
  );
}
