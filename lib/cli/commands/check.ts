import { readFileSync } from "node:fs";
import { z } from "zod";
import { checkEntries, entry } from "#lib/check/measurement/index.ts";
import { type CliCommand, DONE, onlyOne, readArgs, UsageError } from "./usage.ts";

/** Measured values in, what the checks say of each out. */
export const checkCommand: CliCommand = {
  name: "check",
  usage: `witness check FILE.json
  FILE.json is an array of measured values: {id, text, what, context: {part, material, instrument, fastener, spec,
  limit, verdict, related: [{what, text}]}}, of the context what is known. Prints one JSON array:
  {id, findings: [{rule, severity, found, expected, meant, source}]} for each.
  Exit code 0: done, whatever was found. 2: the input cannot be read.`,
  run: async (args) => {
    const { positionals } = readArgs(args, {});
    const entries = entriesOf(onlyOne(positionals, "One file of measured values"));
    const findings = checkEntries(entries);
    const answers = entries.map((one, i) => ({ id: one.id ?? null, findings: findings[i] }));
    console.log(JSON.stringify(answers, null, 1));
    return DONE;
  },
};

function entriesOf(file: string): z.infer<typeof entry>[] {
  const parsed = z.array(entry).safeParse(jsonOf(file));
  if (parsed.success) return parsed.data;
  const [issue] = parsed.error.issues;
  const place = issue && issue.path.length > 0 ? `entry ${issue.path.join(".")}` : "the file";
  throw new UsageError(`${file}: ${place}: ${issue?.message}. Put it right there and check again.`);
}

function jsonOf(file: string): unknown {
  try {
    return JSON.parse(readFileSync(file, "utf8").replace(/^\uFEFF/, ""));
  } catch (error) {
    const why = error instanceof Error ? error.message : String(error);
    throw new UsageError(`${file} cannot be read as JSON (${why}). A file with one array was expected.`);
  }
}
