"use client";
import { defaultRangeExtractor, useVirtualizer } from "@tanstack/react-virtual";
import { useEffect, useMemo } from "react";
import type { Mark } from "#lib/mark/index.ts";
import { useDerived } from "../session/provider.tsx";
import type { DraftDeeds } from "./draft-note.tsx";
import type { LogDraft } from "./drafts.ts";
import { Hand } from "./hand.tsx";
import { balloonsOf, DraftCells, RowCells } from "./log-row.tsx";
import type { Picture } from "./picture.ts";

/** A row's height before it has been measured, in CSS pixels. */
const ROW = 62;

/** The rows of the sheet, drafts among them; only those in view are in the page, so that thousands stay light. */
export function LogRows({
  marks,
  drafts,
  draftDeeds,
  handId,
  onHand,
  picture,
  sheet,
}: {
  marks: Mark[];
  /** Those of the rows that are drafts, by id. */
  drafts: ReadonlyMap<string, LogDraft>;
  draftDeeds: DraftDeeds;
  handId: string | null;
  onHand: (id: string) => void;
  picture: Picture | null;
  /** The element that scrolls; null until it is in the page. */
  sheet: HTMLDivElement | null;
}) {
  const { procedure, stepOf, inFilm } = useDerived();
  const balloons = useMemo(() => balloonsOf(procedure), [procedure]);
  const open = useMemo(
    () => new Set(procedure.deferred.filter((line) => line.closedBy === null).map((line) => line.mark)),
    [procedure],
  );
  const handIndex = marks.findIndex((mark) => mark.id === handId);
  const rows = useVirtualizer({
    count: marks.length,
    getScrollElement: () => sheet,
    estimateSize: () => ROW,
    getItemKey: (index) => marks[index]?.id ?? index,
    overscan: 6,
    // The row in hand is always there, so that what is pressed next finds its fields even before it is scrolled to.
    rangeExtractor: (range) =>
      [...new Set([...defaultRangeExtractor(range), ...(handIndex < 0 ? [] : [handIndex])])].sort(
        (a, b) => a - b,
      ),
    paddingEnd: 240,
    // The row in hand opens below its own line: that line stands a quarter down, with what came before above it.
    scrollPaddingStart: (sheet?.clientHeight ?? 0) / 4,
  });
  useEffect(() => {
    if (sheet && handIndex >= 0) rows.scrollToIndex(handIndex, { align: "start" });
  }, [handIndex, rows, sheet]);
  return (
    <div role="rowgroup" style={{ height: rows.getTotalSize(), position: "relative" }}>
      {rows.getVirtualItems().map((item) => {
        const mark = marks[item.index];
        if (!mark) return null;
        const inHand = mark.id === handId;
        const draft = drafts.get(mark.id);
        return (
          // biome-ignore lint/a11y/useKeyWithClickEvents: the arrow keys of the sheet bring a row to hand
          <div
            key={item.key}
            ref={rows.measureElement}
            data-index={item.index}
            data-mark={mark.id}
            data-draft={draft ? mark.kind : undefined}
            role="row"
            aria-rowindex={item.index + 2}
            aria-current={inHand ? "true" : undefined}
            className={["log-row", inHand && "hand", draft && "draft"].filter(Boolean).join(" ")}
            style={{ transform: `translateY(${item.start}px)` }}
            onClick={inHand ? undefined : () => onHand(mark.id)}
          >
            {draft ? (
              <DraftCells draft={draft} />
            ) : (
              <RowCells
                mark={mark}
                step={stepOf.get(mark.id)}
                balloon={balloons.get(mark.id)}
                open={open.has(mark.id)}
                film={inFilm.get(mark.id)}
              />
            )}
            {inHand && (
              <div role="cell" aria-label="Fields">
                <Hand mark={mark} picture={picture} draft={draft} draftDeeds={draftDeeds} />
              </div>
            )}
          </div>
        );
      })}
    </div>
  );
}
