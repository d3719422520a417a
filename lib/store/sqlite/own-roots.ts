import path from "node:path";
import Database from "better-sqlite3";

/**
 * Points the workshop's own folders to where they lie now: a workshop that was moved, copied or restored on another
 * computer finds its recordings again. An own folder is known by the last step of its path, whatever system wrote it.
 *
 * @param folders the workshop's own folders, as whole paths
 */
export function settleOwnRoots(file: string, folders: readonly string[]): void {
  const database = new Database(file, { timeout: 10_000 });
  try {
    const rows = database.prepare("SELECT id, path FROM Root WHERE own = 1").all() as Root[];
    const moved = rows.flatMap((row) => {
      const now = folders.find((folder) => path.basename(folder) === lastStep(row.path));
      return now === undefined || now === row.path ? [] : [{ ...row, now }];
    });
    const turn = database.transaction(() => {
      for (const root of moved) move(database, root);
    });
    if (moved.length > 0) turn.immediate();
  } finally {
    database.close();
  }
}

interface Root {
  id: string;
  path: string;
}

function move(database: Database.Database, { id, now }: Root & { now: string }): void {
  const there = database.prepare("SELECT id FROM Root WHERE path = ?").get(now) as Root | undefined;
  if (!there) {
    database.prepare("UPDATE Root SET path = ? WHERE id = ?").run(now, id);
    return;
  }
  // The folder is known already by its new path: one root remains, with the places of both. A place that both
  // have stays as it is, and its root with it.
  database.prepare("UPDATE OR IGNORE Place SET rootId = ? WHERE rootId = ?").run(there.id, id);
  database
    .prepare("DELETE FROM Root WHERE id = ? AND NOT EXISTS (SELECT 1 FROM Place WHERE rootId = Root.id)")
    .run(id);
}

function lastStep(folder: string): string {
  return folder.split(/[/\\]/).filter(Boolean).at(-1) ?? "";
}
