import { ToldError, type Words } from "#lib/finding/told-error.ts";

/**
 * Something a user can cause and can do something about: what was found, what was expected, and what to do.
 * Each part is a plain sentence without the others, fit to be shown as it is.
 */
export interface Trouble<Kind extends string = string> extends Words {
  kind: Kind;
}

/** A trouble that is thrown, for callers that answer a request or a command and cannot go on. */
export class MediaError<Kind extends string = string> extends ToldError implements Trouble<Kind> {
  override readonly name = "MediaError";
  readonly kind: Kind;

  constructor(trouble: Trouble<Kind>, options?: ErrorOptions) {
    super(trouble, options);
    this.kind = trouble.kind;
  }
}

/** A trouble in one line, for a log or a terminal. */
export function sayTrouble({ found, expected, todo }: Trouble): string {
  return `${found} ${expected} ${todo}`;
}

/** The code of a file system error ("ENOSPC"), or an empty string for any other value. */
export function errorCode(error: unknown): string {
  const code = (error as { code?: unknown } | null)?.code;
  return typeof code === "string" ? code : "";
}

/** A number of bytes as a reader sees it: "1.2 GB" is 1.2 × 10⁹ bytes (SI prefixes); small ones stay whole. */
export function sayBytes(bytes: number): string {
  if (bytes < 1000) return `${bytes} bytes`;
  const units = ["kB", "MB", "GB", "TB"];
  let value = bytes / 1000;
  let unit = 0;
  while (value >= 999.5 && unit < units.length - 1) {
    value /= 1000;
    unit++;
  }
  return `${value < 9.95 ? value.toFixed(1) : value.toFixed(0)} ${units[unit]}`;
}
