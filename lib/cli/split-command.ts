/**
 * Splits a command line into the program and its arguments, as no shell would: words are parted by spaces, quotation
 * marks hold a word together, and nothing else means anything. A backslash is a letter, since paths have them.
 */
export function splitCommand(line: string): string[] {
  const words = line.match(/(?:"[^"]*"|'[^']*'|[^\s"'])+/g) ?? [];
  return words.map((word) =>
    word.replace(/"([^"]*)"|'([^']*)'/g, (_, double?: string, single?: string) => double ?? single ?? ""),
  );
}

/** Puts files in their places in the words of a command. A name stays one argument, whatever is in it. */
export function fillIn(words: readonly string[], files: Readonly<Record<string, string>>): string[] {
  return words.map((word) => word.replace(/\{(\w+)\}/g, (whole, name: string) => files[name] ?? whole));
}
