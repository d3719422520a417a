"use client";
import { useId, useState } from "react";
import { type Cut, newCut, present } from "#lib/build/index.ts";
import { readList } from "#lib/cut/index.ts";
import { useSession, useSessionView } from "../session/provider.tsx";
import { RateOf } from "./cut-fields.tsx";

/** An edit list larger than this is not one; bytes. */
const largest = 20_000_000;

interface Waiting {
  name: string;
  text: string;
}

/** A film comes in with its edit list, or is marked by hand. */
export function BringList() {
  const session = useSession();
  const { document } = useSessionView();
  const [waiting, setWaiting] = useState<Waiting | null>(null);
  const [trouble, setTrouble] = useState<string | null>(null);
  const [rate, setRate] = useState("");
  const [brought, setBrought] = useState(0);
  const id = useId();
  const rank = Math.max(0, ...present(document.cuts).map((cut) => cut.rank)) + 1;
  const add = (given: Partial<Cut> & Pick<Cut, "form">) => {
    const cut = newCut({ id: crypto.randomUUID(), buildId: document.build.id, rank, ...given });
    const refused = cut.form === "hand" ? null : whyNot(cut);
    setTrouble(refused);
    if (refused !== null) return;
    session.change(cut.form === "hand" ? "A film marked by hand" : "An edit list", [
      { table: "cut", row: cut },
    ]);
    setWaiting(null);
    setRate("");
    setBrought(brought + 1);
  };
  const choose = async (file: File | undefined) => {
    setTrouble(null);
    setWaiting(null);
    if (!file) return;
    if (file.size > largest) {
      setTrouble(
        `${file.name} has ${file.size} bytes; an edit list has fewer than ${largest}. Choose the list.`,
      );
      return;
    }
    const [text, name] = [await file.text(), file.name.replace(/\.[^.]+$/, "")];
    if (/^\uFEFF?\s*\{/.test(text)) add({ form: "otio", name, text });
    else setWaiting({ name, text });
  };
  const first = present(document.recordings)[0];
  return (
    <section className="block" aria-label="Bring in an edit list">
      <h2>Bring in an edit list</h2>
      <p className="soft">
        OpenTimelineIO (.otio) or CMX3600 (.edl), as editing programs export them. The file is read here and
        kept with the build.
      </p>
      <div className="form">
        <div className="wide">
          <label htmlFor={id}>Edit list</label>
          <input
            key={brought}
            id={id}
            type="file"
            accept=".otio,.edl,.txt,application/json,text/plain"
            onChange={(event) => void choose(event.target.files?.[0])}
          />
        </div>
        {waiting && <RateOf rate={rate} keep={setRate} />}
        {waiting && (
          <div>
            <button
              type="button"
              className="main"
              disabled={rate === ""}
              onClick={() => add({ form: "cmx3600", rate, ...waiting })}
            >
              Bring in {waiting.name}
            </button>
          </div>
        )}
      </div>
      {trouble && (
        <p className="finding" role="alert">
          {trouble}
        </p>
      )}
      <p style={{ marginTop: 14 }}>
        <button
          type="button"
          disabled={!first}
          onClick={() =>
            first &&
            add({
              form: "hand",
              name: "Film",
              segments: [{ at: 0, until: null, recordingId: first.id, from: 0, speed: 1 }],
            })
          }
        >
          Mark the cut by hand
        </button>
      </p>
    </section>
  );
}

/** Why a list cannot be brought in: nothing in it shows a picture. Null where it can, whatever else is wrong. */
function whyNot(cut: Cut): string | null {
  const { segments, problems } = readList(cut);
  if (segments.length > 0) return null;
  const [problem] = problems;
  if (!problem) return "Nothing in this list shows a picture of any film. Export the list of the picture.";
  return `${problem.where}: ${problem.found} ${problem.expected} ${problem.todo}`;
}
