"use client";
import { useEffect, useId, useState } from "react";
import { present, type Recording, type Sitting } from "#lib/build/index.ts";
import { sameStem } from "#lib/captions/index.ts";
import { bringCaptions, isCaptionFile } from "../captions/bring-captions.ts";
import { send, Trouble } from "../parts/send.ts";
import { useSession } from "../session/provider.tsx";
import { BrokenOffFiles, useBrokenOff } from "./recordings/broken-off.tsx";
import { useIndex } from "./recordings/index-state.tsx";
import { isSameFile, type Rows, type SendingState, sendFile } from "./recordings/send-file.ts";

interface Arriving extends SendingState {
  name: string;
}

/** Brings recordings into a sitting: files from this browser, or a folder in which they stay where they are. */
export function BringIn({ sitting }: { sitting: Sitting }) {
  const session = useSession();
  const { ask } = useIndex();
  const brokenOff = useBrokenOff(sitting);
  const [arriving, setArriving] = useState<Arriving | null>(null);
  const [stop, setStop] = useState<AbortController | null>(null);
  const [said, setSaid] = useState<string | null>(null);
  const [over, setOver] = useState(false);
  const id = useId();
  useWarnBeforeLeaving(arriving !== null);

  const bringFiles = async (chosen: File[]) => {
    if (chosen.length === 0) return;
    const going = new AbortController();
    setStop(going);
    const trouble: string[] = [];
    const captions = chosen.filter((file) => isCaptionFile(file.name));
    for (const file of chosen.filter((one) => !captions.includes(one))) {
      const { name } = file;
      const from = (await brokenOff.ask()).find((one) => isSameFile(file, one)) ?? null;
      const onState = (state: SendingState) => setArriving({ name, ...state });
      onState({ doing: "sending", fraction: from ? from.offset / from.size : 0 });
      try {
        const { buildId: build, id: at } = sitting;
        const rows = await sendFile(file, { build, sitting: at, from, signal: going.signal, onState });
        session.take(rows);
        if (rows.every(({ row }) => row.gone !== null))
          trouble.push(`${name} was here already, byte for byte.`);
      } catch (error) {
        if (going.signal.aborted) break;
        trouble.push(`${name}: ${error instanceof Trouble ? error.message : "it could not be brought in."}`);
      }
    }
    for (const file of captions) {
      const film = filmOf(file, present(session.document.recordings), sitting.id);
      const wrong = film
        ? await bringCaptions(session, film, file)
        : `${file.name} has the name of no film here.`;
      if (wrong) trouble.push(wrong);
    }
    setArriving(null);
    setStop(null);
    setSaid(trouble.length > 0 ? trouble.join(" ") : null);
    await brokenOff.ask();
    ask();
  };
  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: dropping is a second way; the file field is the first
    <div
      className={over ? "drop over" : "drop"}
      style={{ marginTop: 12 }}
      onDragOver={(event) => {
        event.preventDefault();
        setOver(true);
      }}
      onDragLeave={() => setOver(false)}
      onDrop={(event) => {
        event.preventDefault();
        setOver(false);
        if (!arriving) void bringFiles([...event.dataTransfer.files]);
      }}
    >
      <div className="form" style={{ maxWidth: "none" }}>
        <div>
          <label htmlFor={id}>
            Drop films here, or choose them; they are copied into the workshop, captions of the same name with
            them
          </label>
          <input
            id={id}
            type="file"
            multiple
            disabled={arriving !== null}
            accept="video/*,.mkv,.mts,.mov,.vtt,.srt,.txt"
            onChange={(event) => {
              const chosen = [...(event.target.files ?? [])];
              event.target.value = "";
              void bringFiles(chosen);
            }}
          />
        </div>
        <ListFolder sitting={sitting} onSaid={setSaid} />
      </div>
      {arriving && <ArrivingFile arriving={arriving} onStop={() => stop?.abort()} />}
      {!arriving && <BrokenOffFiles files={brokenOff.files} onLetGo={brokenOff.letGo} />}
      {said && (
        <p className="finding" role="status">
          {said}
        </p>
      )}
    </div>
  );
}

/** The film that captions belong to, by their names; in this sitting before others. */
function filmOf(file: File, recordings: readonly Recording[], sittingId: string): Recording | undefined {
  const its = recordings.filter((recording) => sameStem(file.name, recording.name));
  return its.find((recording) => recording.sittingId === sittingId) ?? its[0];
}

