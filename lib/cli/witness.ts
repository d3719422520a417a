import { parseArgs } from "node:util";
import { open, sayCount } from "#lib/finding/index.ts";
import { FolderError } from "#lib/folder/index.ts";
import { stepsOf } from "#lib/procedure/index.ts";
import { compileFolder } from "./compile-folder.ts";

/** Exit codes: done; input that cannot be read; a `wrong` that nobody has answered. */
const DONE = 0;
const UNREADABLE = 2;
const WRONG = 3;

const USAGE = `witness compile BUILD_FOLDER --out DIR [--paper a4|letter] [--date YYYY-MM-DD]
  Writes procedure.pdf, procedure.html, procedure.md with its stills, parts.csv and findings.json to DIR.
  Exit code 0: done. 2: the input cannot be read. 3: a finding of severity wrong is unanswered.`;

/** Why a command line cannot be followed. */
class UsageError extends Error {}

async function main(args: string[]): Promise<number> {
  const [command, ...rest] = args;
  if (command === "compile") return compileCommand(rest);
  if (command === undefined || command === "help" || command === "--help") {
    console.log(USAGE);
    return command === undefined ? UNREADABLE : DONE;
  }
  throw new UsageError(`There is no command “${command}”.`);
}

async function compileCommand(args: string[]): Promise<number> {
  const { values, positionals } = readArgs(args);
  const [folder] = positionals;
  if (folder === undefined || positionals.length !== 1)
    throw new UsageError("One build folder was expected.");
  if (values.out === undefined) throw new UsageError("Where to write was expected: --out DIR.");
  if (values.paper !== "a4" && values.paper !== "letter") {
    throw new UsageError(`The paper is a4 or letter, not “${values.paper}”.`);
  }
  if (!/^\d{4}-\d\d-\d\d$/.test(values.date))
    throw new UsageError(`The date is YYYY-MM-DD, not “${values.date}”.`);
  const compiled = await compileFolder(folder, values.out, { paper: values.paper, printedOn: values.date });
  const { procedure, findings } = compiled.checked;
  console.log(`${procedure.title}: ${stepsOf(procedure).length} steps, ${procedure.parts.length} parts.`);
  console.log(`Findings: ${sayCount(findings)}.`);
  for (const one of open(findings)) console.log(`  ${one.severity}: ${one.found}`);
  for (const loss of compiled.losses) console.log(`  not carried: ${loss}`);
  console.log(`Wrote ${compiled.files.length} files to ${values.out}.`);
  return compiled.wrong > 0 ? WRONG : DONE;
}

function readArgs(args: string[]) {
  try {
    return parseArgs({
      args,
      allowPositionals: true,
      options: {
        out: { type: "string" },
        paper: { type: "string", default: "a4" },
        date: { type: "string", default: new Date().toISOString().slice(0, 10) },
      },
    });
  } catch (error) {
    throw new UsageError(error instanceof Error ? error.message : String(error));
  }
}

main(process.argv.slice(2)).then(
  (code) => {
    process.exitCode = code;
  },
  (error: unknown) => {
    if (error instanceof UsageError) console.error(`${error.message}\n\n${USAGE}`);
    else if (error instanceof FolderError) console.error(`${error.found}\n${error.expected}\n${error.todo}`);
    else console.error(error);
    process.exitCode = UNREADABLE;
  },
);
