"use client";
import { useEffect, useEffectEvent } from "react";
import { useSession, useSessionView } from "../session/provider.tsx";

/** Undo and redo of the build's changes, by button and by Ctrl Z where no text is being written. */
export function UndoButtons({ onStep }: { onStep: () => void }) {
  const session = useSession();
  const { canUndo, canRedo } = useSessionView();
  const undo = () => {
    onStep();
    void session.undo();
  };
  const redo = () => {
    onStep();
    void session.redo();
  };
  const keys = useEffectEvent((shift: boolean) => (shift ? redo() : undo()));
  useEffect(() => {
    const press = (event: KeyboardEvent) => {
      const writing = /^(INPUT|TEXTAREA|SELECT)$/.test((event.target as HTMLElement).tagName);
      if (writing || !(event.ctrlKey || event.metaKey) || event.key.toLowerCase() !== "z") return;
      event.preventDefault();
      keys(event.shiftKey);
    };
    window.addEventListener("keydown", press);
    return () => window.removeEventListener("keydown", press);
  }, []);
  return (
    <>
      <button type="button" className="plain" disabled={!canUndo} onClick={undo}>
        Undo
      </button>
      <button type="button" className="plain" disabled={!canRedo} onClick={redo}>
        Redo
      </button>
    </>
  );
}
