"use client";
import Link from "next/link";
import { containersOf } from "#lib/procedure/index.ts";
import { ToMark } from "./to-mark.tsx";
import { useLedger } from "./use-ledger.ts";

/** Bags and tins: what went in, what came out, what lies in them. */
export function Containers() {
  const { ledger, document } = useLedger();
  const containers = containersOf(ledger);
  if (containers.length === 0) return null;
  return (
    <section className="block" aria-labelledby="containers-title">
      <h2 id="containers-title">Bags and tins</h2>
      <ul className="lines">
        {containers.map((one) => (
          <li key={one.name}>
            <span className="grow">
              <b>{one.name}</b>{" "}
              {one.holds.length === 0 ? (
                <span className="soft">empty</span>
              ) : (
                one.holds.map((held, index) => (
                  <span key={held.event.mark}>
                    {index > 0 && ", "}
                    <ToMark mark={held.event.mark}>
                      {held.count} {held.name}
                    </ToMark>
                  </span>
                ))
              )}
            </span>
            <span className="soft small">
              {one.countedIn} in · {one.countedOut} out
            </span>
          </li>
        ))}
      </ul>
      <p className="small">
        <Link href={`/builds/${document.build.id}/parts/labels`}>Labels to print</Link>
      </p>
    </section>
  );
}
