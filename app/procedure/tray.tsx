"use client";
import Link from "next/link";
import { moveMark } from "#lib/procedure/index.ts";
import { KindSign } from "../parts/kind-sign.tsx";
import { useDerived, useSession, useSessionView } from "../session/provider.tsx";

/** Marks that no step has taken up: they are in no printed step until they are put into one. */
export function Tray() {
  const session = useSession();
  const { document } = useSessionView();
  const { procedure } = useDerived();
  if (procedure.tray.length === 0) return null;
  const put = (mark: string, by: -1 | 1) =>
    session.change(
      "Mark put into a step",
      moveMark(session.document, mark, by, new Date().toISOString()).map((row) => ({ table: "edit", row })),
    );
  return (
    <section aria-labelledby="tray-title">
      <h2 id="tray-title">Not placed</h2>
      <p className="soft small">
        In no step: before the first action, or without film. Parts and values count in the lists.
      </p>
      <ul className="lines">
        {procedure.tray.map((loose) => {
          const mark = document.marks.find((one) => one.id === loose.mark);
          if (!mark) return null;
          return (
            <li key={loose.mark}>
              <KindSign mark={mark} />
              <span className="grow">
                <Link href={`/builds/${document.build.id}/sittings/${mark.sittingId}?mark=${mark.id}`}>
                  {loose.words || "no words yet"}
                </Link>
              </span>
              <span className="row-of-buttons" style={{ gap: 6 }}>
                <button type="button" className="plain" onClick={() => put(loose.mark, 1)}>
                  To the first step
                </button>
                <button type="button" className="plain" onClick={() => put(loose.mark, -1)}>
                  To the last
                </button>
              </span>
            </li>
          );
        })}
      </ul>
    </section>
  );
}
