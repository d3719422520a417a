"use client";
import { useState } from "react";
import { useSession } from "../session/provider.tsx";

/** A file that can be taken away: its address, and its name as the link says it. */
export interface Sheet {
  address: string;
  name: string;
}

interface Answer extends Sheet {
  sentences: string[];
}

/** What the files beside it cannot carry, said before one is taken; worked out when it is asked for. */
export function LeftOut({ sheets }: { sheets: readonly Sheet[] }) {
  const session = useSession();
  const [answers, setAnswers] = useState<Answer[] | null>(null);
  const [trouble, setTrouble] = useState("");
  const ask = async () => {
    setTrouble("");
    await session.settled();
    const all: Answer[] = [];
    for (const sheet of sheets) {
      all.push({ ...sheet, sentences: await sentencesOf(sheet.address) });
      setAnswers([...all]);
    }
  };
  return (
    <details
      className="left-out small"
      onToggle={(event) => {
        if (event.currentTarget.open)
          void ask().catch(() => setTrouble("The program did not answer. Close this and open it again."));
      }}
    >
      <summary>What each file cannot carry</summary>
      <div aria-live="polite">
        {answers?.map(({ address, name, sentences }) => (
          <div key={address}>
            <p>
              <b>{name}</b>
            </p>
            <ul className="problems">
              {sentences.length === 0 && <li>Nothing is left out.</li>}
              {sentences.map((sentence) => (
                <li key={sentence}>{sentence}</li>
              ))}
            </ul>
          </div>
        ))}
        {(answers?.length ?? 0) < sheets.length && trouble === "" && <p className="soft">Being looked at…</p>}
        {trouble && <p className="finding">{trouble}</p>}
      </div>
    </details>
  );
}

async function sentencesOf(address: string): Promise<string[]> {
  const asked = await fetch(`${address}${address.includes("?") ? "&" : "?"}left-out`);
  const { sentences, found } = (await asked.json()) as { sentences?: string[]; found?: string };
  return sentences ?? [found ?? ""];
}
