import type { CheckedProcedure } from "#lib/procedure/tree.ts";
import { toAnnotations } from "../annotations/index.ts";
import { canonicalJson } from "../canonical-json.ts";
import { toChapters } from "../film/index.ts";
import { toHowTo } from "../howto/index.ts";
import { toHtml } from "../html/index.ts";
import { toMarkdown } from "../markdown/index.ts";
import { toMeasurementsCsv } from "../measurements/index.ts";
import { toOtio } from "../otio/index.ts";
import { type Output, type OutputFile, type PublishOptions, textFile } from "../output.ts";
import { toPartsCsv } from "../parts/index.ts";
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
    await toHtml(checked, options),
    await toMarkdown(checked, options),
    await toPartsCsv(checked, options),
    await toMeasurementsCsv(checked, options),
    await toChapters(checked),
    await toHowTo(checked, options),
    await toAnnotations(checked, options),
    await toOtio(checked, options),
  ];
  const findings = textFile("findings.json", `${canonicalJson(checked.findings)}\n`);
  // Stills lie beside more than one output: under one name there is one file.
  const files = new Map([...outputs.flatMap((one) => one.files), findings].map((file) => [file.name, file]));
  return {
    files: [...files.values()],
    losses: [...new Set(outputs.flatMap((one) => one.losses))],
  };
}

/** An output of one file, under another name. */
function named(name: string, output: Output): Output {
  return { ...output, files: output.files.map((file): OutputFile => ({ ...file, name })) };
}
