import type { Finding } from "#lib/finding/index.ts";
import { MigrationError, missingMigrations } from "../sqlite/migrate.ts";
import { brokenReferences, integrityTroubles, type Reading, strangeParts } from "../sqlite/read.ts";
import { type Look, said } from "./look.ts";

const searchTable = /FTS5 table main\.search_words/;

/** Whether the database file is whole, by SQLite's own word. Damage to the search table alone can be mended. */
export function checkWhole(database: Reading): Finding[] {
  const troubles = [...integrityTroubles(database), ...strangeParts(database)];
  const search = troubles.filter((line) => searchTable.test(line));
  const damage = troubles.filter((line) => !searchTable.test(line));
  const source = "SQLite, PRAGMA integrity_check";
  const findings: Finding[] = [];
  if (damage.length > 0) {
    findings.push(
      said({
        rule: "database-damaged",
        severity: "wrong",
        where: "workshop.db",
        evidence: damage.join("\n"),
        found: `The database is damaged: ${damage.slice(0, 3).join("; ").slice(0, 500)}.`,
        expected: "A database that SQLite reads through without a fault.",
        todo: "Stop the program. Keep workshop.db and workshop.db-wal as they are, and restore the latest backup into an empty folder. See whether the drive has faults.",
        source,
      }),
    );
  }
  if (search.length > 0) {
    findings.push(
      said({
        rule: "search-damaged",
        severity: "wrong",
        where: "search_words",
        evidence: search.join("\n"),
        found: "The table that finds words is damaged; the marks themselves are whole.",
        expected: "A search table that SQLite reads through without a fault.",
        todo: "Run audit with --rebuild: it is made anew from the marks.",
        source,
      }),
    );
  }
  return findings;
}

/** Rows that name another row which is not there. */
export function checkReferences({ database }: Look): Finding[] {
  return brokenReferences(database).map(({ table, id, parent }) =>
    said({
      rule: "reference-dangling",
      severity: "wrong",
      where: `${table} ${id}`,
      found: `The ${table} ${id} belongs to a ${parent} that is not there.`,
      expected: `The ${parent} that it names.`,
      todo: "Keep the workshop as it is, and look for that record in the latest backup.",
      source: "SQLite, PRAGMA foreign_key_check",
    }),
  );
}

/** Whether this version of the program knows the form of the database. */
export function checkForm({ database, migrations }: Look): Finding[] {
  try {
    const missing = missingMigrations(database, migrations);
    if (missing.length === 0) return [];
    return [
      said({
        rule: "database-earlier",
        severity: "advice",
        where: "workshop.db",
        found: `The database was written by an earlier version; it lacks ${missing.join(", ")}.`,
        expected: "A database of this version. Its rows were not looked at; its files were.",
        todo: "Start the program once: it keeps a copy and upgrades it. Then audit again.",
      }),
    ];
  } catch (error) {
    if (!(error instanceof MigrationError)) throw error;
    return [
      said({
        rule: "database-later",
        severity: "wrong",
        where: "workshop.db",
        found: error.message,
        expected: "A database of this version of the program or an earlier one.",
        todo: "Use the version that wrote it. Its rows were not looked at; its files were.",
      }),
    ];
  }
}
