"use client";
import { useSession, useSessionView } from "../session/provider.tsx";

/** Changes that were refused since the same row was changed elsewhere: both versions, for the restorer to choose. */
export function Conflicts() {
  const session = useSession();
  const { conflicts } = useSessionView();
  return conflicts.map((conflict) => (
    <section key={`${conflict.table} ${conflict.id}`} className="conflict" role="alert">
      <b>Changed in two places.</b> {conflict.words}
      <dl>
        {Object.entries(conflict.wanted).map(([column, wanted]) => (
          <div key={column} style={{ display: "contents" }}>
            <dt className="soft">{column}</dt>
            <dd>
              here {sayValue(wanted)} · on disk {sayValue(conflict.current?.[column])}
            </dd>
          </div>
        ))}
      </dl>
      <div className="row-of-buttons">
        <button type="button" onClick={() => session.settle(conflict, "disk")}>
          Keep what is on disk
        </button>
        <button type="button" onClick={() => session.settle(conflict, "mine")}>
          Write this one over it
        </button>
      </div>
    </section>
  ));
}

function sayValue(value: unknown): string {
  return typeof value === "string" ? `“${value}”` : JSON.stringify(value ?? null);
}
