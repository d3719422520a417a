import type { CheckedProcedure } from "#lib/procedure/tree.ts";
import { canonicalJson } from "../canonical-json.ts";
import { everyFormat, together } from "../every.ts";
import { type Output, type OutputFile, type PublishOptions, textFile } from "../output.ts";
import { toPdf } from "../pdf/index.ts";

/**
 * Every file that a release is published as. The same procedure and options give the same bytes, on any day and in
 * any time zone: nothing here looks at a clock.
 */
export async function releaseOutputs(
  checked: CheckedProcedure,
  options: PublishOptions & Required<Pick<PublishOptions, "release">>,
): Promise<Output> {
  const outputs = [
    named("procedure-a4.pdf", await toPdf(checked, { ...options, paper: "a4" })),
    named("procedure-letter.pdf", await toPdf(checked, { ...options, paper: "letter" })),
    named("bench-a4.pdf", await toPdf(checked, { ...options, paper: "a4", edition: "bench" })),
    named("bench-letter.pdf", await toPdf(checked, { ...options, paper: "letter", edition: "bench" })),
    ...(await everyFormat(checked, options)),
  ];
  const findings = textFile("findings.json", `${canonicalJson(checked.findings)}\n`);
  return together([...outputs, { files: [findings], losses: [] }]);
}

/** An output of one file, under another name. */
function named(name: string, output: Output): Output {
  return { ...output, files: output.files.map((file): OutputFile => ({ ...file, name })) };
}
