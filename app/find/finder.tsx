"use client";
import Link from "next/link";
import { useEffect, useId, useState } from "react";
import { kinds } from "#lib/mark/index.ts";
import type { Found } from "#lib/store/search/find.ts";
import { timecode } from "#lib/time/index.ts";

/** What can be found, by its kind, with the words for it. */
const things: readonly [kind: string, words: string][] = [
  ["gotcha", "Gotchas"],
  ["part", "Parts in marks"],
  ["item", "Parts lists"],
  ["measurement", "Measurements"],
  ["action", "Actions"],
  ["caution", "Cautions"],
  ["deferred", "Deferred"],
  ["tool", "Tools"],
  ["consumable", "Consumables"],
  ["cue", "What was said"],
];

interface Answer {
  found: Found[];
  instead: { typed: string; read: string[] }[];
}

/** Finds while it is typed: words, parts of them, part numbers, other names of the trade; slips are forgiven. */
export function Finder({
  initial = "",
  only,
  machines = [],
  address,
}: {
  initial?: string;
  /** The one kind that is looked for; all, with a choice, where there is none. */
  only?: string;
  machines?: { id: string; name: string }[];
  /** Where the page with this field stands, so that the question stands in its address. */
  address?: string;
}) {
  const [text, setText] = useState(initial);
  const [kind, setKind] = useState(only ?? "");
  const [machine, setMachine] = useState("");
  const answer = useAnswer(text, kind, machine);
  const ids = { text: useId(), kind: useId(), machine: useId() };
  const change = (next: string) => {
    setText(next);
    if (!address) return;
    const asked = next.trim() === "" ? address : `${address}?q=${encodeURIComponent(next.trim())}`;
    window.history.replaceState(null, "", asked);
  };
  return (
    <search className="finder">
      <div className="form">
        <div className="wide">
          <label htmlFor={ids.text}>
            {only === "gotcha" ? "Find in the gotchas" : "A word, a part number, “where did that spring go?”"}
          </label>
          <input
            id={ids.text}
            type="search"
            value={text}
            maxLength={300}
            autoComplete="off"
            spellCheck={false}
            onChange={(event) => change(event.target.value)}
          />
        </div>
        {!only && (
          <div>
            <label htmlFor={ids.kind}>Among</label>
            <select id={ids.kind} value={kind} onChange={(event) => setKind(event.target.value)}>
              <option value="">everything</option>
              {things.map(([value, words]) => (
                <option key={value} value={value}>
                  {words}
                </option>
              ))}
            </select>
          </div>
        )}
        {machines.length > 1 && (
          <div>
            <label htmlFor={ids.machine}>Of</label>
            <select id={ids.machine} value={machine} onChange={(event) => setMachine(event.target.value)}>
              <option value="">every machine</option>
              {machines.map((one) => (
                <option key={one.id} value={one.id}>
                  {one.name}
                </option>
              ))}
            </select>
          </div>
        )}
      </div>
      <div aria-live="polite">
        {answer?.instead.map(({ typed, read }) => (
          <p key={typed} className="soft small">
            No “{typed}” is written anywhere; looked for {read.map((one) => `“${one}”`).join(", ")}.
          </p>
        ))}
        {answer && answer.found.length === 0 && text.trim() !== "" && <p>Nothing has these words.</p>}
      </div>
      {answer && answer.found.length > 0 && (
        <ul className="lines" aria-label="Found">
          {answer.found.map((one) => (
            <li key={`${one.source} ${one.row} ${one.part}`}>
              <span className="kind-word small">{wordOf(one)}</span>
              <span className="grow">
                <Link href={placeOf(one)}>{one.text || "no words"}</Link>
              </span>
              <span className="soft small">
                {one.at !== null && <span className="num">{timecode(one.at)} </span>}
                {[one.buildTitle, one.machineName].filter(Boolean).join(", ")}
              </span>
            </li>
          ))}
        </ul>
      )}
    </search>
  );
}

function wordOf({ source, kind }: Found): string {
  if (source === "item") return "Parts list";
  if (source === "cue") return "Said";
  if (source === "gotcha") return "Gotcha book";
  return kinds.find((one) => one.kind === kind)?.word ?? "Mark";
}

/** Where something found is shown: a mark at its second, a cue's second, a gotcha, a machine. */
function placeOf({ source, row, build, machine, sitting, recording, at }: Found): string {
  if (source === "gotcha") return `/gotchas/${encodeURIComponent(row)}`;
  if (source === "item") return `/machines/${encodeURIComponent(machine ?? "")}`;
  const log = `/builds/${encodeURIComponent(build ?? "")}/sittings/${encodeURIComponent(sitting ?? "")}`;
  if (source === "mark") return `${log}?mark=${encodeURIComponent(row)}`;
  const moment = at === null ? "" : `&at=${at}`;
  return `${log}?recording=${encodeURIComponent(recording ?? "")}${moment}`;
}

/** How long a pause in typing is before the program is asked, in milliseconds. */
const PAUSE = 60;

function useAnswer(text: string, kind: string, machine: string): Answer | null {
  const [answer, setAnswer] = useState<Answer | null>(null);
  useEffect(() => {
    if (text.trim() === "") {
      setAnswer(null);
      return;
    }
    const gone = new AbortController();
    const timer = setTimeout(async () => {
      const query = new URLSearchParams({ text });
      if (kind) query.set("kind", kind);
      if (machine) query.set("machine", machine);
      const response = await fetch(`/find/answers?${query}`, { signal: gone.signal }).catch(() => null);
      if (response?.ok) setAnswer((await response.json()) as Answer);
    }, PAUSE);
    return () => {
      clearTimeout(timer);
      gone.abort();
    };
  }, [text, kind, machine]);
  return answer;
}
