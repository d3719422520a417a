import type { CheckedProcedure } from "#lib/procedure/tree.ts";
import { toAnnotations } from "./annotations/index.ts";
import { toCaptions, toChapters } from "./film/index.ts";
import { toHowTo } from "./howto/index.ts";
import { toHtml } from "./html/index.ts";
import { toMarkdown } from "./markdown/index.ts";
import { toMeasurementsCsv } from "./measurements/index.ts";
import { toOtio } from "./otio/index.ts";
import type { Output, PublishOptions } from "./output.ts";
import { toPartsCsv } from "./parts/index.ts";

/** Every output beside the print, whose paper and edition whoever asks for it chooses. */
export async function everyFormat(checked: CheckedProcedure, options: PublishOptions): Promise<Output[]> {
  return [
    await toHtml(checked, options),
    await toMarkdown(checked, options),
    await toPartsCsv(checked, options),
    await toMeasurementsCsv(checked, options),
    await toHowTo(checked, options),
    await toAnnotations(checked, options),
    await toOtio(checked, options),
    await toChapters(checked),
    await toCaptions(checked, options.captions ?? []),
  ];
}

/** Several outputs as one. Stills lie beside more than one of them: under one name there is one file. */
export function together(outputs: readonly Output[]): Output {
  const files = new Map(outputs.flatMap((one) => one.files).map((file) => [file.name, file]));
  return { files: [...files.values()], losses: [...new Set(outputs.flatMap((one) => one.losses))] };
}
