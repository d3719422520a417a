"use client";
import Link from "next/link";
import { soakState } from "#lib/procedure/index.ts";
import type { OpenSoak } from "#lib/store/index.ts";
import { useNow } from "../ledger/use-ledger.ts";
import { saySoak, sayUntil } from "./say-soak.ts";
import { useSoaks } from "./use-soaks.ts";

const markOf = ({ buildId, sittingId, mark }: OpenSoak) =>
  `/builds/${buildId}/sittings/${sittingId}?mark=${mark}`;

/** Above every page: what has to come out of its bath, whichever build it belongs to. */
export function DueLine() {
  const soaks = useSoaks();
  const now = useNow();
  const inState = (state: string) => soaks.filter((soak) => soakState(soak, now).state === state);
  const [first, ...others] = [...inState("overdue"), ...inState("ready")];
  if (!first) return null;
  const { state } = soakState(first, now);
  return (
    <aside className={`due-line ${state}`} aria-label="Due">
      <Link href={markOf(first)} prefetch={false}>
        <b>{state === "overdue" ? "Overdue:" : "Ready:"}</b> {first.what || "no words yet"}{" "}
        {sayUntil(first, now)} · {first.buildTitle}
      </Link>
      {others.length > 0 && (
        <Link href="/#soaks" prefetch={false} className="more">
          and {others.length} more
        </Link>
      )}
    </aside>
  );
}

/** On the first screen: all that soaks, cures or lies in a bath, due or not. */
export function Soaking() {
  const soaks = useSoaks();
  const now = useNow();
  if (soaks.length === 0) return null;
  return (
    <section className="block" id="soaks" aria-label="In a bath, or curing">
      <h2>In a bath, or curing</h2>
      <ul className="lines">
        {soaks.map((soak) => (
          <li key={soak.mark}>
            <span className="grow">
              <Link href={markOf(soak)}>{soak.what || "no words yet"}</Link>{" "}
              <span className="soft">{saySoak(soak, now)}</span>
              {soak.why && <span className="soft"> · {soak.why}</span>}
            </span>
            <span className="soft small">{soak.buildTitle}</span>
          </li>
        ))}
      </ul>
    </section>
  );
}
