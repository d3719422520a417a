"use client";
import Link from "next/link";
import type { ReactNode } from "react";
import { type Soak, soakState, whereWasI } from "#lib/procedure/index.ts";
import { sayMoment, sayWallDate } from "#lib/time/index.ts";
import { saySoak } from "../due/say-soak.ts";
import { ToMark } from "./to-mark.tsx";
import { useLedger, useNow } from "./use-ledger.ts";

/** How things stand, for somebody who comes back after weeks: from the marks alone. */
export function WhereWasI() {
  const { ledger, procedure, document } = useLedger();
  const now = useNow();
  const stands = whereWasI(ledger, procedure, document, now);
  const { off, loose, soaking, waiting, lastFilmed, lastMark, next } = stands;
  if (!lastMark) return null;
  return (
    <section className="block where" aria-labelledby="where-title">
      <h2 id="where-title">Where was I?</h2>
      <p style={{ fontSize: "1.15rem" }}>
        <b>Next:</b> {next.mark ? <ToMark mark={next.mark}>{next.words}</ToMark> : next.words}
      </p>
      <ul className="lines">
        {soaking.map((soak) => (
          <SoakLine key={soak.mark} soak={soak} now={now} />
        ))}
        {waiting.map((line) => (
          <li key={line.mark}>
            <span className="grow">
              Left provisional: <ToMark mark={line.mark}>{line.what || "no words yet"}</ToMark>
              {line.waitsFor && <span className="soft"> until {line.waitsFor}</span>}
            </span>
          </li>
        ))}
        <Names title="Loose" of={loose.map((one) => ({ mark: one.fitted?.mark ?? "", name: one.name }))} />
        <Names
          title="Off"
          of={off.map((one) => ({ mark: one.lines.at(-1)?.event.mark ?? "", name: one.name }))}
          more={<Link href={`/builds/${document.build.id}/parts`}>the parts sheet</Link>}
        />
        <li>
          <span className="grow">
            Last mark: <ToMark mark={lastMark.id} />
            {lastFilmed && (
              <span className="soft">
                {" "}
                · last filmed: {lastFilmed.recording.name}
                {lastFilmed.at > 0 && `, to ${sayMoment(lastFilmed.at)}`}
                {lastFilmed.recording.madeAt && `, ${sayWallDate(lastFilmed.recording.madeAt)}`}
              </span>
            )}
          </span>
        </li>
      </ul>
    </section>
  );
}

/** At most a handful of names: the parts sheet has them all. */
function Names({
  title,
  of,
  more,
}: {
  title: string;
  of: { mark: string; name: string }[];
  more?: ReactNode;
}) {
  if (of.length === 0) return null;
  return (
    <li>
      <span className="grow">
        {title}:{" "}
        {of.slice(0, 8).map(({ mark, name }, index) => (
          <span key={mark + name}>
            {index > 0 && ", "}
            <ToMark mark={mark}>{name}</ToMark>
          </span>
        ))}
        {of.length > 8 && ` and ${of.length - 8} more`}
        {more && <span className="soft"> · {more}</span>}
      </span>
    </li>
  );
}

/** A soak with what its limits mean now, and why there are any. */
function SoakLine({ soak, now }: { soak: Soak; now: number }) {
  const { state } = soakState(soak, now);
  return (
    <li>
      <span className="grow">
        {state === "overdue" ? <b>Overdue: </b> : "Soaking or curing: "}
        <ToMark mark={soak.mark}>{soak.what || "no words yet"}</ToMark>{" "}
        <span className="soft">{saySoak(soak, now)}</span>
        {soak.why && <span className="soft"> · {soak.why}</span>}
      </span>
    </li>
  );
}
