"use client";
import Link from "next/link";
import { onOf } from "#lib/procedure/index.ts";
import { FindingNote } from "../parts/finding-note.tsx";
import { SheetPage } from "../parts/sheet-page.tsx";
import { Accounts } from "./accounts.tsx";
import { Assembly } from "./assembly.tsx";
import { Containers } from "./containers.tsx";
import { HoldPoints } from "./hold-points.tsx";
import { Kits } from "./kits.tsx";
import { useLedger } from "./use-ledger.ts";

const ofKits = new Set(["kit-left-over", "kit-short"]);

/** What has become of every part: the account, the way back together, kits, bags and tins, and what to prove. */
export function PartsSheet() {
  const { document, findings, ledger } = useLedger();
  const known = new Set(ledger.events.map((event) => event.mark));
  const own = findings.filter(
    (one) =>
      one.answer === undefined && (ofKits.has(one.rule) || (one.place.mark && known.has(one.place.mark))),
  );
  const on = ledger.accounts.reduce((sum, account) => sum + onOf(account.now), 0);
  return (
    <SheetPage
      title="Parts"
      of={`${document.machine.name} · ${document.build.title}`}
      className="page ledger"
      about={
        <>
          {ledger.accounts.length} parts in {ledger.events.length} marks · {on} pieces on ·{" "}
          <Link href={`/builds/${document.build.id}/parts/labels`}>Labels to print</Link>
        </>
      }
    >
      {own.length > 0 && (
        <section className="block" aria-labelledby="parts-findings">
          <h2 id="parts-findings">What does not add up</h2>
          {own.slice(0, 30).map((finding) => (
            <FindingNote key={finding.key} finding={finding} />
          ))}
          {own.length > 30 && (
            <p className="soft small">And {own.length - 30} more, on the procedure’s sheet.</p>
          )}
        </section>
      )}
      <Accounts />
      <Assembly />
      <Kits />
      <Containers />
      <HoldPoints />
    </SheetPage>
  );
}
