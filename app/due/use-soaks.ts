"use client";
import { usePathname } from "next/navigation";
import { useEffect, useState } from "react";
import type { OpenSoak } from "#lib/store/index.ts";

/** How often it is asked what soaks: another tab, or another build, may have begun or ended something. */
const ASK_EVERY = 30_000;

/** What soaks, cures or lies in a bath in any build, as the workshop on disk has it; asked again on each page. */
export function useSoaks(): readonly OpenSoak[] {
  const [soaks, setSoaks] = useState<readonly OpenSoak[]>([]);
  const path = usePathname();
  // biome-ignore lint/correctness/useExhaustiveDependencies: another page asks again
  useEffect(() => {
    let current = true;
    // While the program is away, what was known last stays.
    const ask = () =>
      fetch("/due/soaks")
        .then((response) => (response.ok ? response.json() : null))
        .then((found) => current && found && setSoaks(found))
        .catch(() => undefined);
    void ask();
    const timer = setInterval(ask, ASK_EVERY);
    window.addEventListener("focus", ask);
    return () => {
      current = false;
      clearInterval(timer);
      window.removeEventListener("focus", ask);
    };
  }, [path]);
  return soaks;
}
