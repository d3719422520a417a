import fs from "node:fs";
import path from "node:path";
import Database from "better-sqlite3";

/**
 * Writes a copy of a database as it is at one moment, while others write to it. The copy is one plain file without
 * a write-ahead log, on disk when this returns; the same rows give the same bytes. It holds up its own process for
 * as long as it takes.
 *
 * @param to must not exist yet
 */
export function snapshot(file: string, to: string): void {
  const database = new Database(file, { readonly: true, fileMustExist: true, timeout: 10_000 });
  try {
    database.prepare("VACUUM INTO ?").run(to);
  } finally {
    database.close();
  }
  syncFile(to);
}

/** What a copy leaves that was cut short: itself, and the journal that SQLite kept beside it. */
const unfinished = /^\.before-[0-9a-f-]{36}\.part(-journal)?$/;

/**
 * Puts a copy of a database beside it before an upgrade changes it: `before-<migration>.db`, or the next free
 * number of that name. No copy is ever overwritten; one with the same content is not made twice. Call it while
 * nobody else may write.
 *
 * @returns the path of the copy
 */
export function keepCopyBefore(file: string, migration: string): string {
  const folder = path.dirname(file);
  for (const name of fs.readdirSync(folder)) if (unfinished.test(name)) fs.rmSync(path.join(folder, name));
  const growing = path.join(folder, `.before-${crypto.randomUUID()}.part`);
  try {
    snapshot(file, growing);
    return settle(growing, (number) =>
      path.join(folder, number === 1 ? `before-${migration}.db` : `before-${migration}-${number}.db`),
    );
  } finally {
    fs.rmSync(growing, { force: true });
  }
}

function settle(growing: string, nameOf: (number: number) => string): string {
  for (let number = 1; ; number++) {
    const to = nameOf(number);
    if (!fs.existsSync(to)) {
      fs.renameSync(growing, to);
      syncFolder(path.dirname(to));
      return to;
    }
    if (fs.readFileSync(to).equals(fs.readFileSync(growing))) return to;
  }
}

function syncFile(file: string): void {
  const handle = fs.openSync(file, "r+");
  try {
    fs.fsyncSync(handle);
  } finally {
    fs.closeSync(handle);
  }
}

/** Makes a new name survive a power cut. Windows cannot open a folder, and needs no such step. */
function syncFolder(folder: string): void {
  let handle: number;
  try {
    handle = fs.openSync(folder, "r");
  } catch {
    return;
  }
  try {
    fs.fsyncSync(handle);
  } catch {
    // Some network drives know no such request.
  } finally {
    fs.closeSync(handle);
  }
}
