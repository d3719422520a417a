import { type BuildDocument, clocksOf, present, type Recording, sittingsInOrder } from "#lib/build/index.ts";
import { compareMarks, type Mark, wordsOf } from "#lib/mark/index.ts";
import type { DeferredLine, Procedure } from "../tree.ts";
import type { Account } from "./account.ts";
import { type AssemblyDraft, draftAssembly } from "./assembly.ts";
import { type Fastener, fastenersOf } from "./fasteners.ts";
import type { Ledger } from "./ledger.ts";
import { offOf } from "./pieces.ts";
import { type Soak, soakState, soaksOf } from "./soaks.ts";

/** How things stand, for somebody who comes back after weeks. */
export interface WhereWasI {
  off: Account[];
  loose: Fastener[];
  soaking: Soak[];
  /** Open items that say what they wait for. */
  waiting: DeferredLine[];
  /** The last recording of the last sitting that has one; its last mark, or the last mark of all. */
  lastFilmed: { recording: Recording; at: number } | null;
  lastMark: Mark | null;
  /** What to do next, and the mark to look at for it. */
  next: { words: string; mark: string | null };
}

/** Where the work stands, from the marks alone. `now` is seconds since 1970. */
export function whereWasI(
  ledger: Ledger,
  procedure: Procedure,
  document: BuildDocument,
  now: number,
): WhereWasI {
  const soaks = soaksOf(procedure, document).filter((soak) => !soak.closed);
  const soaking = new Set(soaks.map((soak) => soak.mark));
  const open = procedure.deferred.filter((line) => line.closedBy === null && !soaking.has(line.mark));
  const loose = fastenersOf(ledger, document).filter((one) => one.fitted && one.torqued < one.on);
  const marks = present(document.marks).sort(compareMarks(clocksOf(document)));
  const draft = draftAssembly(ledger, procedure, document);
  return {
    off: ledger.accounts.filter((account) => offOf(account.now) > 0),
    loose,
    soaking: soaks,
    waiting: open,
    lastFilmed: lastFilmed(document),
    lastMark: marks.at(-1) ?? null,
    next: nextOf({ soaks, loose, open, draft, marks, assembling: ledger.assembling, now }),
  };
}

function lastFilmed(document: BuildDocument): WhereWasI["lastFilmed"] {
  for (const sitting of sittingsInOrder(document).reverse()) {
    const last = present(document.recordings)
      .filter((one) => one.sittingId === sitting.id)
      .map((recording) => ({ recording, at: recording.probe?.duration ?? 0 }))
      .sort(
        (a, b) => endOf(a) - endOf(b) || (a.recording.madeAt ?? "").localeCompare(b.recording.madeAt ?? ""),
      )
      .at(-1);
    if (last) return last;
  }
  return null;
}

function endOf({ recording, at }: { recording: Recording; at: number }): number {
  return recording.offset + recording.rate * at;
}

interface Standing {
  soaks: Soak[];
  loose: Fastener[];
  open: DeferredLine[];
  draft: AssemblyDraft;
  marks: Mark[];
  assembling: boolean;
  now: number;
}

/** What cannot wait first; then what goes on next, what is loose, and what is still open. */
function nextOf({ soaks, loose, open, draft, marks, assembling, now }: Standing): WhereWasI["next"] {
  const due = soaks.find((soak) => soakState(soak, now).state === "overdue");
  if (due) return { words: `Take out: ${due.what}`, mark: due.mark };
  const unsorted = marks.find((mark) => mark.kind === "");
  if (unsorted) return { words: "Sort the marks that have no kind yet", mark: unsorted.id };
  const fit = draft.entries.find((entry) => entry.state === "off");
  if (assembling && fit) return { words: `Fit: ${fit.name}`, mark: fit.off.mark };
  const [first] = loose;
  if (first?.fitted) return { words: `Torque: ${first.name}`, mark: first.fitted.mark };
  const [left] = assembling ? open : [];
  if (left) return { words: `Put right: ${left.what}`, mark: left.mark };
  const last = marks.findLast((mark) => mark.kind === "action");
  if (!last) return { words: "Film its arrival, and mark what you see", mark: null };
  return { words: `Go on after: ${wordsOf(last)}`, mark: last.id };
}
