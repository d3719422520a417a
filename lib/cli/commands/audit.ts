import { sayBytes } from "#lib/media/index.ts";
import { type Audit, audit } from "#lib/store/audit/index.ts";
import {
  codeOf,
  keepingOptions,
  printFindings,
  programRoot,
  progressTeller,
  stopSignal,
  workshopOf,
} from "./keeping.ts";
import { type CliCommand, readArgs, UsageError } from "./usage.ts";

/** Whether the workshop is whole. */
export const auditCommand: CliCommand = {
  name: "audit",
  usage: `witness audit [--workshop DIR] [--rebuild] [--films] [--json]
  Looks for damage: hashes, rows, references, files, the search table. Changes nothing; --rebuild makes the search
  table anew first. --films reads the films that stay where they lie to their end too.
  Exit code 0: nothing is wrong. 2: there is no workshop to read. 3: something is wrong.`,
  run: async (args) => {
    const { values, positionals } = readArgs(args, {
      ...keepingOptions,
      rebuild: { type: "boolean", default: false },
      films: { type: "boolean", default: false },
    });
    if (positionals.length > 0)
      throw new UsageError("The workshop is named by --workshop DIR, or by WORKSHOP_DIR.");
    const made = await audit(workshopOf(values.workshop), {
      programRoot: programRoot(),
      rebuild: values.rebuild,
      films: values.films,
      onProgress: progressTeller(),
      signal: stopSignal(),
    });
    if (values.json) console.log(JSON.stringify(made));
    else print(made);
    return codeOf(made.findings);
  },
};

function print({ workshop, looked, findings, rebuilt }: Audit): void {
  const { rows, stills, recordings, elsewhere, bytes } = looked;
  console.log(
    `Looked at ${workshop}. Rows: ${rows}, stills: ${stills}, films in the workshop: ${recordings}.`,
  );
  console.log(`Read and hashed ${sayBytes(bytes)}. Films that stay where they lie: ${elsewhere}.`);
  for (const name of rebuilt) console.log(`Made anew: ${name}.`);
  if (findings.length === 0) console.log("Nothing was found.");
  printFindings(findings);
}
