"use client";
import Link from "next/link";
import { useSearchParams } from "next/navigation";
import { useCallback, useEffect, useMemo, useRef, useState } from "react";
import {
  type CaptionTrack,
  clocksOf,
  type Outcome,
  outcomes,
  present,
  type Recording,
} from "#lib/build/index.ts";
import { firstRemoval } from "#lib/gotcha/index.ts";
import { compareMarks, type KindName, kindNames, type Mark } from "#lib/mark/index.ts";
import type { Settings } from "#lib/store/settings.ts";
import { FilmNotThere } from "../bench/recordings/not-there.tsx";
import { BriefOfLog } from "../gotchas/brief.tsx";
import { useBrief } from "../gotchas/use-brief.ts";
import { BuildTitleBlock } from "../parts/title-block.tsx";
import { useSession, useSessionView } from "../session/provider.tsx";
import { Conflicts } from "./conflicts.tsx";
import { changeMark, dropMark, strikeOut } from "./deeds.ts";
import { type LogDraft, trackOf, useDrafts } from "./drafts.ts";
import { belongsToFocus, deedOf, keysOf } from "./keys.ts";
import { KeysPanel, Saved } from "./keys-panel.tsx";
import { LogRows } from "./log-rows.tsx";
import type { Picture } from "./picture.ts";
import { Player } from "./player.tsx";
import { Scale } from "./scale.tsx";
import { CaptionFile, Spoken } from "./spoken.tsx";
import { takeFrame, takeSharpest } from "./take-frame.ts";
import { Transport } from "./transport.tsx";
import { useReview } from "./use-review.ts";

