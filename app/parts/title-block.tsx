"use client";
import Link from "next/link";
import { usePathname } from "next/navigation";
import { present, sittingsInOrder } from "#lib/build/index.ts";
import { sayCount } from "#lib/finding/index.ts";
import { soakState, soaksOf } from "#lib/procedure/index.ts";
import { useNow } from "../ledger/use-ledger.ts";
import { useDerived, useSessionView } from "../session/provider.tsx";

interface Cell {
  field: string;
  value: string;
  href: string;
}

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
    { field: "Sheet", value: "Procedure", href: `${home}/procedure` },
    { field: "Sheet", value: "Figures", href: `${home}/figures` },
    { field: "Sheet", value: "Releases", href: `${home}/releases` },
    { field: "Sheet", value: "Film", href: `${home}/film` },
    { field: "Sheet", value: "Parts", href: `${home}/parts` },
    { field: "Sheet", value: "Changes", href: `${home}/changes` },
    { field: "Book", value: "Machines", href: "/" },
    { field: "Book", value: "Gotchas", href: "/gotchas" },
    { field: "Book", value: "Find", href: "/find" },
    { field: "Book", value: "Reference", href: "/reference" },
    { field: "Findings", value: sayCount(findings), href: `${home}/findings` },
    {
      field: "Deferred",
      value: `${deferred > 0 ? deferred : "none"} open${overdue > 0 ? `, ${overdue} overdue` : ""}`,
      href: `${home}/procedure#findings`,
    },
    { field: "Workshop", value: "Keys and settings", href: "/settings" },
    { field: "Workshop", value: "Keep it", href: "/keep" },
  ];
  return <TitleBlock cells={cells} />;
}

/** A title block of these cells; the cell of the page that is shown is inked over. */
export function TitleBlock({ cells }: { cells: Cell[] }) {
  const path = usePathname();
  return (
    <nav className={cells.length < 6 ? "sheet-nav short" : "sheet-nav"} aria-label="Title block">
      {cells.map(({ field, value, href }) => (
        <Link
          key={`${field} ${value} ${href}`}
          href={href}
          prefetch={false}
          aria-current={path === href ? "page" : undefined}
        >
          <small>{field}</small>
          <b>{value}</b>
        </Link>
      ))}
    </nav>
  );
}
