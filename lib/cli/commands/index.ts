/** The commands of the command line, in the order of its help. */
import { auditCommand } from "./audit.ts";
import { backupCommand } from "./backup.ts";
import { checkCommand } from "./check.ts";
import { compileCommand } from "./compile.ts";
import { draftCommand } from "./draft.ts";
import { quantityCommand } from "./quantity.ts";
import { restoreCommand } from "./restore.ts";
import type { CliCommand } from "./usage.ts";

export const commands: readonly CliCommand[] = [
  compileCommand,
  checkCommand,
  draftCommand,
  quantityCommand,
  backupCommand,
  restoreCommand,
  auditCommand,
];