/** The log sheet of a sitting: its marks as ruled rows, the picture set in, the scale down the edge. */
export function LogSheet({ sittingId, settings }: { sittingId: string; settings: Settings }) {
  const session = useSession();
  const { document } = useSessionView();
  const query = useSearchParams();
  const [sheet, setSheet] = useState<HTMLDivElement | null>(null);
  const flash = useRef<HTMLDivElement>(null);
  const [picture, setPicture] = useState<Picture | null>(null);
  const [handId, setHandId] = useState<string | null>(query.get("mark"));
  const [trouble, setTrouble] = useState<string | null>(null);

  const marks = useMarks(sittingId);
  const recordings = present(document.recordings).filter((recording) => recording.sittingId === sittingId);
  const { rows, drafts } = useRows(sittingId, marks);
  const hand = rows.find((mark) => mark.id === handId);
  const [chosen, setChosen] = useState<string | null>(query.get("recording"));
  const recording = recordings.find((one) => one.id === (hand?.recordingId ?? chosen)) ?? recordings[0];
  const track = recording && trackOf(document.captions, recording.id);
  const moments = useMemo(
    () => marks.filter((mark) => mark.recordingId === recording?.id).map((mark) => mark.at ?? 0),
    [marks, recording?.id],
  );
  const proposed = useMemo(
    () =>
      [...drafts.values()]
        .filter(({ mark }) => mark.recordingId === recording?.id)
        .map(({ mark }) => mark.at ?? 0),
    [drafts, recording?.id],
  );

  const bringToHand = useCallback(
    (id: string) => {
      setHandId(id);
      const mark = (session.row("mark", id) as unknown as Mark | undefined) ?? drafts.get(id)?.mark;
      if (mark?.at !== null && mark?.at !== undefined && picture && !picture.running) picture.goTo(mark.at);
    },
    [session, picture, drafts],
  );
  const review = useReview({
    rows,
    drafts,
    handId,
    onHand: bringToHand,
    picture,
    recordingId: recording?.id,
  });

  const drop = useCallback(
    (kind: KindName | "") => {
      const onFilm = picture !== null && recording !== undefined;
      const mark = dropMark(session, {
        sittingId,
        kind,
        recordingId: onFilm ? recording.id : null,
        at: onFilm ? picture.moment(settings.reactionTime) : null,
      });
      setHandId(mark.id);
      flash.current?.classList.remove("on");
      requestAnimationFrame(() => flash.current?.classList.add("on"));
      return mark;
    },
    [session, picture, recording, sittingId, settings.reactionTime],
  );

  const still = useCallback(
    (take: typeof takeSharpest) => {
      const draft = handId ? drafts.get(handId) : undefined;
      if (draft) review.deeds.keep(draft);
      const mark = marks.find((one) => one.id === handId) ?? draft?.mark ?? drop("");
      setTrouble(null);
      take(session, mark, picture).catch((error: unknown) =>
        setTrouble(error instanceof Error ? error.message : "The still was not taken."),
      );
    },
    [marks, drafts, review, handId, drop, session, picture],
  );

  const brief = useBrief();
  const nextOfBrief = brief?.lines.find((line) => line.answered === null);

  const act = useCallback(
    (deed: string): boolean => {
      if (review.act(deed)) return true;
      const row = rows.findIndex((mark) => mark.id === handId);
      const draft = handId ? drafts.get(handId) : undefined;
      const beside = (by: number) => {
        const next = rows[row < 0 ? (by > 0 ? 0 : rows.length - 1) : row + by];
        if (next) bringToHand(next.id);
      };
      if (deed === "mark") drop("");
      else if ((kindNames as readonly string[]).includes(deed)) drop(deed as KindName);
      else if (deed === "still") still(takeFrame);
      else if (deed === "sharpest still") still(takeSharpest);
      else if (deed === "run") picture?.runOrHold();
      else if (deed === "frame back") picture?.stepFrames(-1);
      else if (deed === "frame on") picture?.stepFrames(1);
      else if (deed === "slower") picture?.changeRate(-1);
      else if (deed === "faster") picture?.changeRate(1);
      else if (deed === "mark above") beside(-1);
      else if (deed === "mark below") beside(1);
      else if (deed === "write") firstField(sheet)?.focus();
      else if (outcomes.some((one) => one.value === deed)) {
        if (!brief || !nextOfBrief || firstRemoval(session.document) === undefined) return false;
        brief.answer(nextOfBrief, deed as Outcome);
      } else if (deed === "undo") void session.undo();
      else if (deed === "redo") void session.redo();
      else if (deed === "strike out" && draft) review.deeds.drop(draft);
      else if (deed === "strike out" && handId) {
        strikeOut(session, handId);
        setHandId(rows[row + 1]?.id ?? rows[row - 1]?.id ?? null);
      } else if (deed === "here" && handId && !draft && picture) {
        changeMark(session, handId, "Moved to another frame", { at: picture.moment(), until: null });
      } else return false;
      return true;
    },
    [rows, drafts, review, handId, bringToHand, drop, still, picture, session, sheet, brief, nextOfBrief],
  );
  useKeys(act, settings, sheet);

  // Opened at a mark, the picture goes there as soon as it knows its frames.
  const wanted = useRef(query.get("mark"));
  const second = useRef(query.get("at") === null ? null : Number(query.get("at")) || 0);
  useEffect(
    () =>
      picture?.watch(() => {
        if (second.current !== null && picture.frames) {
          picture.goTo(second.current);
          second.current = null;
        }
        const mark = wanted.current
          ? (session.row("mark", wanted.current) as unknown as Mark | undefined)
          : undefined;
        if (!mark || !picture.frames || mark.recordingId !== recording?.id) return;
        wanted.current = null;
        if (mark.at !== null) picture.goTo(mark.at);
      }),
    [picture, session, recording?.id],
  );

  return (
    <main className="log-page">
      <h1 className="hidden-words">{`Log of ${document.build.title}`}</h1>
      <Scale
        picture={picture}
        duration={recording?.probe?.duration ?? 0}
        moments={moments}
        proposed={proposed}
        inHand={hand?.recordingId === recording?.id ? (hand?.at ?? null) : null}
      />
      <div
        className="log-body"
        ref={setSheet}
        tabIndex={0}
        role="table"
        aria-label="Log sheet"
        aria-rowcount={rows.length + 1}
      >
        <div role="rowgroup">
          <div className="sheet-head" role="row">
            <span role="columnheader">Time</span>
            <span role="columnheader">Kind</span>
            <span role="columnheader">Words</span>
            <span role="columnheader">Reading</span>
          </div>
        </div>
        {rows.length === 0 && (
          <p className="soft" style={{ padding: "18px 12px" }}>
            {recording
              ? "Run the film and press space, or the button, at each moment that matters."
              : "No film in this sitting. Marks made here stand without one: a part bought, a measurement at the desk."}
          </p>
        )}
        <LogRows
          marks={rows}
          drafts={drafts}
          draftDeeds={review.deeds}
          handId={handId}
          onHand={bringToHand}
          picture={picture}
          sheet={sheet}
        />
      </div>
      <div className="beside">
        <div className="view">
          <Conflicts />
          {recording && <RecordingView recording={recording} track={track} onPicture={setPicture} />}
          <div ref={flash} className="flash" aria-hidden="true" />
          <Transport picture={picture} />
          <BriefOfLog keys={keysOf(settings)} hot={settings.singleKeys} />
          <div className="said">
            <Saved />
            <Link className="way-out small" href={`/builds/${document.build.id}`}>
              Other sheets
            </Link>
            {trouble && (
              <p className="finding" role="alert">
                {trouble}
              </p>
            )}
          </div>
        </div>
        <button type="button" className="mark-button" onClick={() => drop("")}>
          Mark
        </button>
        {recording && <Spoken key={recording.id} track={track} picture={picture} drafts={drafts.size} />}
        {/* It may scroll, so it can be reached and scrolled without a mouse. */}
        <section className="keys-and-more" tabIndex={0} aria-label="Keys and captions">
          {recordings.length > 1 && (
            <Recordings
              recordings={recordings}
              current={recording?.id ?? ""}
              onChoose={(id) => {
                setHandId(null);
                setChosen(id);
              }}
            />
          )}
          {recording && <CaptionFile key={recording.id} recording={recording} track={track} />}
          <KeysPanel settings={settings} />
        </section>
        <BuildTitleBlock />
      </div>
    </main>
  );
}

