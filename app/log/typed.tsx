"use client";
import { useEffect, useId, useMemo, useRef, useState } from "react";
import type { Field, Mark } from "#lib/mark/index.ts";
import { typedOf, wordsOf } from "#lib/mark/index.ts";
import { read, say } from "#lib/quantity/index.ts";
import { useSession, useSessionView } from "../session/provider.tsx";
import { settleItem, writeField } from "./deeds.ts";
import { usedBefore } from "./used-before.ts";

/** How long a pause in typing is before what was typed goes to disk, in milliseconds. */
const PAUSE = 250;

/**
 * A text as it is typed: kept after each pause, on leaving the field, and when the field goes away. A change
 * from elsewhere shows when nothing typed here is waiting.
 */
export function useTyped(value: string, keep: (text: string) => void) {
  const [text, setText] = useState(value);
  const waiting = useRef<{ timer: ReturnType<typeof setTimeout>; text: string } | null>(null);
  const keeper = useRef(keep);
  keeper.current = keep;
  const flush = () => {
    if (!waiting.current) return;
    clearTimeout(waiting.current.timer);
    const last = waiting.current.text;
    waiting.current = null;
    keeper.current(last);
  };
  const flusher = useRef(flush);
  flusher.current = flush;
  useEffect(() => {
    if (!waiting.current) setText(value);
  }, [value]);
  useEffect(() => {
    const leave = () => flusher.current();
    window.addEventListener("pagehide", leave);
    return () => {
      window.removeEventListener("pagehide", leave);
      leave();
    };
  }, []);
  return {
    text,
    flush,
    change: (next: string) => {
      setText(next);
      if (waiting.current) clearTimeout(waiting.current.timer);
      waiting.current = { text: next, timer: setTimeout(() => flusher.current(), PAUSE) };
    },
  };
}

/** One field of a mark. */
export function FieldOf({ mark, field }: { mark: Mark; field: Field }) {
  const session = useSession();
  const id = useId();
  const value = field.form === "quantity" ? typedOfRaw(mark, field.name) : rawWords(mark, field.name);
  const { text, change, flush } = useTyped(value, (next) => writeField(session, mark.id, field, next));
  const wide = field.form === "text" || field.form === "quantity" ? "wide" : "";
  const common = {
    id,
    value: text,
    "data-field": field.name,
    onBlur: () => {
      flush();
      if (field.form === "item") settleItem(session, mark.id);
    },
    autoComplete: "off",
  };
  return (
    <div className={`${field.form === "quantity" ? "quantity" : wide}`}>
      <label htmlFor={id}>
        {field.label}
        {field.hint && <span className="soft"> · {field.hint}</span>}
      </label>
      {field.form === "text" ? (
        <textarea {...common} rows={1} onChange={(event) => change(event.target.value)} />
      ) : field.form === "choice" ? (
        <Choices common={common} field={field} text={text} change={change} />
      ) : (
        <input
          {...common}
          type="text"
          inputMode={field.form === "count" ? "numeric" : "text"}
          list={`${id}-known`}
          onChange={(event) => change(event.target.value)}
        />
      )}
      {field.form !== "text" && field.form !== "choice" && (
        <Known id={`${id}-known`} mark={mark} field={field} />
      )}
      {field.form === "quantity" && <ReadAs text={text} />}
    </div>
  );
}

function Choices({
  common,
  field,
  text,
  change,
}: {
  common: { id: string; value: string; onBlur: () => void };
  field: Field;
  text: string;
  change: (text: string) => void;
}) {
  const known = field.choices ?? [];
  return (
    <select {...common} onChange={(event) => change(event.target.value)}>
      <option value="">{field.blank ?? "not said yet"}</option>
      {known.map((choice) => (
        <option key={choice.value} value={choice.value}>
          {choice.label}
        </option>
      ))}
      {text !== "" && !known.some((choice) => choice.value === text) && <option value={text}>{text}</option>}
    </select>
  );
}

/** What can be picked while a field is typed: the machine's parts, and what stands in that field of other marks. */
function Known({ id, mark, field }: { id: string; mark: Mark; field: Field }) {
  const { document } = useSessionView();
  const known = useMemo(() => usedBefore(document, mark, field), [document, mark, field]);
  return (
    <datalist id={id}>
      {known.map((text) => (
        <option key={text} value={text} />
      ))}
    </datalist>
  );
}

/** How a value was read, while it is typed. */
function ReadAs({ text }: { text: string }) {
  const { document } = useSessionView();
  const reading = read(text, { decimal: document.build.decimal });
  return (
    <div className="read-as" aria-live="polite">
      {reading.kind !== "empty" && <b>{say(reading)}</b>}
    </div>
  );
}

function rawWords(mark: Mark, name: string): string {
  const value = mark.fields[name];
  return typeof value === "string" ? value : wordsOf(mark, name);
}

function typedOfRaw(mark: Mark, name: string): string {
  const value = mark.fields[name] as { typed?: string } | undefined;
  return value?.typed ?? typedOf(mark, name);
}
