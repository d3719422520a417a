"use client";
import { useEffect, useId, useState } from "react";
import type { Row, TableName } from "#lib/store/tables.ts";
import { send, Trouble } from "../../parts/send.ts";
import { useSession } from "../../session/provider.tsx";

interface Words {
  found: string;
  expected: string;
  todo: string;
}

/**
 * Says that a film is not where it was, and takes it from where the restorer says it is now. `brief` where the drive
 * it lies on is spoken of elsewhere on the sheet.
 */
export function NotThere({
  recording,
  away,
  brief = false,
  onFound,
}: {
  recording: string;
  away: Words;
  brief?: boolean;
  onFound: () => void;
}) {
  return (
    <div className="finding" role="note">
      <p>{brief ? "Its drive or folder is not there." : `${away.found} ${away.expected} ${away.todo}`}</p>
      <SayWhere recording={recording} onFound={onFound} />
    </div>
  );
}

function SayWhere({ recording, onFound }: { recording: string; onFound: () => void }) {
  const session = useSession();
  const [file, setFile] = useState("");
  const [said, setSaid] = useState<string | null>(null);
  const id = useId();
  const submit = async () => {
    setSaid(null);
    try {
      const address = `/media/recordings/${encodeURIComponent(recording)}/file`;
      const { rows } = await send<{ rows: { table: TableName; row: Row }[] }>(address, { file });
      session.take(rows);
      onFound();
    } catch (error) {
      setSaid(error instanceof Trouble ? error.message : "It did not work. Try again.");
    }
  };
  return (
    <details>
      <summary>Say where it is now</summary>
      <form
        onSubmit={(event) => {
          event.preventDefault();
          void submit();
        }}
      >
        <label htmlFor={id}>The film's whole path on this computer</label>
        <div style={{ display: "flex", gap: 10 }}>
          <input id={id} value={file} required onChange={(event) => setFile(event.target.value)} />
          <button type="submit" className="plain" style={{ whiteSpace: "nowrap" }}>
            Take it
          </button>
        </div>
        {said && <p role="alert">{said}</p>}
      </form>
    </details>
  );
}

/**
 * The same for a sheet that shows one recording: it asks the program where the film is when `failed` says that the
 * picture does not come, and again every few seconds until it is there. `onFound` may load the picture anew.
 */
export function FilmNotThere({
  recording,
  failed,
  onFound,
}: {
  recording: string;
  failed: boolean;
  onFound: () => void;
}) {
  const [away, setAway] = useState<Words | null>(null);
  useEffect(() => {
    if (!failed) return setAway(null);
    let current = true;
    let wasAway = false;
    const ask = async () => {
      const address = `/media/recordings/${encodeURIComponent(recording)}/whereabouts`;
      const response = await fetch(address).catch(() => null);
      const told = response?.ok ? ((await response.json()) as { away: Words | null }) : null;
      if (!current || !told) return;
      setAway(told.away);
      if (wasAway && told.away === null) onFound();
      wasAway = told.away !== null;
    };
    void ask();
    const timer = setInterval(ask, 4000);
    return () => {
      current = false;
      clearInterval(timer);
    };
  }, [recording, failed, onFound]);
  return away && <NotThere recording={recording} away={away} onFound={onFound} />;
}
