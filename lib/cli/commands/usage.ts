import { type ParseArgsConfig, parseArgs } from "node:util";

/** Exit codes: done; input that cannot be read; something found wrong that nobody has answered. */
export const DONE = 0;
export const UNREADABLE = 2;
export const WRONG = 3;

/** Why a command line cannot be followed. */
export class UsageError extends Error {}

/** A command of the command line. */
export interface CliCommand {
  name: string;
  /** How it is called, and what it does. */
  usage: string;
  /** Carries it out; gives the exit code. */
  run: (args: string[]) => Promise<number>;
}

/** Reads options and the rest of a command line. */
export function readArgs<T extends NonNullable<ParseArgsConfig["options"]>>(args: string[], options: T) {
  try {
    return parseArgs({ args, allowPositionals: true, options });
  } catch (error) {
    throw new UsageError(error instanceof Error ? error.message : String(error));
  }
}

/** The one thing that a command is given beside its options. */
export function onlyOne(positionals: readonly string[], what: string): string {
  const [only] = positionals;
  if (!only || positionals.length !== 1) throw new UsageError(`${what} was expected.`);
  return only;
}
