import { ToldError, type Words } from "#lib/finding/index.ts";
import { FILE_REPLACED } from "./sqlite/adapter.ts";
import { MigrationError } from "./sqlite/migrate.ts";

/**
 * What a person can be told of an error and do about it: of one that says so itself, and of whatever the disk or the
 * database may answer with. Null for a fault of the program's own, whose words are for who mends it.
 */
export function wordsOf(error: unknown): Words | null {
  if (error instanceof ToldError) {
    const { found, expected, todo } = error;
    return { found, expected, todo };
  }
  if (error instanceof MigrationError) return { found: error.message, expected: "", todo: "" };
  const code = codeOf(error);
  const known = answers.find(([codes]) => codes.test(code));
  if (!known) return null;
  const { path } = error as { path?: unknown };
  const where = typeof path === "string" ? `${path}: ` : "";
  return { ...known[1], found: `${where}${known[1].found} (${code}).` };
}

/** Whether an error comes of the disk or the database, and may be over when it is tried again. */
export function isOfTheDisk(error: unknown): boolean {
  return !(error instanceof ToldError) && wordsOf(error) !== null;
}

/** The code of an error of the system or of SQLite, through whatever it was wrapped in. */
function codeOf(error: unknown): string {
  const { code, cause, meta } = (error ?? {}) as {
    code?: unknown;
    cause?: unknown;
    meta?: { driverAdapterError?: unknown };
  };
  const wrapped = (cause as { originalCode?: unknown } | undefined)?.originalCode;
  if (typeof wrapped === "string") return wrapped;
  if (meta?.driverAdapterError) return codeOf(meta.driverAdapterError);
  return typeof code === "string" ? code : "";
}

const kept = "What was kept before is as it was.";

/** By the result codes of SQLite (sqlite.org, "Result and Error Codes") and the error numbers of POSIX. */
const answers: readonly (readonly [RegExp, Words])[] = [
  [
    /^(SQLITE_FULL|ENOSPC|EDQUOT|EFBIG)/,
    { found: "The drive is full", expected: "Room on the drive.", todo: `Make room and try again. ${kept}` },
  ],
  [
    /^(SQLITE_BUSY|SQLITE_LOCKED)/,
    {
      found: "Another program holds the workshop's database",
      expected: "A database that is free for writing within half a minute.",
      todo: `Close what has workshop.db open, and try again. ${kept}`,
    },
  ],
  [
    /^(SQLITE_READONLY|SQLITE_CANTOPEN|SQLITE_PERM|EACCES|EPERM|EROFS)/,
    {
      found: "It may not be opened or written to",
      expected: "Files and folders that you may write to, on a drive that is not set to reading only.",
      todo: `Mend that, or name another folder. ${kept}`,
    },
  ],
  [
    new RegExp(`^${FILE_REPLACED}$`),
    {
      found: "The workshop's database is not the file that was opened: it was moved, deleted or replaced",
      expected: "The same workshop.db for as long as the program runs.",
      todo: "Put it back where it was, or stop the program and start it again.",
    },
  ],
  [
    /^(SQLITE_CORRUPT|SQLITE_NOTADB)/,
    {
      found: "The database is damaged",
      expected: "A database that SQLite reads through without a fault.",
      todo: "Stop the program, keep the workshop's folder as it is, let “npm run -s witness -- audit” say what it finds, and restore the latest backup into an empty folder.",
    },
  ],
  [
    /^(SQLITE_IOERR|EIO|ENXIO|ENODEV|EBADMSG|ESTALE)/,
    {
      found: "The drive cannot be read or written",
      expected: "A drive that is plugged in and has no faults.",
      todo: `See whether the drive is there, and try again. ${kept}`,
    },
  ],
  [
    /^(ENOENT|ENOTDIR|EISDIR|ENOTEMPTY|EEXIST|ELOOP|ENAMETOOLONG|EINVAL|EXDEV)$/,
    {
      found: "There is no such place, or something else is in it",
      expected: "A file or folder of that name, or none, as what was asked for needs it.",
      todo: "Look at the place in the file manager, and name it again.",
    },
  ],
  [
    /^(EMFILE|ENFILE|ENOMEM)$/,
    {
      found: "The computer has no memory or no open files left for it",
      expected: "Less that runs at once.",
      todo: `Close other programs and try again. ${kept}`,
    },
  ],
];
