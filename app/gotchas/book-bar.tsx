"use client";
import type { OpenBook } from "./use-book.ts";

/** What was last put on disk, and the way back. */
export function BookBar({ open }: { open: OpenBook }) {
  return (
    <div className="row-of-buttons" style={{ marginTop: 14 }}>
      <button
        type="button"
        className="plain"
        disabled={!open.can.undo}
        onClick={() => void open.retrace("undo")}
      >
        Undo
      </button>
      <button
        type="button"
        className="plain"
        disabled={!open.can.redo}
        onClick={() => void open.retrace("redo")}
      >
        Redo
      </button>
      <span className="soft small" role="status">
        {open.said}
      </span>
    </div>
  );
}
