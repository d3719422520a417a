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
