"use client";
import { useCallback, useEffect, useState } from "react";
import type { Sitting } from "#lib/build/index.ts";
import { sayBytes } from "#lib/media/trouble.ts";
import type { BrokenOff } from "./send-file.ts";

/** Files for a sitting of which a part has arrived. */
export function useBrokenOff(sitting: Sitting) {
  const [files, setFiles] = useState<BrokenOff[]>([]);
  const ask = useCallback(async (): Promise<BrokenOff[]> => {
    const address = `/media/uploads?build=${encodeURIComponent(sitting.buildId)}`;
    const response = await fetch(address).catch(() => null);
    if (!response?.ok) return [];
    const { uploads } = (await response.json()) as { uploads: BrokenOff[] };
    const here = uploads.filter((one) => one.sitting === sitting.id);
    setFiles(here);
    return here;
  }, [sitting.buildId, sitting.id]);
  useEffect(() => void ask(), [ask]);
  const letGo = async (id: string) => {
    await fetch(`/media/uploads/${id}`, { method: "DELETE", headers: { "tus-resumable": "1.0.0" } }).catch(
      () => null,
    );
    await ask();
  };
  return { files, ask, letGo };
}

/** Offers to go on with what was broken off; the browser must be given the file again for that. */
export function BrokenOffFiles({
  files,
  onLetGo,
}: {
  files: readonly BrokenOff[];
  onLetGo: (id: string) => Promise<void>;
}) {
  if (files.length === 0) return null;
  return (
    <ul className="lines" aria-label="Broken off" style={{ marginTop: 8 }}>
      {files.map((file) => (
        <li key={file.id}>
          <span className="grow">
            {file.name} was broken off with {sayBytes(file.offset)} of {sayBytes(file.size)} here. Choose the
            same file again, and it goes on from there.
          </span>
          <button type="button" className="plain" onClick={() => void onLetGo(file.id)}>
            Let it go
          </button>
        </li>
      ))}
    </ul>
  );
}
