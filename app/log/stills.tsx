"use client";
import Link from "next/link";
import { type ReactNode, useId, useRef, useState } from "react";
import { present, type Still } from "#lib/build/index.ts";
import type { Mark } from "#lib/mark/index.ts";
import { proposeAlt } from "#lib/procedure/propose-alt.ts";
import { useDerived, useSession, useSessionView } from "../session/provider.tsx";
import { bake, changeStill, putStill, strikeOutStill } from "./deeds.ts";
import type { Picture } from "./picture.ts";
import { Sharper } from "./sharper.tsx";
import { takeFrame } from "./take-frame.ts";
import { useTyped } from "./typed.tsx";

export function stillAddress(sha256: string): string {
  return `/media/stills/${sha256}`;
}

/** The stills of a mark: taken from the frame that is shown, or photographs; each with words for what it shows. */
export function Stills({ mark, picture }: { mark: Mark; picture: Picture | null }) {
  const session = useSession();
  const { document } = useSessionView();
  const [trouble, setTrouble] = useState<string | null>(null);
  const stills = present(document.stills)
    .filter((still) => still.markId === mark.id)
    .sort((a, b) => a.rank - b.rank);
  const attempt = async (work: () => Promise<void>) => {
    setTrouble(null);
    await work().catch((error: unknown) => {
      setTrouble(error instanceof Error ? error.message : "The still was not taken.");
    });
  };
  const take = (replaces?: Still, moment?: number) =>
    attempt(() => takeFrame(session, mark, picture, replaces, moment));
  // A still that was not there when the row came to hand has just been taken.
  const before = useRef(new Set(stills.map((still) => still.sha256)));
  return (
    <>
      {stills.length > 0 && (
        <div className="stills">
          {stills.map((still) => (
            <StillCard key={still.id} still={still} retake={picture ? () => take(still) : null}>
              {picture?.frames && still.source === "frame" && still.recordingId === mark.recordingId && (
                <Sharper
                  key={still.sha256}
                  still={still}
                  mark={mark}
                  picture={picture}
                  justTaken={still === stills.at(-1) && !before.current.has(still.sha256)}
                  onTake={(moment) => take(still, moment)}
                />
              )}
            </StillCard>
          ))}
        </div>
      )}
      <div className="row-of-buttons" style={{ marginTop: 14 }}>
        {picture && (
          <button type="button" className="plain" onClick={() => take()}>
            Take the still
          </button>
        )}
        <label className="button-for-file">
          Add a photograph
          <input
            type="file"
            accept="image/*"
            onChange={(event) => {
              const chosen = event.target.files?.[0];
              event.target.value = "";
              if (!chosen) return;
              void attempt(async () => {
                const baked = await bake(chosen);
                putStill(session, mark, baked, { source: "photograph", recordingId: null, at: null });
              });
            }}
          />
        </label>
      </div>
      {trouble && (
        <p className="finding" role="alert">
          {trouble}
        </p>
      )}
    </>
  );
}

function StillCard({
  still,
  retake,
  children,
}: {
  still: Still;
  retake: (() => void) | null;
  children: ReactNode;
}) {
  const session = useSession();
  const { stepOf } = useDerived();
  const id = useId();
  const step = stepOf.get(still.markId);
  const proposed = step ? proposeAlt(step) : "";
  const { text, change, flush } = useTyped(still.alt, (alt) =>
    changeStill(session, session.row("still", still.id) as unknown as Still, "What a still shows", { alt }),
  );
  return (
    <figure className="still">
      {/* biome-ignore lint/performance/noImgElement: a local file, served as it is */}
      <img
        src={stillAddress(still.sha256)}
        alt={still.alt || proposed || "A still that nobody has described yet"}
        width={still.width}
        height={still.height}
        loading="lazy"
      />
      <label htmlFor={id} style={{ marginTop: 6 }}>
        What it shows
      </label>
      <textarea
        id={id}
        rows={1}
        value={text}
        placeholder={proposed}
        onChange={(event) => change(event.target.value)}
        onBlur={flush}
      />
      <div className="row-of-buttons" style={{ marginTop: 6, gap: 6 }}>
        {text.trim() === "" && proposed !== "" && (
          <button
            type="button"
            className="plain"
            onClick={() => changeStill(session, still, "Words of a still", { alt: proposed })}
          >
            Take these words
          </button>
        )}
        <Link className="button plain" href={`/builds/${still.buildId}/figures/${still.id}`} prefetch={false}>
          Balloons and views
        </Link>
        {retake && (
          <button type="button" className="plain" onClick={retake}>
            Take this frame instead
          </button>
        )}
        <button type="button" className="plain" onClick={() => strikeOutStill(session, still)}>
          Strike out
        </button>
      </div>
      {children}
    </figure>
  );
}