/** The picture of a recording, or why there is none. */
function RecordingView({
  recording,
  track,
  onPicture,
}: {
  recording: Recording;
  track: CaptionTrack | undefined;
  onPicture: (picture: Picture | null) => void;
}) {
  const { id } = recording;
  const [worded, setWorded] = useState(true);
  // A film that did not come is asked for again under a new try when it is there.
  const [tried, setTried] = useState({ id, tries: 0, failed: false });
  const { tries, failed } = tried.id === id ? tried : { tries: 0, failed: false };
  const onFailed = useCallback(() => setTried({ id, tries, failed: true }), [id, tries]);
  const onFound = useCallback(() => setTried({ id, tries: tries + 1, failed: false }), [id, tries]);
  if (recording.probe?.playable) {
    return (
      <>
        <div className="picture">
          <Player
            key={tries}
            recording={recording}
            captions={track?.clock === "recording" ? { track, shown: worded } : null}
            onPicture={onPicture}
            onFailed={onFailed}
          />
          {track?.clock === "recording" && (
            <button
              type="button"
              className="plain words-in-picture"
              aria-pressed={worded}
              onClick={() => setWorded(!worded)}
            >
              Words in the picture
            </button>
          )}
        </div>
        <FilmNotThere recording={id} failed={failed} onFound={onFound} />
      </>
    );
  }
  const { found, expected, todo } = recording.trouble ?? {
    found: `${recording.name} is still being looked at.`,
    expected: "",
    todo: "Its length and frames will be here in a moment.",
  };
  return (
    <div className="picture">
      <p className="no-picture">
        {found} {expected} {todo}
      </p>
    </div>
  );
}

function Recordings({
  recordings,
  current,
  onChoose,
}: {
  recordings: Recording[];
  current: string;
  onChoose: (id: string) => void;
}) {
  return (
    <label style={{ padding: "8px 14px 0" }}>
      Recording
      <select value={current} onChange={(event) => onChoose(event.target.value)}>
        {recordings.map((recording) => (
          <option key={recording.id} value={recording.id}>
            {recording.name}
          </option>
        ))}
      </select>
    </label>
  );
}

/** The marks of a sitting, in their order. */
function useMarks(sittingId: string): Mark[] {
  const { document } = useSessionView();
  return useMemo(
    () =>
      present(document.marks)
        .filter((mark) => mark.sittingId === sittingId)
        .sort(compareMarks(clocksOf(document))),
    [document, sittingId],
  );
}

/** Marks and drafts in the order of the sheet, and those of them that are drafts. */
function useRows(sittingId: string, marks: Mark[]): { rows: Mark[]; drafts: ReadonlyMap<string, LogDraft> } {
  const { document } = useSessionView();
  const open = useDrafts(sittingId);
  return useMemo(() => {
    const drafts = new Map(open.map((draft) => [draft.mark.id, draft]));
    const rows = [...marks, ...open.map((draft) => draft.mark)].sort(compareMarks(clocksOf(document)));
    return { rows, drafts };
  }, [marks, open, document]);
}

/** Single keys, when nothing that takes them has the focus; Escape leaves the fields; Ctrl Z undoes. */
function useKeys(act: (deed: string) => boolean, settings: Settings, sheet: HTMLDivElement | null): void {
  useEffect(() => {
    const press = (event: KeyboardEvent) => {
      if (event.key === "Escape" && sheet?.contains(event.target as Node)) {
        sheet.focus();
        return;
      }
      if (belongsToFocus(event) || event.isComposing) return;
      if ((event.ctrlKey || event.metaKey) && event.key.toLowerCase() === "z") {
        event.preventDefault();
        act(event.shiftKey ? "redo" : "undo");
        return;
      }
      const deed = deedOf(event, settings);
      if (deed && act(deed.name)) event.preventDefault();
    };
    window.addEventListener("keydown", press);
    return () => window.removeEventListener("keydown", press);
  }, [act, settings, sheet]);
}

/** The first field to write in: of the row in hand, the one after its kind where it has one. */
function firstField(sheet: HTMLElement | null): HTMLElement | null {
  const fields = sheet?.querySelectorAll<HTMLElement>("[data-hand] [data-field]");
  return fields?.[fields.length > 1 ? 1 : 0] ?? null;
}
