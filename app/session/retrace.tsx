"use client";
import { useRouter } from "next/navigation";
import { Saved } from "../log/keys-panel.tsx";
import { useSession, useSessionView } from "./provider.tsx";

/** Undo and redo of the build's changes, one by one. */
export function Retrace() {
  const session = useSession();
  const { canUndo, canRedo } = useSessionView();
  const router = useRouter();
  const go = (step: () => Promise<string | null>) => void step().then(() => router.refresh());
  return (
    <div className="row-of-buttons" style={{ marginTop: 14 }}>
      <button type="button" disabled={!canUndo} onClick={() => go(session.undo)}>
        Undo the latest
      </button>
      <button type="button" disabled={!canRedo} onClick={() => go(session.redo)}>
        Redo
      </button>
      <Saved />
    </div>
  );
}

/** Goes back to how the build was after one change; what came after stays in the history, and undo brings it back. */
export function BackTo({ seq, label }: { seq: number; label: string }) {
  const session = useSession();
  const router = useRouter();
  return (
    <button
      type="button"
      className="plain"
      aria-label={`Back to: ${label}`}
      onClick={() => void session.backTo(seq).then(() => router.refresh())}
    >
      Back to here
    </button>
  );
}
