"use client";
import Link from "next/link";
import { useId, useState } from "react";
import { newSitting, present, type Sitting, sittingsInOrder } from "#lib/build/index.ts";
import { stages } from "#lib/mark/index.ts";
import { sayWallDate } from "#lib/time/index.ts";
import { Brief } from "../gotchas/brief.tsx";
import { useBrief } from "../gotchas/use-brief.ts";
import { ArrivalSurvey } from "../ledger/arrival.tsx";
import { WhereWasI } from "../ledger/where-was-i.tsx";
import { Conflicts } from "../log/conflicts.tsx";
import { Saved } from "../log/keys-panel.tsx";
import { useTyped } from "../log/typed.tsx";
import { send, Trouble } from "../parts/send.ts";
import { BuildTitleBlock } from "../parts/title-block.tsx";
import { useSession, useSessionView } from "../session/provider.tsx";
import { BringIn } from "./bring-in.tsx";
import { AwayFolders } from "./recordings/away-folders.tsx";
import { IndexLine, RecordingsIndex } from "./recordings/index-state.tsx";
import { RecordingsOf } from "./recordings/of-sitting.tsx";

/** A build: what it is, its sittings with their recordings, and how it leaves the workshop. */
export function BuildSheet() {
  const session = useSession();
  const { document } = useSessionView();
  const { build, machine } = document;
  const sittings = sittingsInOrder(document);
  const addSitting = () =>
    session.change("A new sitting", [
      {
        table: "sitting",
        row: newSitting({
          id: crypto.randomUUID(),
          buildId: build.id,
          title: `Sitting ${sittings.length + 1}`,
          stage: sittings.at(-1)?.stage ?? "strip",
          began: new Date().toISOString(),
          beganTrust: "when it was entered",
          rank: Math.max(0, ...sittings.map((sitting) => sitting.rank)) + 1,
        }),
      },
    ]);
  return (
    <>
      <main className="page">
        <p className="soft small" style={{ margin: 0 }}>
          {machine.name}
        </p>
        <h1>{build.title}</h1>
        <Conflicts />
        <WhereWasI />
        <ArrivalSurvey />
        <BeforeOpening />
        <RecordingsIndex>
          <IndexLine />
          <AwayFolders />
          {sittings.map((sitting) => (
            <SittingBlock key={sitting.id} sitting={sitting} />
          ))}
        </RecordingsIndex>
        <div style={{ marginTop: 22 }}>
          <button type="button" onClick={addSitting}>
            Another sitting
          </button>
        </div>
        <section className="block">
          <h2>What the procedure says of itself</h2>
          <BuildFields />
        </section>
        <section className="block">
          <h2>Write it out as plain files</h2>
          <SendBuild buildId={build.id} />
        </section>
        <div style={{ marginTop: 20 }}>
          <Saved />
        </div>
      </main>
      <BuildTitleBlock />
    </>
  );
}

/** The brief stands where the build is opened, before anything is. */
function BeforeOpening() {
  const brief = useBrief();
  if (!brief || brief.lines.length === 0) return null;
  return (
    <section className="block brief" aria-label="Brief">
      <h2>Before you open it</h2>
      <Brief />
    </section>
  );
}

function SittingBlock({ sitting }: { sitting: Sitting }) {
  const session = useSession();
  const { document } = useSessionView();
  const marks = present(document.marks).filter((one) => one.sittingId === sitting.id);
  const log = `/builds/${document.build.id}/sittings/${sitting.id}`;
  const id = useId();
  return (
    <section className="block" aria-label={sitting.title}>
      <div className="form" style={{ maxWidth: "none" }}>
        <SittingTitle sitting={sitting} />
        <div>
          <label htmlFor={id}>Stage it begins in</label>
          <select
            id={id}
            value={sitting.stage}
            onChange={(event) =>
              session.change("Stage of a sitting", [
                { table: "sitting", row: { ...sitting, stage: event.target.value as Sitting["stage"] } },
              ])
            }
          >
            {stages.map((stage) => (
              <option key={stage}>{stage}</option>
            ))}
          </select>
        </div>
        <div style={{ alignSelf: "end" }}>
          <Link className="button main" href={log}>
            Open the log
          </Link>{" "}
          <span className="soft small">
            {marks.length} {marks.length === 1 ? "mark" : "marks"}
            {sitting.began && ` · ${sayWallDate(sitting.began)}`}
          </span>
        </div>
      </div>
      <RecordingsOf sitting={sitting} log={log} />
      <BringIn sitting={sitting} />
    </section>
  );
}

