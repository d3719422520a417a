import { migrate } from "#lib/store/sqlite/migrate.ts";
import type { Tell } from "../child.ts";

/** Upgrades a database. */
export async function work(
  { file, migrations }: { file: string; migrations: string },
  tell: Tell,
): Promise<void> {
  tell(migrate(file, migrations));
}
