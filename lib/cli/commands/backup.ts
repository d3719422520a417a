import { sayBytes } from "#lib/media/index.ts";
import { type Backup, backup, hiddenOrUnfinished } from "#lib/store/backup/index.ts";
import {
  codeOf,
  keepingOptions,
  printFindings,
  programRoot,
  progressTeller,
  stopSignal,
  workshopOf,
} from "./keeping.ts";
import { type CliCommand, onlyOne, readArgs, WRONG } from "./usage.ts";

/** The workshop as plain files in a new dated folder. */
export const backupCommand: CliCommand = {
  name: "backup",
  usage: `witness backup DIR [--workshop DIR] [--json]
  Writes the workshop to a new dated folder in DIR, while it is being worked in, and reads it back.
  Exit code 0: done. 2: it cannot be written. 3: done, and the workshop itself lacks something, which is named.`,
  run: async (args) => {
    const { values, positionals } = readArgs(args, keepingOptions);
    const parent = onlyOne(positionals, "The folder that holds backups");
    const made = await backup(workshopOf(values.workshop), parent, {
      programRoot: programRoot(),
      onProgress: progressTeller(),
      signal: stopSignal(),
    });
    if (values.json) console.log(JSON.stringify(made));
    else print(made);
    return made.leftOut.some((one) => one.why !== hiddenOrUnfinished) ? WRONG : codeOf(made.findings);
  },
};

function print(made: Backup): void {
  console.log(
    `Wrote and read back ${made.files} files, ${sayBytes(made.bytes)}, with ${made.builds} build${made.builds === 1 ? "" : "s"}, to`,
  );
  console.log(`  ${made.folder}`);
  console.log("Every hash agrees, and the database is whole.");
  if (made.elsewhere > 0)
    console.log(`Not in it: ${made.elsewhere} films that stay where they lie (manifest.json names them).`);
  for (const { path, why } of made.leftOut) console.log(`  left out: ${path} (${why})`);
  for (const name of made.unfinished) console.log(`  cut short earlier, may be deleted: ${name}`);
  printFindings(made.findings);
}
