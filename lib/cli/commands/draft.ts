import fs from "node:fs/promises";
import { draft, readCaptions, toPlainMarks } from "#lib/captions/index.ts";
import { type CliCommand, DONE, onlyOne, readArgs, UNREADABLE, UsageError } from "./usage.ts";

/** The largest caption file that is read: ten hours of captions are about one megabyte. */
const mostBytes = 64 * 1024 * 1024;

/** A caption file in, the marks it proposes out. */
export const draftCommand: CliCommand = {
  name: "draft",
  usage: `witness draft CAPTIONS [--english gb|us]
  Prints {"marks": […]}: the marks that the captions propose, with their seconds, words, fields and reasons.
  CAPTIONS is WebVTT, SRT or plain timed text. What could not be read is told on standard error, with its line.
  Exit code 0: done. 2: the file cannot be read, or holds no captions.`,
  run: async (args) => {
    const { values, positionals } = readArgs(args, { english: { type: "string" } });
    const file = onlyOne(positionals, "One caption file");
    const english = values.english?.toUpperCase();
    if (english !== undefined && english !== "GB" && english !== "US")
      throw new UsageError(`The English is gb or us, not “${values.english}”.`);
    const bytes = await bytesOf(file);
    if (bytes === null) return UNREADABLE;
    const { cues, problems } = readCaptions(bytes);
    for (const { line, found, expected, todo } of problems)
      console.error(`${file}, line ${line}: ${found} ${expected} ${todo}`);
    if (cues.length === 0) return UNREADABLE;
    console.log(JSON.stringify({ marks: toPlainMarks(draft(cues, english ? { english } : {})) }));
    return DONE;
  },
};

async function bytesOf(file: string): Promise<Uint8Array | null> {
  try {
    const { size } = await fs.stat(file);
    if (size <= mostBytes) return await fs.readFile(file);
    console.error(
      `${file} has ${size} bytes.\nA caption file of at most ${mostBytes} was expected.\nIs it the film itself?`,
    );
  } catch (error) {
    const why = error instanceof Error ? error.message : String(error);
    console.error(
      `${file} cannot be read: ${why}\nA caption file was expected.\nLook whether its name is right.`,
    );
  }
  return null;
}
