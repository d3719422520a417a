// `npm run -s witness -- …`: the command line. Standard output carries only what the command says.
import path from "node:path";
import { pathToFileURL } from "node:url";
import { checkNode, generateClient, installPackages, root } from "./prepare.mjs";

checkNode();
installPackages();
generateClient();
process.env.WITNESS_MARK_ROOT = root;
const { register } = await import("tsx/esm/api");
register();
await import(pathToFileURL(path.join(root, "lib/cli/witness.ts")).href);
