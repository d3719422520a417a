import Database from "better-sqlite3";
import type { LastBackup } from "../last-backup.ts";

/** Notes in the workshop when it was last backed up. The backup is whole whether or not this can be written. */
export function noteBackup(file: string, made: LastBackup): void {
  const database = new Database(file, { timeout: 10_000 });
  try {
    database
      .prepare(
        "INSERT INTO Setting (name, value) VALUES (?, ?) ON CONFLICT (name) DO UPDATE SET value = excluded.value",
      )
      .run("lastBackup", JSON.stringify(made));
  } catch {
    // A full drive is a reason for a backup elsewhere, and none to call it failed.
  } finally {
    database.close();
  }
}
