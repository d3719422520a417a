import type { Command, Put } from "#lib/store/command.ts";

/** What went wrong, in words for the person. */
export class Trouble extends Error {}

interface Words {
  found?: string;
  expected?: string;
  todo?: string;
}

/** Asks the program for something; throws its words where it says no. `conflict` gets the answer to a 409. */
export async function send<T>(address: string, body: unknown, conflict?: (answer: unknown) => T): Promise<T> {
  const response = await fetch(address, {
    method: "POST",
    headers: { "content-type": "application/json" },
    body: JSON.stringify(body),
  }).catch(() => {
    throw new Trouble("The program does not answer. Is it still running?");
  });
  const answer: unknown = await response.json().catch(() => ({}));
  if (response.status === 409 && conflict) return conflict(answer);
  if (!response.ok) throw new Trouble(sayWords(answer as Words));
  return answer as T;
}

export function sayWords({ found, expected, todo }: Words): string {
  return [found ?? "It did not work.", expected, todo].filter(Boolean).join(" ");
}

/** Writes new rows that belong to no open build yet. */
export async function sendPuts(label: string, puts: Put[], buildId: string | null = null): Promise<void> {
  const command: Command = { id: crypto.randomUUID(), buildId, label, puts };
  await send("/commands", command);
}

/** A row as a put of a new one. */
export function putNew(table: Put["table"], row: { id: string; rev: number }): Put {
  const { rev: _, ...set } = row;
  return { table, id: row.id, rev: 0, set };
}
