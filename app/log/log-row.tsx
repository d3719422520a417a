"use client";
import { memo } from "react";
import { kindOf, type Mark, typedOf, wordsOf } from "#lib/mark/index.ts";
import type { Procedure, Step } from "#lib/procedure/index.ts";
import { read, say } from "#lib/quantity/index.ts";
import { timecode } from "#lib/time/index.ts";
import { KindSign } from "../parts/kind-sign.tsx";
import type { LogDraft } from "./drafts.ts";

interface Props {
  mark: Mark;
  step: Step | undefined;
  balloon: number | undefined;
  open: boolean;
  /** Its places in the edited film, in words; undefined where there is none. */
  film: string | undefined;
}

/** The cells of one row: time, kind, words, and what the program reads in it. */
export const RowCells = memo(function RowCells({ mark, step, balloon, open, film }: Props) {
  return (
    <div className="cells">
      <span className="num" role="cell">
        {mark.at === null ? "no film" : timecode(mark.at)}
      </span>
      <span role="cell">
        <KindSign mark={mark} balloon={balloon} />
      </span>
      <span role="cell">{lineOf(mark) || <span className="soft">no words yet</span>}</span>
      <span role="cell" className="reading">
        {[readingOf(mark, step, open), film].filter(Boolean).join(" · ")}
      </span>
    </div>
  );
});

/** The cells of a draft: the words of its kind without its sign, since it is no mark yet. */
export const DraftCells = memo(function DraftCells({ draft }: { draft: LogDraft }) {
  const { mark } = draft;
  const value = mark.kind === "measurement" ? readingOf(mark, undefined, false) : "";
  return (
    <div className="cells">
      <span className="num" role="cell">
        {timecode(mark.at ?? 0)}
      </span>
      <span role="cell">
        Draft: {kindOf(mark.kind).word.toLowerCase()}
        {value && <span className="value-on-phone"> {value}</span>}
      </span>
      <span role="cell">{lineOf(mark)}</span>
      <span role="cell" className="reading">
        {value || (draft.draft.sureness === "certain" ? "certain" : "")}
      </span>
    </div>
  );
});

/** A mark in one line, as it stands in the words column. */
export function lineOf(mark: Mark): string {
  const parts = [
    mark.kind === "part" ? wordsOf(mark, "item") : "",
    mark.kind === "part" ? [wordsOf(mark, "event"), countOf(mark)].filter(Boolean).join(" ") : "",
    wordsOf(mark),
    mark.kind === "part" ? wordsOf(mark, "wayRound") : "",
    mark.kind === "caution" ? wordsOf(mark, "avoid") : "",
    mark.kind === "gotcha" ? wordsOf(mark, "instead") : "",
    mark.kind === "tool" ? wordsOf(mark, "size") : "",
    mark.kind === "consumable" ? wordsOf(mark, "amount") : "",
  ];
  return parts.filter(Boolean).join(". ").replace(/\.\. /g, ". ");
}

function countOf(mark: Mark): string {
  const count = wordsOf(mark, "count");
  return count === "" || count === "1" ? "" : `× ${count}`;
}

function readingOf(mark: Mark, step: Step | undefined, open: boolean): string {
  if (mark.kind === "") return "not printed";
  if (mark.kind === "measurement") {
    const typed = ["asFitted", "asFound", "specified", "limit"]
      .map((name) => typedOf(mark, name))
      .find(Boolean);
    if (typed) return say(read(typed));
  }
  const where = step
    ? `${kindOf(mark.kind).kind === "caution" ? "before " : ""}step ${step.number}`
    : "in no step";
  if (mark.kind === "deferred") return open ? "open" : "closed";
  if (mark.kind === "action" && step) return `${step.stage} · ${where}`;
  return where;
}

/** The balloon numbers of a procedure's parts, by the marks that speak of them. */
export function balloonsOf(procedure: Procedure): Map<string, number> {
  return new Map(procedure.parts.flatMap((part) => part.marks.map((mark) => [mark, part.balloon] as const)));
}