function ArrivingFile({ arriving, onStop }: { arriving: Arriving; onStop: () => void }) {
  const { name, doing, fraction } = arriving;
  return (
    <div style={{ margin: "10px 0 0" }}>
      <div className="row-of-buttons" style={{ justifyContent: "space-between", flexWrap: "nowrap" }}>
        <p role="status" style={{ margin: 0, overflowWrap: "anywhere" }}>
          {doing === "sending" && `Bringing in ${name}, ${Math.floor(fraction * 100)} %`}
          {doing === "waiting" &&
            `${name} waits: the program does not answer. It goes on when the program is back.`}
          {doing === "checking" && `Checking ${name} against what was sent`}
        </p>
        <button type="button" className="plain" onClick={onStop}>
          Stop
        </button>
      </div>
      {doing !== "waiting" && (
        <progress
          {...(doing === "sending" ? { value: fraction } : {})}
          max={1}
          aria-label={`Bringing in ${name}`}
        />
      )}
    </div>
  );
}

interface FolderListed {
  rows: Rows;
  listed: number;
  known: number;
  elsewhere: number;
  found: { from: string; to: string }[];
  second: number;
  ignored: number;
  unreadable: { path: string; why: string }[];
  stoppedAt: "depth" | "entries" | null;
  captions: number;
  badCaptions: string[];
}

function ListFolder({ sitting, onSaid }: { sitting: Sitting; onSaid: (words: string | null) => void }) {
  const session = useSession();
  const { ask } = useIndex();
  const [folder, setFolder] = useState("");
  const [busy, setBusy] = useState(false);
  const id = useId();
  const list = async () => {
    onSaid(null);
    setBusy(true);
    try {
      const place = { build: sitting.buildId, sitting: sitting.id, folder };
      const listed = await send<FolderListed>("/media/folders", place);
      session.take(listed.rows);
      onSaid(sayListed(listed));
      setFolder("");
      ask();
    } catch (error) {
      onSaid(error instanceof Trouble ? error.message : "The folder could not be listed.");
    }
    setBusy(false);
  };
  return (
    <form
      onSubmit={(event) => {
        event.preventDefault();
        void list();
      }}
    >
      <label htmlFor={id}>
        Or a folder where films lie; they stay there, untouched, and captions beside them are read
      </label>
      <div style={{ display: "flex", gap: 10 }}>
        <input id={id} value={folder} required onChange={(event) => setFolder(event.target.value)} />
        <button type="submit" disabled={busy} style={{ whiteSpace: "nowrap" }}>
          List it
        </button>
      </div>
    </form>
  );
}

function sayListed(listed: FolderListed): string {
  const { found, second, elsewhere, unreadable, stoppedAt, captions, badCaptions } = listed;
  const moved = found.slice(0, 5).map(({ from, to }) => (from === to ? from : `${from}, now ${to}`));
  return [
    `${listed.listed} listed where they lie; ${listed.known} were known already; ${listed.ignored} other files left alone.`,
    found.length > 0 &&
      `Found again: ${moved.join("; ")}${found.length > 5 ? `; and ${found.length - 5} more` : ""}.`,
    captions > 0 && `Captions that lie beside them were taken in for ${captions}.`,
    badCaptions.length > 0 && `No captions could be read in ${badCaptions.slice(0, 3).join("; ")}.`,
    second > 0 && `${second} are a second way to a film that is known.`,
    elsewhere > 0 && `${elsewhere} of the known ones belong to other builds.`,
    unreadable.length > 0 &&
      `${unreadable.length} could not be read: ${unreadable[0]?.path} (${unreadable[0]?.why}).`,
    stoppedAt === "depth" && "Folders that lie more than twelve deep were left out: list them by themselves.",
    stoppedAt === "entries" && "The folder holds more than 100,000 files: list its folders by themselves.",
  ]
    .filter(Boolean)
    .join(" ");
}

/** A file that is arriving can go on later, but its page should not be closed by mistake. */
function useWarnBeforeLeaving(going: boolean): void {
  useEffect(() => {
    if (!going) return;
    const warn = (event: BeforeUnloadEvent) => event.preventDefault();
    window.addEventListener("beforeunload", warn);
    return () => window.removeEventListener("beforeunload", warn);
  }, [going]);
}
