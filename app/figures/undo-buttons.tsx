"use client";
import { useEffect } from "react";
import { useSession, useSessionView } from "../session/provider.tsx";

/** Undo and redo of the build's changes, by button and by Ctrl Z where no text is being written. */
export function UndoButtons() {
  const session = useSession();
  const { canUndo, canRedo } = useSessionView();
  useEffect(() => {
    const press = (event: KeyboardEvent) => {
      const writing = /^(INPUT|TEXTAREA|SELECT)$/.test((event.target as HTMLElement).tagName);
      if (writing || !(event.ctrlKey || event.metaKey) || event.key.toLowerCase() !== "z") return;
      event.preventDefault();
      void (event.shiftKey ? session.redo() : session.undo());
    };
    window.addEventListener("keydown", press);
    return () => window.removeEventListener("keydown", press);
  }, [session]);
  return (
    <>
      <button type="button" className="plain" disabled={!canUndo} onClick={() => void session.undo()}>
        Undo
      </button>
      <button type="button" className="plain" disabled={!canRedo} onClick={() => void session.redo()}>
        Redo
      </button>
    </>
  );
}
