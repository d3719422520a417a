import fs from "node:fs/promises";
import type { IncomingMessage, ServerResponse } from "node:http";
import { check } from "#lib/check/index.ts";
import { diskName } from "#lib/media/index.ts";
import { compile } from "#lib/procedure/index.ts";
import {
  historyOf,
  type Output,
  type PublishOptions,
  printedBrief,
  recordingCues,
  toAnnotations,
  toCaptions,
  toChapters,
  toHowTo,
  toHtml,
  toMarkdown,
  toMeasurementsCsv,
  toOtio,
  toPartsCsv,
  toPdf,
} from "#lib/publish/index.ts";
import { bookOf, loadBook, loadBuild, type OpenWorkshop } from "#lib/store/index.ts";
import { answer } from "./answer.ts";
import { stillPath } from "./stills.ts";

type Maker = (checked: ReturnType<typeof check>, options: PublishOptions) => Promise<Output>;

interface Format {
  make: Maker;
  type: string;
  ending: string;
  /** Which of the output's files it is; the first unless told. */
  file?: string;
}

const jsonLd = "application/ld+json";
const makers: Record<string, Format> = {
  pdf: { make: toPdf, type: "application/pdf", ending: "pdf" },
  html: { make: toHtml, type: "text/html; charset=utf-8", ending: "html" },
  markdown: { make: toMarkdown, type: "text/markdown; charset=utf-8", ending: "md" },
  parts: { make: toPartsCsv, type: "text/csv; charset=utf-8", ending: "csv" },
  measurements: { make: toMeasurementsCsv, type: "text/csv; charset=utf-8", ending: "measurements.csv" },
  howto: { make: toHowTo, type: jsonLd, ending: "howto.jsonld" },
  annotations: { make: toAnnotations, type: jsonLd, ending: "marks.jsonld" },
  otio: { make: toOtio, type: "application/json", ending: "otio" },
  chapters: { make: toChapters, type: "text/plain; charset=utf-8", ending: "txt", file: "chapters.txt" },
  captions: {
    make: (checked, { captions = [] }) => toCaptions(checked, captions),
    type: "text/vtt; charset=utf-8",
    ending: "captions.vtt",
  },
  "chapters-vtt": { make: toChapters, type: "text/vtt; charset=utf-8", ending: "vtt", file: "chapters.vtt" },
};

/**
 * A procedure as a file to keep: /print/BUILD/ and the name of a format. Asked what is `left-out`, instead of the file
 * what it cannot carry, in sentences.
 */
export async function printDoor(
  opened: OpenWorkshop,
  req: IncomingMessage,
  res: ServerResponse,
  { build, format }: { build: string; format: string },
): Promise<void> {
  const url = new URL(req.url ?? "/", "http://localhost");
  const maker = Object.hasOwn(makers, format) ? makers[format] : undefined;
  const document = maker && (await loadBuild(opened.client, build));
  if (!maker || !document) {
    answer(res, 404, { found: "There is no such sheet.", expected: "", todo: "" });
    return;
  }
  const checked = check(compile(document), document);
  const printedOn = new Date().toISOString().slice(0, 10);
  const book = bookOf(await loadBook(opened.client), document);
  const output = await maker.make(checked, {
    brief: printedBrief(book, document, printedOn),
    stills: async (sha256) => fs.readFile(stillPath(opened.workshop, sha256)).catch(() => null),
    history: historyOf(document, checked.procedure),
    captions: recordingCues(document),
    pictures: "inside",
    printedOn,
    edition: url.searchParams.get("edition") === "bench" ? "bench" : "page",
    paper: url.searchParams.get("paper") === "letter" ? "letter" : "a4",
  });
  if (url.searchParams.has("left-out")) answer(res, 200, { sentences: leftOut(output, maker) });
  else send(res, output, maker, diskName(document.build.title));
}

/** What one file of an output cannot carry: what its format has no place for, and pictures that lie beside it. */
function leftOut({ files, losses }: Output, { file: wanted }: Format): string[] {
  const pictures = files.filter(({ name }) => name.startsWith("stills/")).length;
  if (wanted !== undefined || pictures === 0) return losses;
  return [
    ...losses,
    `${pictures} ${pictures === 1 ? "picture lies" : "pictures lie"} beside this file and ${pictures === 1 ? "does" : "do"} not come with it: the command \`witness compile\` and a release write both.`,
  ];
}

function send(res: ServerResponse, output: Output, format: Format, title: string): void {
  const { type, ending, file: wanted } = format;
  const file = wanted === undefined ? output.files[0] : output.files.find(({ name }) => name === wanted);
  if (!file) {
    const todo = "Look at the film's sheet.";
    answer(res, 404, {
      found: output.losses.join(" ") || "It needs an edited film, and captions of its recordings.",
      expected: `${wanted ?? "A file"} of this procedure.`,
      todo,
    });
    return;
  }
  const name = `${title}.${ending}`;
  const plain = name.replace(/[^\x20-\x7e]|["\\]/g, "_");
  res.writeHead(200, {
    "content-type": type,
    "content-length": file.bytes.length,
    "content-disposition": `attachment; filename="${plain}"; filename*=UTF-8''${encodeURIComponent(name)}`,
    "cache-control": "no-store",
    // Said in words to who asks for it by program; the page says it beside the findings.
    "x-not-carried": encodeURIComponent(JSON.stringify(leftOut(output, format))).slice(0, 4000),
  });
  res.end(file.bytes);
}
