"use client";
import { useId } from "react";
import { arrivalOf, type Surveyed } from "#lib/procedure/index.ts";
import { useTyped } from "../log/typed.tsx";
import { useSession } from "../session/provider.tsx";
import { keepWord } from "./deeds.ts";
import { useLedger } from "./use-ledger.ts";

/** The survey of arrival: offered before the first part comes off, and kept with what it still lacks. */
export function ArrivalSurvey() {
  const { ledger, document } = useLedger();
  const { asked, lacking, begun } = arrivalOf(ledger, document);
  return (
    <details className="block" open={!begun && lacking > 0 ? true : undefined}>
      <summary>
        <b>As it arrived</b>{" "}
        <span className="soft small">{lacking === 0 ? "all answered" : sayLacking(lacking, begun)}</span>
      </summary>
      <div className="form" style={{ marginTop: 10 }}>
        {asked.map((one) => (
          <Question key={one.key} asked={one} />
        ))}
      </div>
    </details>
  );
}

function sayLacking(lacking: number, begun: boolean): string {
  const many = lacking === 1 ? "one thing is" : `${lacking} things are`;
  return begun
    ? `${many} not answered; some of it can still be seen in the first recordings`
    : `${many} not answered: most of it cannot be found out once the first part is off`;
}

function Question({ asked }: { asked: Surveyed }) {
  const session = useSession();
  const id = useId();
  const { text, change, flush } = useTyped(asked.answer ?? "", (words) =>
    keepWord(session, asked.key, words),
  );
  return (
    <div>
      <label htmlFor={id}>{asked.ask}</label>
      <input id={id} value={text} onChange={(event) => change(event.target.value)} onBlur={flush} />
    </div>
  );
}
