/** Backup and restore: a workshop as plain files elsewhere, and back. `docs/backup.md` documents the form. */
export { hiddenOrUnfinished } from "../disk.ts";
export { type Backup, type BackupOptions, backup } from "./backup.ts";
export { type Manifest, manifest, readManifest } from "./manifest.ts";
export { type Restored, type RestoreOptions, restore } from "./restore.ts";
export { type Verified, verifyBackup } from "./verify.ts";
