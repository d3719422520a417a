/** The three parts of every message: what was found, what was expected, what to do. */
export interface Words {
  found: string;
  expected: string;
  todo: string;
}

/** An error that a person can cause and can do something about. Each part is a plain sentence, fit to be shown as it is. */
export class ToldError extends Error implements Words {
  readonly found: string;
  readonly expected: string;
  readonly todo: string;

  constructor({ found, expected, todo }: Words, options?: ErrorOptions) {
    super(`${found} ${expected} ${todo}`, options);
    this.found = found;
    this.expected = expected;
    this.todo = todo;
  }
}
