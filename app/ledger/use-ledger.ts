"use client";
import { useEffect, useState } from "react";
import { type Ledger, ledgerOf } from "#lib/procedure/index.ts";
import type { Derived } from "../session/derived.ts";
import { useDerived } from "../session/provider.tsx";

/** The ledger of the open build, a moment behind the last mark. */
export function useLedger() {
  const derived = useDerived();
  return { ...derived, ledger: ledgerFor(derived) };
}

let last: (Pick<Derived, "procedure" | "document"> & { ledger: Ledger }) | undefined;

/** The last ledger is kept: every part of a sheet asks for the same one. */
function ledgerFor({ procedure, document }: Derived): Ledger {
  if (last?.procedure !== procedure || last.document !== document) {
    last = { procedure, document, ledger: ledgerOf(procedure, document) };
  }
  return last.ledger;
}

/** Seconds since 1970, looked at again each half minute: what is due becomes so while the page lies open. */
export function useNow(): number {
  const [now, setNow] = useState(() => Date.now() / 1000);
  useEffect(() => {
    const timer = setInterval(() => setNow(Date.now() / 1000), 30_000);
    return () => clearInterval(timer);
  }, []);
  return now;
}
