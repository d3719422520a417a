import { sayBytes } from "#lib/media/index.ts";
import { type Restored, restore } from "#lib/store/backup/index.ts";
import {
  codeOf,
  keepingOptions,
  printFindings,
  programRoot,
  progressTeller,
  stopSignal,
  workshopOf,
} from "./keeping.ts";
import { type CliCommand, onlyOne, readArgs } from "./usage.ts";

/** A backup back into an empty folder. */
export const restoreCommand: CliCommand = {
  name: "restore",
  usage: `witness restore BACKUP_DIR [--workshop DIR] [--anyway] [--json]
  Reads a backup through and brings it back into a new or empty folder; then audits it. --anyway restores what is
  whole of a damaged one.
  Exit code 0: done. 2: it cannot be read, or the folder holds something. 3: done, and the audit found something wrong.`,
  run: async (args) => {
    const { values, positionals } = readArgs(args, {
      ...keepingOptions,
      anyway: { type: "boolean", default: false },
    });
    const from = onlyOne(positionals, "The folder of one backup");
    const restored = await restore(from, workshopOf(values.workshop).folder, {
      programRoot: programRoot(),
      anyway: values.anyway,
      onProgress: progressTeller(),
      signal: stopSignal(),
    });
    if (values.json) console.log(JSON.stringify(restored));
    else print(restored);
    return codeOf(restored.audit.findings);
  },
};

function print({ workshop, at, files, bytes, leftOut, audit }: Restored): void {
  console.log(`Restored ${files} files, ${sayBytes(bytes)}, as they were on ${at}, to`);
  console.log(`  ${workshop}`);
  for (const name of leftOut) console.log(`  damaged in the backup, left out: ${name}`);
  if (audit.findings.length === 0) console.log("An audit of it found nothing.");
  printFindings(audit.findings);
}
