"use client";
import { useEffect, useId, useRef, useState } from "react";
import type { Sitting } from "#lib/build/index.ts";
import type { Row, TableName } from "#lib/store/tables.ts";
import { sayWords, send, Trouble } from "../parts/send.ts";
import { fetchDocument } from "../session/build-session.ts";
import { useSession, useSessionView } from "../session/provider.tsx";

type Rows = { table: TableName; row: Row }[];

/** Brings recordings into a sitting: files from this browser, or a folder in which they stay where they are. */
export function BringIn({ sitting }: { sitting: Sitting }) {
  const session = useSession();
  const [progress, setProgress] = useState<{ name: string; fraction: number } | null>(null);
  const [said, setSaid] = useState<string | null>(null);
  const [over, setOver] = useState(false);
  const [folder, setFolder] = useState("");
  const files = useRef<HTMLInputElement>(null);
  const ids = { file: useId(), folder: useId() };
  useLookedAt();

  const bringFiles = async (chosen: File[]) => {
    setSaid(null);
    for (const file of chosen) {
      setProgress({ name: file.name, fraction: 0 });
      try {
        session.take(await upload(file, sitting, (fraction) => setProgress({ name: file.name, fraction })));
      } catch (error) {
        setSaid(`${file.name}: ${error instanceof Trouble ? error.message : "it could not be brought in."}`);
      }
    }
    setProgress(null);
  };
  const listFolder = async () => {
    setSaid(null);
    try {
      const answer = await send<{ rows: Rows; listed: number; known: number; ignored: number }>(
        "/media/folders",
        {
          build: sitting.buildId,
          sitting: sitting.id,
          folder,
        },
      );
      session.take(answer.rows);
      setSaid(
        `${answer.listed} listed where they lie; ${answer.known} were known already; ${answer.ignored} other files left alone.`,
      );
      setFolder("");
    } catch (error) {
      setSaid(error instanceof Trouble ? error.message : "The folder could not be listed.");
    }
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
        void bringFiles([...event.dataTransfer.files]);
      }}
    >
      <div className="form" style={{ maxWidth: "none" }}>
        <div>
          <label htmlFor={ids.file}>Drop films here, or choose them; they are copied into the workshop</label>
          <input
            id={ids.file}
            ref={files}
            type="file"
            multiple
            accept="video/*,.mkv,.mts,.mov"
            onChange={(event) => {
              const chosen = [...(event.target.files ?? [])];
              event.target.value = "";
              void bringFiles(chosen);
            }}
          />
        </div>
        <form
          onSubmit={(event) => {
            event.preventDefault();
            void listFolder();
          }}
        >
          <label htmlFor={ids.folder}>Or a folder where films lie; they stay there, untouched</label>
          <div style={{ display: "flex", gap: 10 }}>
            <input
              id={ids.folder}
              value={folder}
              required
              onChange={(event) => setFolder(event.target.value)}
            />
            <button type="submit" style={{ whiteSpace: "nowrap" }}>
              List it
            </button>
          </div>
        </form>
      </div>
      {progress && (
        <p role="status" style={{ margin: "10px 0 0" }}>
          Bringing in {progress.name}
          <progress value={progress.fraction} max={1} aria-label={`Bringing in ${progress.name}`} />
        </p>
      )}
      {said && (
        <p className="finding" role="status">
          {said}
        </p>
      )}
    </div>
  );
}

/** While recordings are being looked at, asks now and then what was found. */
function useLookedAt(): void {
  const session = useSession();
  const { document } = useSessionView();
  const waiting = document.recordings.some((one) => one.gone === null && !one.probe && !one.trouble);
  useEffect(() => {
    if (!waiting) return;
    const timer = setInterval(async () => {
      const fetched = await fetchDocument(session.document.build.id);
      const rows = (fetched?.document.recordings ?? []) as unknown as Row[];
      session.take(rows.map((row) => ({ table: "recording", row })));
    }, 1500);
    return () => clearInterval(timer);
  }, [waiting, session]);
}

/** Sends a file, telling how far it is; gives the rows that the program wrote for it. */
function upload(file: File, sitting: Sitting, onProgress: (fraction: number) => void): Promise<Rows> {
  const query = new URLSearchParams({ build: sitting.buildId, sitting: sitting.id, name: file.name });
  return new Promise((resolve, reject) => {
    const request = new XMLHttpRequest();
    request.open("POST", `/media/recordings?${query}`);
    request.setRequestHeader("content-type", "application/octet-stream");
    request.upload.onprogress = (event) => onProgress(event.total > 0 ? event.loaded / event.total : 0);
    request.onload = () => {
      const answer = JSON.parse(request.responseText || "{}") as { rows: Rows; found?: string };
      if (request.status === 200) resolve(answer.rows);
      else reject(new Trouble(sayWords(answer)));
    };
    request.onerror = () =>
      reject(new Trouble("The program did not take it to the end. Nothing partial is kept; try again."));
    request.send(file);
  });
}
