"use client";
import { present } from "#lib/build/index.ts";
import { rules } from "#lib/check/index.ts";
import { type Finding, open, sayCount, severities } from "#lib/finding/index.ts";
import type { Step } from "#lib/procedure/index.ts";
import { FindingNote } from "../parts/finding-note.tsx";
import { SheetPage } from "../parts/sheet-page.tsx";
import { PlaceOf } from "../procedure/findings.tsx";
import { useDerived, useSessionView } from "../session/provider.tsx";

const headings = {
  wrong: [
    "Wrong",
    "What arithmetic, a published standard or the build itself shows. A release waits for these.",
  ],
  doubtful: ["Doubtful", "Worth a look: it may be right, and then says why."],
  advice: ["Advice", "What would help a stranger at the bench."],
} as const;

/** All findings of a build: by how sure they are, then in the order of the steps; then what has been answered. */
export function FindingsSheet() {
  const { findings, stepOf } = useDerived();
  const waiting = open(findings);
  const answered = findings.filter((one) => one.answer !== undefined);
  return (
    <SheetPage title="Findings" about={sayCount(findings)}>
      {severities.map((severity) => {
        const [title, says] = headings[severity];
        return (
          <Group
            key={severity}
            title={title}
            says={says}
            findings={waiting.filter((one) => one.severity === severity)}
            stepOf={stepOf}
          />
        );
      })}
      <Group title="Answered" says="They stand, for the reason given." findings={answered} stepOf={stepOf} />
      <Lapsed findings={findings} />
    </SheetPage>
  );
}

function Group({
  title,
  says,
  findings,
  stepOf,
}: {
  title: string;
  says: string;
  findings: Finding[];
  stepOf: ReadonlyMap<string, Step>;
}) {
  if (findings.length === 0) return null;
  const bySteps = new Map<Step | undefined, Finding[]>();
  for (const one of findings) {
    const step = one.place.mark === undefined ? undefined : stepOf.get(one.place.mark);
    bySteps.set(step, [...(bySteps.get(step) ?? []), one]);
  }
  const steps = [...bySteps.keys()].sort((a, b) => (a?.number ?? 0) - (b?.number ?? 0));
  return (
    <section className="block" aria-labelledby={`findings-${title}`}>
      <h2 id={`findings-${title}`}>
        {title} <span className="soft num">{findings.length}</span>
      </h2>
      <p className="soft small">{says}</p>
      {steps.map((step) => (
        <div key={step?.mark ?? ""}>
          <h3 className="small">{step ? `Step ${step.number}: ${step.title}` : "In no step"}</h3>
          {bySteps.get(step)?.map((one) => (
            <FindingNote key={one.key} finding={one} place={<PlaceOf finding={one} />} />
          ))}
        </div>
      ))}
    </section>
  );
}

/** Answers to the questions of the parts sheet are kept among the others, under keys of their own. */
const isToFinding = (key: string) => rules.some(({ id }) => key.startsWith(`${id}/`));

/** Answers that hold for nothing now: what they spoke of has changed. They are kept, and hold again when it is back. */
function Lapsed({ findings }: { findings: Finding[] }) {
  const { document } = useSessionView();
  const holding = new Set(findings.map((one) => `${one.key}\n${one.evidence}`));
  const lapsed = present(document.answers).filter(
    (one) => isToFinding(one.key) && !holding.has(`${one.key}\n${one.evidence}`),
  );
  if (lapsed.length === 0) return null;
  return (
    <section className="block" aria-labelledby="findings-lapsed">
      <h2 id="findings-lapsed">
        Answers that have lapsed <span className="soft num">{lapsed.length}</span>
      </h2>
      <p className="soft small">
        What they spoke of has changed since. They hold again when it is as it was.
      </p>
      <ul className="lines">
        {lapsed.map((one) => (
          <li key={one.id}>
            <span className="grow">“{one.reason}”</span>
            <span className="soft small">{one.evidence.split("\n")[0]}</span>
          </li>
        ))}
      </ul>
    </section>
  );
}
