"use client";
import { useId, useState } from "react";
import { firstReadings, type HoldPoint, holdPointsOf } from "#lib/procedure/index.ts";
import { useSession } from "../session/provider.tsx";
import { keepWord } from "./deeds.ts";
import { ToMark } from "./to-mark.tsx";
import { useLedger } from "./use-ledger.ts";

const made = {
  "left provisional": "left provisional",
  "not torqued": "fitted, not torqued",
  limit: "a limit",
  hazard: "a hazard",
} as const;

/** What to look at before it first runs, and what was read then. */
export function HoldPoints() {
  const { ledger, procedure, document } = useLedger();
  const points = holdPointsOf(ledger, procedure, document);
  const readings = firstReadings(procedure);
  if (!ledger.assembling || points.length + readings.length === 0) return null;
  return (
    <section className="block" aria-labelledby="hold-title">
      <h2 id="hold-title">Before it first runs</h2>
      <ul className="lines">
        {points.map((point) => (
          <Point key={point.key} point={point} />
        ))}
      </ul>
      {readings.length > 0 && (
        <>
          <h3 style={{ marginTop: 16 }}>First readings</h3>
          <ul className="lines">
            {readings.map((one) => (
              <li key={one.mark}>
                <span className="grow">
                  <ToMark mark={one.mark}>{one.words || "no words yet"}</ToMark>
                </span>
                <span className="num">{one.asFitted || "not read yet"}</span>
                {one.limit && <span className="soft num">{one.limit}</span>}
              </li>
            ))}
          </ul>
        </>
      )}
    </section>
  );
}

/** Open items and torques are answered by a mark; the others by the restorer's word that they were looked at. */
function Point({ point }: { point: HoldPoint }) {
  const session = useSession();
  const [text, setText] = useState("");
  const id = useId();
  const byMark = point.from === "left provisional" || point.from === "not torqued";
  return (
    <li>
      <span className="grow">
        <b>Hold:</b> <ToMark mark={point.mark}>{point.words || "no words yet"}</ToMark>{" "}
        <span className="soft small">{made[point.from]}</span>
        {point.answer !== null && <span> · looked at: {point.answer}</span>}
      </span>
      {byMark ? (
        <span className="soft small">goes when a mark says it is done</span>
      ) : point.answer !== null ? (
        <button type="button" className="plain" onClick={() => keepWord(session, point.key, "")}>
          Take back
        </button>
      ) : (
        <form
          className="row-of-buttons"
          onSubmit={(event) => {
            event.preventDefault();
            keepWord(session, point.key, text);
          }}
        >
          <label htmlFor={id} className="hidden-words">
            What you found at: {point.words}
          </label>
          <input
            id={id}
            value={text}
            placeholder="what you found"
            onChange={(event) => setText(event.target.value)}
          />
          <button type="submit" className="plain">
            Looked at
          </button>
        </form>
      )}
    </li>
  );
}
