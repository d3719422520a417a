"use client";
import { useRouter } from "next/navigation";
import { useId, useMemo, useState } from "react";
import { type Asked, type AssemblyEntry, draftAssembly, writeDraft } from "#lib/procedure/index.ts";
import { useSession } from "../session/provider.tsx";
import { keepWord, markPart } from "./deeds.ts";
import { Folded } from "./folded.tsx";
import { ToMark } from "./to-mark.tsx";
import { useLedger } from "./use-ledger.ts";

const states = { off: "still off", back: "back on", "left out": "left out", scrapped: "scrapped" } as const;

/** The way back together: the strip-down in reverse, with what reversal never has. */
export function Assembly() {
  const { ledger, procedure, document } = useLedger();
  const { entries, circles } = useMemo(
    () => draftAssembly(ledger, procedure, document),
    [ledger, procedure, document],
  );
  if (entries.length === 0) return null;
  return (
    <section className="block" aria-labelledby="assembly-title">
      <h2 id="assembly-title">The way back together</h2>
      <p className="soft small">
        What came off, in the reverse order, moved only where one part goes on over another. Each stands with
        the second it came off. Assembly is not strip-down reversed: what is asked below it has to come from
        you.
      </p>
      {circles.map((circle) => (
        <p className="finding wrong" key={circle[0]?.mark}>
          <b>No order satisfies this.</b>{" "}
          {circle.map((one) => (
            <span key={one.mark + one.under}>
              <ToMark mark={one.mark}>{one.overName}</ToMark> goes on over{" "}
            </span>
          ))}
          {circle.at(-1)?.underName}.
        </p>
      ))}
      <ol className="lines assembly">
        {entries.map((entry) => (
          <Entry key={entry.item} entry={entry} />
        ))}
      </ol>
      <WriteDown entries={entries} />
    </section>
  );
}

/** The draft as actions of a sitting to come: something to follow and to change. */
function WriteDown({ entries }: { entries: AssemblyEntry[] }) {
  const session = useSession();
  const router = useRouter();
  const off = entries.filter((entry) => entry.state === "off").length;
  if (off === 0) return null;
  const write = () => {
    const { sitting, marks } = writeDraft(session.document, entries, () => crypto.randomUUID());
    session.change("Assembly drafted from the strip-down", [
      { table: "sitting", row: sitting },
      ...marks.map((row) => ({ table: "mark" as const, row })),
    ]);
    router.push(`/builds/${session.document.build.id}/sittings/${sitting.id}`);
  };
  return (
    <button type="button" style={{ marginTop: 12 }} onClick={write}>
      Write {off === 1 ? "this" : `these ${off}`} down as actions of a new sitting
    </button>
  );
}

function Entry({ entry }: { entry: AssemblyEntry }) {
  const session = useSession();
  const open = entry.asked.filter(isOpen);
  return (
    <li>
      <div className="grow">
        <p style={{ margin: 0 }}>
          <b>{entry.name}</b>
          {entry.count > 1 && ` × ${entry.count}`} <span className="soft">{states[entry.state]}</span>, came
          off at <ToMark mark={entry.off.mark} />
          {entry.back && (
            <>
              , back on at <ToMark mark={entry.back.mark} />
            </>
          )}
          {entry.off.says.wayRound && <span className="soft"> · {entry.off.says.wayRound}</span>}
          {entry.off.says.place && <span className="soft"> · {entry.off.says.place}</span>}
          {entry.after.length > 0 && <span className="soft"> · after {entry.after.join(", ")}</span>}
        </p>
        {entry.foundWrong && (
          <p className="small" style={{ margin: 0 }}>
            <b>As found is not as right:</b> {entry.foundWrong}
          </p>
        )}
        {entry.fromTrial.map((one) => (
          <p className="small" style={{ margin: 0 }} key={one.mark}>
            From the trial fit: <ToMark mark={one.mark}>{one.words || "no words yet"}</ToMark>
          </p>
        ))}
        <Folded
          small
          summary={
            open.length === 0
              ? "Nothing open"
              : `${open.length} to answer: ${open.map((one) => one.name).join(", ")}`
          }
        >
          {() => <Questions entry={entry} />}
        </Folded>
      </div>
      {entry.state === "off" && (
        <button type="button" className="plain" onClick={() => markPart(session, entry, "fitted")}>
          Fitted now<span className="hidden-words">: {entry.name}</span>
        </button>
      )}
    </li>
  );
}

function isOpen(asked: Asked): boolean {
  return asked.mark === null && asked.answer === null;
}

function Questions({ entry }: { entry: AssemblyEntry }) {
  const session = useSession();
  const open = entry.asked.filter(isOpen);
  return (
    <>
      <ul className="lines">
        {entry.asked.map((asked) => (
          <Question key={asked.name} asked={asked} />
        ))}
      </ul>
      {open.length > 0 && (
        <button
          type="button"
          className="plain"
          onClick={() => {
            for (const asked of open) keepWord(session, asked.key, "not needed");
          }}
        >
          None of the open ones is needed
        </button>
      )}
    </>
  );
}

function Question({ asked }: { asked: Asked }) {
  const session = useSession();
  const [text, setText] = useState("");
  const id = useId();
  if (asked.mark !== null) {
    return (
      <li>
        <span className="grow">{asked.ask}</span>
        <ToMark mark={asked.mark}>by a mark</ToMark>
      </li>
    );
  }
  if (asked.answer !== null) {
    return (
      <li>
        <span className="grow">
          {asked.ask} <b>{asked.answer}</b>
        </span>
        <button type="button" className="plain" onClick={() => keepWord(session, asked.key, "")}>
          Take back
        </button>
      </li>
    );
  }
  return (
    <li>
      <form
        className="row-of-buttons grow"
        onSubmit={(event) => {
          event.preventDefault();
          keepWord(session, asked.key, text);
        }}
      >
        <label htmlFor={id} style={{ flex: "1 1 14em" }}>
          {asked.ask}
        </label>
        <input
          id={id}
          value={text}
          onChange={(event) => setText(event.target.value)}
          style={{ flex: "1 1 14em" }}
        />
        <button type="submit" className="plain">
          Keep
        </button>
        <button type="button" className="plain" onClick={() => keepWord(session, asked.key, "not needed")}>
          Not needed
        </button>
      </form>
    </li>
  );
}
