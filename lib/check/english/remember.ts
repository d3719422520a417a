const most = 20_000;

/** The same text is read once: checks run at each edit, and an edit changes one text. */
export function remember<T>(read: (text: string) => T): (text: string) => T {
  const known = new Map<string, T>();
  return (text) => {
    const before = known.get(text);
    if (before !== undefined) return before;
    if (known.size >= most) known.clear();
    const result = read(text);
    known.set(text, result);
    return result;
  };
}
