"use client";
import { useDeferredValue, useId, useMemo, useState } from "react";
import { replyTo } from "#lib/reference/index.ts";
import { EntrySheet } from "./entry-sheet.tsx";

const examples = [
  "0.247 in 26 tpi",
  "2 BA tap",
  "1/4 BSF",
  "BSF metric spanner",
  "25 H7/g6",
  "M8 8.8 torque",
  "6205",
  "18 gauge",
  "brown black red",
  "0 BA and M6",
];

/** The field that understands what is typed as every quantity field does, and what the tables say to it. */
export function Ask({ initial }: { initial: string }) {
  const [text, setText] = useState(initial);
  const settled = useDeferredValue(text);
  const reply = useMemo(() => replyTo(settled), [settled]);
  const field = useId();
  const change = (next: string) => {
    setText(next);
    const address = next.trim() === "" ? "/reference" : `/reference?q=${encodeURIComponent(next.trim())}`;
    window.history.replaceState(null, "", address);
  };
  return (
    <>
      <form className="ask" action="/reference" role="search" onSubmit={(event) => event.preventDefault()}>
        <label htmlFor={field}>A thread, a drill, a fit, a spanner, a gauge, a bearing, a value</label>
        <input
          id={field}
          name="q"
          type="search"
          value={text}
          autoComplete="off"
          spellCheck={false}
          maxLength={200}
          onChange={(event) => change(event.target.value)}
        />
        <p className="read num" aria-live="polite">
          {reply.read && <>Read as: {reply.read}</>}
        </p>
      </form>
      {text.trim() === "" && (
        <ul className="examples" aria-label="Examples">
          {examples.map((example) => (
            <li key={example}>
              <button type="button" className="plain num" onClick={() => change(example)}>
                {example}
              </button>
            </li>
          ))}
        </ul>
      )}
      <div aria-live="polite" className="answers" data-for={settled}>
        {reply.ask && <p className="asked">It is not plain: {reply.ask}. Each reading is answered below.</p>}
        {reply.nothing && <p className="nothing">{reply.nothing}</p>}
        {reply.entries.map((entry, index) => (
          <EntrySheet key={`${entry.title} ${entry.about}`} entry={entry} first={index === 0} />
        ))}
      </div>
    </>
  );
}
