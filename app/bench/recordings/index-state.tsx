"use client";
import { createContext, type ReactNode, useCallback, useContext, useEffect, useRef, useState } from "react";
import type { Recording } from "#lib/build/index.ts";
import type { Row } from "#lib/store/tables.ts";
import { send } from "../../parts/send.ts";
import { useSession } from "../../session/provider.tsx";

/** Why a film is not where it was. */
export interface AwayFilm {
  recording: string;
  kind: string;
  found: string;
  expected: string;
  todo: string;
}

/** How far the work in the background is with the films of this build, as the program tells it. */
export interface IndexView {
  state: "working" | "stopped" | "resting";
  doing: { recording: string; what: "looking" | "reading"; fraction: number } | null;
  of: number;
  looked: number;
  hashed: number;
  away: AwayFilm[];
  /** Recordings that hold the same bytes, by groups of ids. */
  same: string[][];
}

interface Told extends IndexView {
  recordings: Recording[];
  seq: number;
}

interface IndexControls {
  view: IndexView | null;
  /** Asks at once, after something was listed or brought in. */
  ask: () => void;
  carryOut: (what: "stop" | "go on" | "look again", recording?: string) => Promise<void>;
}

const Index = createContext<IndexControls | null>(null);

/** How often the program is asked while there is work, and while there is none, in milliseconds. */
const ASK_AFTER = { working: 1000, resting: 8000 };

/** Keeps asking how far the work in the background is, and takes what it found out into the open build. */
export function RecordingsIndex({ children }: { children: ReactNode }) {
  const session = useSession();
  const [view, setView] = useState<IndexView | null>(null);
  const seq = useRef<number | null>(null);
  const build = session.document.build.id;

  const take = useCallback(
    ({ recordings, seq: latest, ...told }: Told) => {
      seq.current = latest;
      // A row that is being written here is newer than what is on disk; it is told of again once it is written.
      const fresh = recordings.filter((row) => row.rev >= (session.row("recording", row.id)?.rev ?? -1));
      if (fresh.length > 0)
        session.take(fresh.map((row) => ({ table: "recording" as const, row: row as unknown as Row })));
      setView(told);
    },
    [session],
  );
  const fetchState = useCallback(async () => {
    const since = seq.current === null ? "" : `&since=${seq.current}`;
    const response = await fetch(`/media/index?build=${encodeURIComponent(build)}${since}`).catch(() => null);
    if (response?.ok) take((await response.json()) as Told);
  }, [build, take]);

  const working = view?.state === "working" || view === null;
  useEffect(() => {
    let current = true;
    let timer: ReturnType<typeof setTimeout> | undefined;
    const again = async () => {
      if (!document.hidden) await fetchState();
      if (current) timer = setTimeout(again, ASK_AFTER[working ? "working" : "resting"]);
    };
    void again();
    const shown = () => void fetchState();
    document.addEventListener("visibilitychange", shown);
    return () => {
      current = false;
      clearTimeout(timer);
      document.removeEventListener("visibilitychange", shown);
    };
  }, [fetchState, working]);

  const carryOut = async (what: "stop" | "go on" | "look again", recording?: string) => {
    const wish = { build, do: what, ...(recording ? { recording } : {}) };
    const told = await send<Told>("/media/index", wish).catch(() => null);
    if (told) take(told);
  };
  return <Index.Provider value={{ view, ask: () => void fetchState(), carryOut }}>{children}</Index.Provider>;
}

export function useIndex(): IndexControls {
  const index = useContext(Index);
  if (!index) throw new Error("a list of recordings stands inside RecordingsIndex");
  return index;
}

/** How many films have been looked at and read whole, with a stop; nothing when all have been. */
export function IndexLine() {
  const { view, carryOut } = useIndex();
  const session = useSession();
  if (!view || view.of === 0 || (view.looked >= view.of && view.hashed >= view.of)) return null;
  const { state, doing, of, looked, hashed, away } = view;
  const name = String((doing && session.row("recording", doing.recording)?.name) ?? "");
  return (
    <section className="block" aria-label="Films being looked at">
      <div className="row-of-buttons" style={{ justifyContent: "space-between" }}>
        <p style={{ margin: 0 }} role="status">
          {looked} of {of} looked at, {hashed} of {of} read whole.{" "}
          <span className="soft">
            {state === "stopped" && "Stopped; all can be used meanwhile."}
            {state === "working" && "All can be used meanwhile."}
            {state === "resting" && away.length > 0 && "The others are not there."}
          </span>
        </p>
        {state === "working" ? (
          <button type="button" className="plain" onClick={() => void carryOut("stop")}>
            Stop
          </button>
        ) : (
          <button type="button" className="plain" onClick={() => void carryOut("go on")}>
            Go on
          </button>
        )}
      </div>
      <progress value={(looked + hashed) / (2 * of)} max={1} aria-label="Films looked at and read whole" />
      {doing && name !== "" && state === "working" && (
        <p className="soft small" style={{ margin: 0, overflowWrap: "anywhere" }}>
          {doing.what === "looking" ? "Looking at" : `Reading, ${Math.round(doing.fraction * 100)} % of`}{" "}
          {name}
        </p>
      )}
    </section>
  );
}
