import { otherSystem, quantitiesOf, questionsOf, read, readerVersion, say } from "#lib/quantity/index.ts";
import { type CliCommand, DONE, readArgs, UsageError } from "./usage.ts";

/** How a text is read as a quantity. */
export const quantityCommand: CliCommand = {
  name: "quantity",
  usage: `witness quantity TEXT [--decimal .|,] [--region GB|US|metric]
  Prints how a text is read, as one JSON value: {text, reading, said, other, questions, reader}.
  Exit code 0: done, whatever was read. 2: no text was given.`,
  run: async (args) => {
    const { values, positionals } = readArgs(optionsFirst(args), {
      decimal: { type: "string" },
      region: { type: "string" },
    });
    const text = positionals.join(" ");
    if (text === "") throw new UsageError("A text to read was expected.");
    const { decimal, region } = values;
    if (decimal !== undefined && decimal !== "." && decimal !== ",")
      throw new UsageError(`The decimal sign is . or , and not “${decimal}”.`);
    if (region !== undefined && region !== "GB" && region !== "US" && region !== "metric")
      throw new UsageError(`The region is GB, US or metric, and not “${region}”.`);
    const reading = read(text, { ...(decimal && { decimal }), ...(region && { region }) });
    const questions = questionsOf(reading).map((one) => ({
      ask: one.ask,
      candidates: one.candidates.map((each) => say(each)),
    }));
    console.log(
      JSON.stringify(
        {
          text,
          said: say(reading),
          other: quantitiesOf(reading).map((one) => otherSystem(one)),
          questions,
          reading,
          reader: readerVersion,
        },
        null,
        1,
      ),
    );
    return DONE;
  },
};

/** "-0.5 mm" is a text and no option. */
function optionsFirst(args: string[]): string[] {
  const options: string[] = [];
  const rest: string[] = [];
  for (let i = 0; i < args.length; i++) {
    const arg = args[i] ?? "";
    if (/^--(?:decimal|region)=/.test(arg)) options.push(arg);
    else if (/^--(?:decimal|region)$/.test(arg)) options.push(arg, args[++i] ?? "");
    else if (arg !== "--") rest.push(arg);
  }
  return [...options, "--", ...rest];
}
