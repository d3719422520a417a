"use client";
import { useEffect, useMemo, useState } from "react";
import { ledgerOf } from "#lib/procedure/index.ts";
import { useDerived } from "../session/provider.tsx";

/** The ledger of the open build, a moment behind the last mark. */
export function useLedger() {
  const derived = useDerived();
  const { procedure, document } = derived;
  const ledger = useMemo(() => ledgerOf(procedure, document), [procedure, document]);
  return { ...derived, ledger };
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
