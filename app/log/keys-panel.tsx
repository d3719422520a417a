"use client";
import Link from "next/link";
import type { Settings } from "#lib/store/settings.ts";
import { useSessionView } from "../session/provider.tsx";
import { deeds, keysOf, sayKey } from "./keys.ts";

/** The keys of the sheet, and what was last put on disk. */
export function KeysPanel({ settings }: { settings: Settings }) {
  const keys = keysOf(settings);
  return (
    <div className="keys">
      {settings.singleKeys ? (
        <ul>
          {deeds.map((deed) => (
            <li key={deed.name}>
              <kbd>{sayKey(keys.get(deed.name) ?? "")}</kbd>
              {deed.words}
            </li>
          ))}
        </ul>
      ) : (
        <p>
          Single keys are switched off. <Link href="/settings">Keys and settings</Link>
        </p>
      )}
      <p className="soft small">
        <kbd>esc</kbd>leaves the fields of a row. <kbd>tab</kbd>goes from field to field.
      </p>
    </div>
  );
}

/** What is on disk, said only when it is. */
export function Saved() {
  const { save } = useSessionView();
  return (
    <p className="saved soft small" role="status" data-pending={save.pending}>
      {save.trouble ? (
        <b>Not on disk yet: {save.trouble} Trying again.</b>
      ) : save.refused ? (
        <b>Not done: {save.refused}</b>
      ) : save.pending > 0 ? (
        "Writing to disk…"
      ) : save.saved ? (
        `On disk: ${save.saved}`
      ) : (
        ""
      )}
    </p>
  );
}
