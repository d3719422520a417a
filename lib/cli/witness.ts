import { wordsOf } from "#lib/store/index.ts";
import { commands } from "./commands/index.ts";
import { DONE, UNREADABLE, UsageError } from "./commands/usage.ts";

const USAGE = commands.map((command) => command.usage).join("\n\n");

/** How a command is called; all of them where there is none of that name. */
function usageOf(name = ""): string {
  return commands.find((one) => one.name === name)?.usage ?? USAGE;
}

async function main([name, ...rest]: string[]): Promise<number> {
  if (name === undefined || name === "help" || name === "--help") {
    console.log(USAGE);
    return name === undefined ? UNREADABLE : DONE;
  }
  const command = commands.find((one) => one.name === name);
  if (command && rest.includes("--help")) {
    console.log(command.usage);
    return DONE;
  }
  if (!command) throw new UsageError(`There is no command “${name}”.`);
  return command.run(rest);
}

// Who reads may stop reading (`witness … | head`): that is no fault.
process.stdout.on("error", (error: NodeJS.ErrnoException) => {
  if (error.code !== "EPIPE") throw error;
  process.exit(process.exitCode ?? DONE);
});

const args = process.argv.slice(2);
main(args).then(
  (code) => {
    process.exitCode = code;
  },
  (error: unknown) => {
    const words = wordsOf(error);
    if (words && args.includes("--json")) console.log(JSON.stringify(words));
    else if (words) console.error(Object.values(words).filter(Boolean).join("\n"));
    else if (error instanceof UsageError) console.error(`${error.message}\n\n${usageOf(args[0])}`);
    else console.error(error);
    process.exitCode = UNREADABLE;
  },
);