function SittingTitle({ sitting }: { sitting: Sitting }) {
  const session = useSession();
  const id = useId();
  const { text, change, flush } = useTyped(sitting.title, (title) =>
    session.change("Title of a sitting", [{ table: "sitting", row: { ...sitting, title } }]),
  );
  return (
    <div>
      <label htmlFor={id}>Sitting</label>
      <input id={id} value={text} onChange={(event) => change(event.target.value)} onBlur={flush} />
    </div>
  );
}

function BuildFields() {
  const session = useSession();
  const { document } = useSessionView();
  const { build } = document;
  const change = (columns: Partial<typeof build>) =>
    session.change("The build's own words", [
      { table: "build", row: { ...session.document.build, ...columns } },
    ]);
  const ids = { title: useId(), summary: useId(), language: useId(), decimal: useId(), ahead: useId() };
  const title = useTyped(build.title, (text) => text.trim() && change({ title: text }));
  const summary = useTyped(build.summary, (text) => change({ summary: text }));
  return (
    <div className="form">
      <div className="wide">
        <label htmlFor={ids.title}>Title</label>
        <input
          id={ids.title}
          value={title.text}
          onChange={(event) => title.change(event.target.value)}
          onBlur={title.flush}
        />
      </div>
      <div className="wide">
        <label htmlFor={ids.summary}>What it is for, in a sentence or two</label>
        <textarea
          id={ids.summary}
          rows={2}
          value={summary.text}
          onChange={(event) => summary.change(event.target.value)}
          onBlur={summary.flush}
        />
      </div>
      <div>
        <label htmlFor={ids.language}>Language of its words</label>
        <input
          id={ids.language}
          defaultValue={build.language}
          onBlur={(event) => change({ language: event.target.value.trim() || "en" })}
        />
      </div>
      <div>
        <label htmlFor={ids.decimal}>Decimal sign</label>
        <select
          id={ids.decimal}
          value={build.decimal}
          onChange={(event) => change({ decimal: event.target.value as "." | "," })}
        >
          <option value=".">point: 1.5</option>
          <option value=",">comma: 1,5</option>
        </select>
      </div>
      <div>
        <label htmlFor={ids.ahead}>A warning belongs to an action that follows within, seconds</label>
        <input
          id={ids.ahead}
          type="number"
          min={0}
          max={600}
          value={build.warnAhead}
          onChange={(event) =>
            change({ warnAhead: Math.min(600, Math.max(0, event.target.valueAsNumber || 0)) })
          }
        />
      </div>
    </div>
  );
}

/** Writes the build to a folder of this computer. */
function SendBuild({ buildId }: { buildId: string }) {
  const session = useSession();
  const [folder, setFolder] = useState("");
  const [films, setFilms] = useState(false);
  const [said, setSaid] = useState<string | null>(null);
  const id = useId();
  const submit = async () => {
    await session.settled();
    try {
      const { files } = await send<{ files: number }>("/folders/out", { folder, build: buildId, films });
      setSaid(`${files} files written to ${folder}.`);
    } catch (error) {
      setSaid(error instanceof Trouble ? error.message : "It did not work. Try again.");
    }
  };
  return (
    <form
      style={{ maxWidth: 720 }}
      onSubmit={(event) => {
        event.preventDefault();
        void submit();
      }}
    >
      <label htmlFor={id}>A new folder on this computer</label>
      <input id={id} value={folder} required onChange={(event) => setFolder(event.target.value)} />
      <label style={{ padding: "10px 0", color: "inherit", fontSize: "1rem" }}>
        <input type="checkbox" checked={films} onChange={(event) => setFilms(event.target.checked)} />
        with the films
      </label>
      <button type="submit">Write the build folder</button>
      {said && (
        <p className="finding" role="status">
          {said}
        </p>
      )}
    </form>
  );
}
