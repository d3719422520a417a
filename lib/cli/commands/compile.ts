import { readFileSync } from "node:fs";
import path from "node:path";
import { type Cut, newCut } from "#lib/build/index.ts";
import { readList } from "#lib/cut/index.ts";
import { open, sayCount } from "#lib/finding/index.ts";
import { stepsOf } from "#lib/procedure/index.ts";
import { readRate } from "#lib/time/index.ts";
import { type CliCommand, DONE, onlyOne, readArgs, UsageError, WRONG } from "./usage.ts";

/** A build folder in, its procedure out. */
export const compileCommand: CliCommand = {
  name: "compile",
  usage: `witness compile BUILD_FOLDER --out DIR [--edition page|bench] [--paper a4|letter] [--date YYYY-MM-DD]
                [--cut FILE [--rate R]] [--film ADDRESS]
  Writes procedure.pdf, procedure.html, procedure.md with its stills, parts.csv, measurements.csv, howto.jsonld,
  marks.jsonld, marks.otio, findings.json and, where there is an edited film, chapters.txt and chapters.vtt to DIR.
  --cut is the film's edit list: OpenTimelineIO, or CMX3600 with its rate (25, 29.97, 30000/1001), which that form does
  not say. --film is the film's address, with {seconds} where the second goes, or plain.
  Exit code 0: done. 2: the input cannot be read. 3: a finding of severity wrong is unanswered.`,
  run: async (args) => {
    const { values, positionals } = readArgs(args, {
      out: { type: "string" },
      edition: { type: "string", default: "page" },
      paper: { type: "string", default: "a4" },
      date: { type: "string", default: new Date().toISOString().slice(0, 10) },
      cut: { type: "string" },
      rate: { type: "string" },
      film: { type: "string" },
    });
    const folder = onlyOne(positionals, "One build folder");
    const { out, edition, paper, date } = values;
    if (out === undefined) throw new UsageError("Where to write was expected: --out DIR.");
    if (paper !== "a4" && paper !== "letter")
      throw new UsageError(`The paper is a4 or letter, not “${paper}”.`);
    if (edition !== "page" && edition !== "bench")
      throw new UsageError(`The edition is page or bench, not “${edition}”.`);
    if (!isDay(date)) throw new UsageError(`The date is a day, YYYY-MM-DD, not “${date}”.`);
    const cut = readCutFile(values.cut, values.rate, values.film);
    // Brought in only here: other commands begin sooner without the printing press.
    const { compileFolder } = await import("../compile-folder.ts");
    const compiled = await compileFolder(folder, out, {
      edition,
      paper,
      printedOn: date,
      ...(cut && { cut }),
    });
    const { procedure, findings } = compiled.checked;
    console.log(`${procedure.title}: ${stepsOf(procedure).length} steps, ${procedure.parts.length} parts.`);
    console.log(`Findings: ${sayCount(findings)}.`);
    for (const one of open(findings)) console.log(`  ${one.severity}: ${one.found}`);
    for (const loss of compiled.losses) console.log(`  not carried: ${loss}`);
    console.log(`Wrote ${compiled.files.length} files to ${out}.`);
    return compiled.wrong > 0 ? WRONG : DONE;
  },
};

/** The edit list in a file, as a cut; null where none was named. A list that gives nothing is refused, saying where. */
function readCutFile(file: string | undefined, rate = "", film = ""): Cut | null {
  if (file === undefined) {
    if (rate === "" && film === "") return null;
    throw new UsageError("--rate and --film are about an edit list: --cut FILE was expected with them.");
  }
  const text = textOf(file);
  const form = /^\uFEFF?\s*\{/.test(text) ? "otio" : "cmx3600";
  if (form === "cmx3600" && readRate(rate) === null)
    throw new UsageError(
      `${file} is read as a CMX3600 list, which does not say its rate. --rate R was expected: 25, 29.97, 23.976, 30000/1001${rate === "" ? "" : `; not “${rate}”`}.`,
    );
  const name = path.parse(file).name;
  const cut = newCut({
    id: "cut",
    buildId: "",
    form,
    name,
    text,
    rate: form === "otio" ? "" : rate,
    publishedAt: film,
  });
  const { segments, problems } = readList(cut);
  const [problem] = problems;
  if (segments.length === 0)
    throw new UsageError(
      `${file} shows no picture of any film${problem ? `. ${problem.where}: ${problem.found} ${problem.expected} ${problem.todo}` : "."}`,
    );
  return cut;
}

/** Whether a text is a day of the calendar, written as ISO 8601 has it. */
function isDay(text: string): boolean {
  const at = new Date(`${text}T00:00:00Z`);
  return /^\d{4}-\d\d-\d\d$/.test(text) && !Number.isNaN(at.valueOf()) && at.toISOString().startsWith(text);
}

function textOf(file: string): string {
  try {
    return readFileSync(file, "utf8");
  } catch (error) {
    throw new UsageError(`${file} cannot be read (${error instanceof Error ? error.message : error}).`);
  }
}
