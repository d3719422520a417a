"use client";
import type { Element } from "hast";
import { toJsxRuntime } from "hast-util-to-jsx-runtime";
import Link from "next/link";
import { type ComponentProps, useEffect, useMemo, useState } from "react";
import { Fragment, jsx, jsxs } from "react/jsx-runtime";
import { sayCount } from "#lib/finding/index.ts";
import type { Procedure } from "#lib/procedure/index.ts";
import { briefNotes } from "#lib/publish/brief.ts";
import { canonicalJson } from "#lib/publish/canonical-json.ts";
import { originalPicture, procedureBody } from "#lib/publish/html/body.ts";
import { historyOf } from "#lib/publish/release/history.ts";
import { sheetState } from "#lib/publish/state.ts";
import { useBriefLines } from "../gotchas/use-brief.ts";
import { Conflicts } from "../log/conflicts.tsx";
import { Saved } from "../log/keys-panel.tsx";
import { stillAddress } from "../log/stills.tsx";
import { BuildTitleBlock } from "../parts/title-block.tsx";
import { useDerived, useSessionView } from "../session/provider.tsx";
import { useSettled } from "../session/use-settled.ts";
import { Findings } from "./findings.tsx";
import { StepControls } from "./step-controls.tsx";
import { Tray } from "./tray.tsx";

/** The procedure as it will print, with what can be done to each step, beside its findings. */
export function ProcedureSheet() {
  const { document } = useSessionView();
  const { procedure, findings } = useDerived();
  const hash = useContentHash(procedure);
  const today = new Date().toISOString().slice(0, 10);
  const lines = useBriefLines();
  const brief = useMemo(() => briefNotes(lines ?? []), [lines]);
  const body = useMemo(
    () =>
      procedureBody(
        { procedure, findings },
        {
          state: sheetState({ procedure, findings }, { printedOn: today }, hash),
          still: (figure) => originalPicture(figure, stillAddress(figure.sha256)),
          history: historyOf(document, procedure),
          forScreen: true,
          brief,
        },
      ),
    [document, procedure, findings, hash, today, brief],
  );
  return (
    <>
      <main className="procedure-page">
        <section className="procedure-sheet" aria-label="The procedure as it prints">
          <Conflicts />
          <Sheet body={body} />
        </section>
        <aside className="procedure-side" aria-label="Findings and print">
          <Print buildId={document.build.id} title={document.build.title} />
          <section id="findings" aria-labelledby="findings-title">
            <h2 id="findings-title">Findings</h2>
            <p className="soft">{sayCount(findings)}</p>
            <Findings />
          </section>
          <Tray />
          <Saved />
        </aside>
      </main>
      <BuildTitleBlock />
    </>
  );
}

/** The same tree that the HTML file holds, with the controls of each step put in. */
function Sheet({ body }: { body: Element }) {
  return toJsxRuntime(body, {
    Fragment,
    jsx,
    jsxs,
    components: { section: SectionOfSheet },
  });
}

function SectionOfSheet({ children, ...props }: ComponentProps<"section"> & { "data-step"?: string }) {
  const step = props["data-step"];
  return (
    <section {...props}>
      {children}
      {step !== undefined && <StepControls stepMark={step} />}
    </section>
  );
}

/** Ways to take the procedure to the bench. What was changed is on disk before the sheet is made. */
function Print({ buildId, title }: { buildId: string; title: string }) {
  const sheet = `/print/${encodeURIComponent(buildId)}`;
  const settle = useSettled();
  return (
    <section className="print" aria-label="Print">
      <h2 className="hidden-words">Take it to the bench: {title}</h2>
      <div className="row-of-buttons">
        <a className="button main" href={`${sheet}/pdf?paper=a4`} onClick={settle} download>
          PDF, A4
        </a>
        <a className="button" href={`${sheet}/pdf?paper=letter`} onClick={settle} download>
          PDF, Letter
        </a>
      </div>
      <p className="small" style={{ marginTop: 10 }}>
        For the bench, larger:{" "}
        <a href={`${sheet}/pdf?paper=a4&edition=bench`} onClick={settle} download>
          A4
        </a>{" "}
        ·{" "}
        <a href={`${sheet}/pdf?paper=letter&edition=bench`} onClick={settle} download>
          Letter
        </a>
      </p>
      <p className="small" style={{ marginTop: 10 }}>
        <a href={`${sheet}/html`} onClick={settle} download>
          One HTML file
        </a>{" "}
        ·{" "}
        <a href={`${sheet}/markdown`} onClick={settle} download>
          Markdown
        </a>{" "}
        ·{" "}
        <a href={`${sheet}/parts`} onClick={settle} download>
          Parts list
        </a>
        {" · "}
        <Link href={`/builds/${buildId}`}>Build folder</Link>
      </p>
    </section>
  );
}

/** SHA-256 of the procedure's canonical JSON, in hex; empty until it has been computed. */
function useContentHash(procedure: Procedure): string {
  const [hash, setHash] = useState("");
  useEffect(() => {
    let current = true;
    void crypto.subtle
      .digest("SHA-256", new TextEncoder().encode(canonicalJson(procedure)))
      .then((digest) => {
        const hex = [...new Uint8Array(digest)].map((byte) => byte.toString(16).padStart(2, "0")).join("");
        if (current) setHash(hex);
      });
    return () => {
      current = false;
    };
  }, [procedure]);
  return hash;
}
