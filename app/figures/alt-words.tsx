"use client";
import { useId } from "react";
import type { Still } from "#lib/build/index.ts";
import type { Step } from "#lib/procedure/index.ts";
import { proposeAlt } from "#lib/procedure/propose-alt.ts";
import { changeStill } from "../log/deeds.ts";
import { useTyped } from "../log/typed.tsx";
import { useSession } from "../session/provider.tsx";
import { stillNow } from "./deeds.ts";

/** What the figure shows, for who cannot see it; it is read out, and printed in no other place. */
export function AltWords({ still, step }: { still: Still; step: Step | undefined }) {
  const session = useSession();
  const id = useId();
  const proposed = step ? proposeAlt(step) : "";
  const keep = (alt: string) => {
    const now = stillNow(session, still.id);
    if (now) changeStill(session, now, "What a still shows", { alt });
  };
  const { text, change, flush } = useTyped(still.alt, keep);
  return (
    <section className="figure-block" aria-labelledby="figure-words">
      <h2 id="figure-words">What it shows</h2>
      <label htmlFor={id}>In words, for who cannot see it</label>
      <textarea
        id={id}
        rows={2}
        value={text}
        placeholder={proposed}
        onChange={(event) => change(event.target.value)}
        onBlur={flush}
      />
      {text.trim() === "" && proposed !== "" && (
        <button type="button" className="plain" style={{ marginTop: 6 }} onClick={() => keep(proposed)}>
          Take these words
        </button>
      )}
    </section>
  );
}
