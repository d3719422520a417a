"use client";
import type { Element } from "hast";
import { toJsxRuntime } from "hast-util-to-jsx-runtime";
import Link from "next/link";
import { useRouter } from "next/navigation";
import { useId, useState } from "react";
import { Fragment, jsx, jsxs } from "react/jsx-runtime";
import type { Erratum } from "#lib/build/index.ts";
import { putNew, send, sendPuts, Trouble } from "../parts/send.ts";

interface Read {
  body: Element;
  build: { id: string; title: string };
  release: { id: string; revision: string };
  steps: { mark: string; number: number; title: string }[];
  reports: number;
}

/** A release as it was frozen, beside the places to report a mistake and to take it to a web server. */
export function Reading({ body, build, release, steps, reports }: Read) {
  return (
    <main className="procedure-page">
      <section className="procedure-sheet" aria-label={`Revision ${release.revision} as it was released`}>
        {toJsxRuntime(body, { Fragment, jsx, jsxs })}
      </section>
      <aside className="procedure-side" aria-label="Reports">
        <p>
          <Link href={`/builds/${build.id}/releases`}>All releases of {build.title}</Link>
        </p>
        <h2>A mistake in it?</h2>
        {reports > 0 && (
          <p className="soft">{reports === 1 ? "One report so far." : `${reports} reports so far.`}</p>
        )}
        <ReportForm build={build.id} release={release.id} steps={steps} />
        <h2>On a web server</h2>
        <ReadingFolder release={release.id} />
      </aside>
    </main>
  );
}

function ReportForm({ build, release, steps }: { build: string; release: string; steps: Read["steps"] }) {
  const router = useRouter();
  const [markId, setMarkId] = useState("");
  const [value, setValue] = useState("");
  const [words, setWords] = useState("");
  const [said, setSaid] = useState("");
  const keep = async () => {
    const report: Erratum = {
      id: crypto.randomUUID(),
      buildId: build,
      releaseId: release,
      reportedAt: new Date().toISOString(),
      words: words.trim(),
      markId: markId === "" ? null : markId,
      value: value.trim(),
      disposition: "",
      correction: "",
      mendedIn: null,
      gone: null,
      rev: 0,
    };
    try {
      await sendPuts("A mistake reported", [putNew("erratum", report)], build);
      setWords("");
      setValue("");
      setSaid("Kept. What comes of it is said beside the release.");
      router.refresh();
    } catch (error) {
      setSaid(error instanceof Trouble ? error.message : "It was not kept. Try again.");
    }
  };
  return (
    <form
      onSubmit={(event) => {
        event.preventDefault();
        if (words.trim() !== "") void keep();
      }}
    >
      <label>
        What was reported, in its own words
        <textarea rows={3} required value={words} onChange={(event) => setWords(event.target.value)} />
      </label>
      <label>
        Step
        <select value={markId} onChange={(event) => setMarkId(event.target.value)}>
          <option value="">none in particular</option>
          {steps.map((step) => (
            <option key={step.mark} value={step.mark}>
              {step.number}: {step.title.slice(0, 60)}
            </option>
          ))}
        </select>
      </label>
      <label>
        The value or words in question
        <input value={value} onChange={(event) => setValue(event.target.value)} />
      </label>
      <button type="submit" style={{ marginTop: 10 }}>
        Keep the report
      </button>
      {said !== "" && <p role="status">{said}</p>}
    </form>
  );
}

function ReadingFolder({ release }: { release: string }) {
  const [folder, setFolder] = useState("");
  const [said, setSaid] = useState("");
  const id = useId();
  const write = async () => {
    try {
      const { files } = await send<{ files: number }>(`/release/${encodeURIComponent(release)}/reading`, {
        folder,
      });
      setSaid(
        `${files} files were written. Its index.html says what has been found since; write it again after a report.`,
      );
    } catch (error) {
      setSaid(error instanceof Trouble ? error.message : "It did not work. Try again.");
    }
  };
  return (
    <form
      onSubmit={(event) => {
        event.preventDefault();
        void write();
      }}
    >
      <label htmlFor={id}>Folder on this computer to write it to, new or empty</label>
      <input id={id} required value={folder} onChange={(event) => setFolder(event.target.value)} />
      <button type="submit" style={{ marginTop: 10 }}>
        Write the folder
      </button>
      {said !== "" && <p role="status">{said}</p>}
    </form>
  );
}
