"use client";
import Link from "next/link";
import { useState } from "react";
import { type Outcome, outcomes } from "#lib/build/index.ts";
import { type BriefLine, firstRemoval, sayCost, sayStanding } from "#lib/gotcha/index.ts";
import { useSessionView } from "../session/provider.tsx";
import { useBrief } from "./use-brief.ts";

/** What to know before the assembly is opened: five at most, each with why it is shown, and one press to answer. */
export function Brief({ keys }: { keys?: ReadonlyMap<string, string> }) {
  const brief = useBrief();
  if (!brief || brief.lines.length === 0) return null;
  return <BriefLines {...brief} keys={keys} />;
}

/** The brief on the log sheet: folded until the first part comes off, and then open, until it is folded by hand. */
export function BriefOfLog({ keys, hot }: { keys: ReadonlyMap<string, string>; hot: boolean }) {
  const { document } = useSessionView();
  const [folded, setFolded] = useState<boolean | null>(null);
  const brief = useBrief();
  if (!brief || brief.lines.length === 0) return null;
  const open = brief.lines.filter((line) => line.answered === null).length;
  const shown = !(folded ?? firstRemoval(document) === undefined);
  return (
    <section className="brief of-log" aria-label="Brief">
      <button type="button" className="plain" aria-expanded={shown} onClick={() => setFolded(shown)}>
        {open > 0 ? `${open} to know before you open it` : "All of the brief is answered"}
        {shown ? "" : " · show"}
      </button>
      {shown && <BriefLines {...brief} keys={hot ? keys : undefined} />}
    </section>
  );
}

function BriefLines({
  lines,
  answer,
  keys,
}: {
  lines: BriefLine[];
  answer: (line: BriefLine, outcome: Outcome) => void;
  keys?: ReadonlyMap<string, string>;
}) {
  const next = lines.find((line) => line.answered === null);
  return (
    <ol className="brief-lines">
      {lines.map((line) => (
        <BriefEntry
          key={line.entry.gotcha.id}
          line={line}
          keys={line === next ? keys : undefined}
          onAnswer={(outcome) => answer(line, outcome)}
        />
      ))}
    </ol>
  );
}

function BriefEntry({
  line,
  keys,
  onAnswer,
}: {
  line: BriefLine;
  keys: ReadonlyMap<string, string> | undefined;
  onAnswer: (outcome: Outcome) => void;
}) {
  const { gotcha } = line.entry;
  return (
    <li className={line.answered ? "answered" : undefined}>
      <p className="symptom">
        <Link href={`/gotchas/${encodeURIComponent(gotcha.id)}`}>
          {gotcha.symptom || "A gotcha without words"}
        </Link>
      </p>
      {line.answered === null && <BriefWords line={line} />}
      <div className="answers" role="group" aria-label={`How it was here: ${gotcha.symptom}`}>
        {outcomes.map(({ value, label }) => (
          <button
            key={value}
            type="button"
            className="plain"
            aria-pressed={line.answered === value}
            onClick={() => onAnswer(value)}
          >
            {keys?.get(value) && <kbd>{keys.get(value)}</kbd>}
            {label}
          </button>
        ))}
      </div>
    </li>
  );
}

/** What to do about it, and why it is shown; an answered one needs no more than its name. */
function BriefWords({ line }: { line: BriefLine }) {
  const { gotcha } = line.entry;
  const cost = sayCost(gotcha);
  const unproven = line.standing.trust === "heard" || gotcha.cause !== "proven";
  return (
    <>
      {gotcha.avoid && (
        <p>
          <b>Instead:</b> {gotcha.avoid}
        </p>
      )}
      {gotcha.tell && (
        <p>
          <b>How to tell:</b> {gotcha.tell}
        </p>
      )}
      {gotcha.mechanism && (
        <p className="small">
          <b>{unproven ? "Why, as is suspected:" : "Why:"}</b> {gotcha.mechanism}
        </p>
      )}
      {cost && (
        <p className="small">
          <b>It costs:</b> {cost}
        </p>
      )}
      <p className="soft small">{line.why.join(" ")}</p>
    </>
  );
}

/** What the book says of the part that is being written down. */
export function PartHints({ lines }: { lines: readonly BriefLine[] }) {
  if (lines.length === 0) return null;
  return (
    <div className="finding part-hints" role="status">
      {lines.slice(0, 3).map(({ entry: { gotcha }, standing }) => (
        <p key={gotcha.id}>
          <b>This part bit before:</b>{" "}
          <Link href={`/gotchas/${encodeURIComponent(gotcha.id)}`}>{gotcha.symptom}</Link>{" "}
          <span className="soft">{sayStanding(standing)}.</span> {gotcha.avoid}
        </p>
      ))}
    </div>
  );
}
