import { open, sayCount } from "#lib/finding/index.ts";
import { stepsOf } from "#lib/procedure/index.ts";
import { type CliCommand, DONE, onlyOne, readArgs, UsageError, WRONG } from "./usage.ts";

/** A build folder in, its procedure out. */
export const compileCommand: CliCommand = {
  name: "compile",
  usage: `witness compile BUILD_FOLDER --out DIR [--edition page|bench] [--paper a4|letter] [--date YYYY-MM-DD]
  Writes procedure.pdf, procedure.html, procedure.md with its stills, parts.csv and findings.json to DIR.
  Exit code 0: done. 2: the input cannot be read. 3: a finding of severity wrong is unanswered.`,
  run: async (args) => {
    const { values, positionals } = readArgs(args, {
      out: { type: "string" },
      edition: { type: "string", default: "page" },
      paper: { type: "string", default: "a4" },
      date: { type: "string", default: new Date().toISOString().slice(0, 10) },
    });
    const folder = onlyOne(positionals, "One build folder");
    const { out, edition, paper, date } = values;
    if (out === undefined) throw new UsageError("Where to write was expected: --out DIR.");
    if (paper !== "a4" && paper !== "letter")
      throw new UsageError(`The paper is a4 or letter, not “${paper}”.`);
    if (edition !== "page" && edition !== "bench")
      throw new UsageError(`The edition is page or bench, not “${edition}”.`);
    if (!/^\d{4}-\d\d-\d\d$/.test(date)) throw new UsageError(`The date is YYYY-MM-DD, not “${date}”.`);
    // Brought in only here: other commands begin sooner without the printing press.
    const { compileFolder } = await import("../compile-folder.ts");
    const compiled = await compileFolder(folder, out, { edition, paper, printedOn: date });
    const { procedure, findings } = compiled.checked;
    console.log(`${procedure.title}: ${stepsOf(procedure).length} steps, ${procedure.parts.length} parts.`);
    console.log(`Findings: ${sayCount(findings)}.`);
    for (const one of open(findings)) console.log(`  ${one.severity}: ${one.found}`);
    for (const loss of compiled.losses) console.log(`  not carried: ${loss}`);
    console.log(`Wrote ${compiled.files.length} files to ${out}.`);
    return compiled.wrong > 0 ? WRONG : DONE;
  },
};
