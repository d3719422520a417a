const turns = new Map<string, Promise<unknown>>();

/** Does something when what was begun before under the same name has ended, however it ended. */
export async function inTurn<T>(name: string, work: () => Promise<T>): Promise<T> {
  const before = turns.get(name) ?? Promise.resolve();
  const mine = before.catch(() => undefined).then(work);
  turns.set(name, mine);
  try {
    return await mine;
  } finally {
    if (turns.get(name) === mine) turns.delete(name);
  }
}
