import os from "node:os";
import path from "node:path";

/** The folders and files of a workshop: everything that is the restorer's lies in it. */
export interface Workshop {
  folder: string;
  database: string;
  recordings: string;
  stills: string;
  releases: string;
  /** What can be made again: frame tables, copies that play. */
  made: string;
}

/**
 * Where the workshop lies: `WORKSHOP_DIR`, else the user's own data folder by the custom of the system. Never the
 * program's folder, where a clean-up would delete it.
 */
export function workshopFolder(env: NodeJS.ProcessEnv = process.env, platform = process.platform): string {
  if (env.WORKSHOP_DIR) return path.resolve(env.WORKSHOP_DIR);
  const home = os.homedir();
  if (platform === "win32")
    return path.join(env.LOCALAPPDATA ?? path.join(home, "AppData", "Local"), "Witness Mark");
  if (platform === "darwin") return path.join(home, "Library", "Application Support", "Witness Mark");
  return path.join(env.XDG_DATA_HOME || path.join(home, ".local", "share"), "witness-mark");
}

export function workshopAt(folder: string): Workshop {
  return {
    folder,
    database: path.join(folder, "workshop.db"),
    recordings: path.join(folder, "recordings"),
    stills: path.join(folder, "stills"),
    releases: path.join(folder, "releases"),
    made: path.join(folder, "made"),
  };
}
