"use client";
import Link from "next/link";
import { usePathname } from "next/navigation";
import { present, sittingsInOrder } from "#lib/build/index.ts";
import { sayCount } from "#lib/finding/index.ts";
import { soakState, soaksOf } from "#lib/procedure/index.ts";
import { useNow } from "../ledger/use-ledger.ts";
import { useDerived, useSessionView } from "../session/provider.tsx";

/** A cell of the title block: what stands in it, and where it leads. */
export interface Cell {
  field: string;
  value: string;
  href: string;
}

/** A row of sheets or pages of one sort. */
interface Row {
  field: string;
  ways: readonly (readonly [value: string, href: string])[];
}

const workshop: Row = {
  field: "Workshop",
  ways: [
    ["Machines", "/"],
    ["Gotchas", "/gotchas"],
    ["Find", "/find"],
    ["Reference", "/reference"],
    ["Keys and settings", "/settings"],
    ["Keep it", "/keep"],
  ],
};

/** The title block of a build's sheets, as on a drawing (data fields after ISO 7200): the way around. */
export function BuildTitleBlock() {
  const { document } = useSessionView();
  const { findings, procedure } = useDerived();
  const now = useNow();
  const { machine, build } = document;
  const home = `/builds/${build.id}`;
  const sitting = sittingsInOrder(document).at(-1);
  const path = usePathname();
  const here = present(document.sittings).find((one) => path === `${home}/sittings/${one.id}`) ?? sitting;
  const deferred = procedure.deferred.filter((line) => line.closedBy === null).length;
  const soaks = soaksOf(procedure, document);
  const overdue = soaks.filter((soak) => soakState(soak, now).state === "overdue").length;
  const cells: Cell[] = [
    { field: "Machine", value: machine.name, href: `/machines/${machine.id}` },
    { field: "Build", value: build.title, href: home },
    { field: "Sitting", value: here?.title ?? "none yet", href: here ? `${home}/sittings/${here.id}` : home },
    { field: "Findings", value: sayCount(findings), href: `${home}/findings` },
    {
      field: "Deferred",
      value: `${deferred > 0 ? deferred : "none"} open${overdue > 0 ? `, ${overdue} overdue` : ""}`,
      href: `${home}/procedure#findings`,
    },
  ];
  const sheets: Row = {
    field: "Sheets",
    ways: [
      ["Procedure", `${home}/procedure`],
      ["Parts", `${home}/parts`],
      ["Figures", `${home}/figures`],
      ["Film", `${home}/film`],
      ["Releases", `${home}/releases`],
      ["Changes", `${home}/changes`],
    ],
  };
  return <TitleBlock cells={cells} sheets={sheets} />;
}

/** A title block: cells of its own, then the ways to other sheets and pages; the page that is shown is inked over. */
export function TitleBlock({ cells = [], sheets }: { cells?: Cell[]; sheets?: Row }) {
  const path = usePathname();
  const leadTo = (href: string) => ({
    href,
    prefetch: false,
    "aria-current": path === href ? ("page" as const) : undefined,
  });
  return (
    <nav className="sheet-nav" aria-label="Title block">
      {cells.length > 0 && (
        <div className="cells">
          {cells.map(({ field, value, href }) => (
            <Link key={field} {...leadTo(href)}>
              <small>{field}</small>
              <b>{value}</b>
            </Link>
          ))}
        </div>
      )}
      {[sheets, workshop].map(
        (row) =>
          row && (
            <div key={row.field} className="ways">
              <small>{row.field}</small>
              {row.ways.map(([value, href]) => (
                <Link key={href} {...leadTo(href)}>
                  {value}
                </Link>
              ))}
            </div>
          ),
      )}
    </nav>
  );
}
