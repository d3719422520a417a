"use client";
import { useState } from "react";
import type { Difference } from "#lib/procedure/index.ts";
import { sayWords } from "../parts/send.ts";

/** What differs between a release and another, or the build as it is now (`to` null): asked for when it is opened. */
export function Differences({ from, to, says }: { from: string; to: string | null; says: string }) {
  const [found, setFound] = useState<Difference[] | string | null>(null);
  const ask = async () => {
    const query = to === null ? "" : `?to=${encodeURIComponent(to)}`;
    const response = await fetch(`/release/${encodeURIComponent(from)}/differences${query}`).catch(
      () => null,
    );
    const answer = (await response?.json().catch(() => null)) ?? { found: "The program does not answer." };
    setFound(response?.ok ? answer.differences : sayWords(answer));
  };
  return (
    <details onToggle={(event) => event.currentTarget.open && void ask()}>
      <summary>{says}</summary>
      {typeof found === "string" && (
        <p className="finding" role="alert">
          {found}
        </p>
      )}
      {Array.isArray(found) && found.length === 0 && <p>Nothing differs.</p>}
      {Array.isArray(found) && found.length > 0 && (
        <ul className="lines">
          {found.map((one) => (
            <DifferenceLine key={`${one.mark} ${one.what} ${one.before} ${one.after}`} difference={one} />
          ))}
        </ul>
      )}
    </details>
  );
}

function DifferenceLine({ difference: { step, what, before, after, concern } }: { difference: Difference }) {
  return (
    <li>
      <b className="num">Step {step}</b>
      <span className="grow">
        {what}: {before !== "" && <del>{before}</del>} {after !== "" && <ins>{after}</ins>}
      </span>
      <span className="soft small">{concern === "redo" ? "may have to be done again" : "to be read"}</span>
    </li>
  );
}
