import { readFile } from "node:fs/promises";
import { join } from "node:path";
import type { CheckedProcedure } from "#lib/procedure/tree.ts";
import { cleanTree, type Replaced, replacedSentence } from "../clean.ts";
import { contentHash } from "../content-hash.ts";
import type { Output, PublishOptions } from "../output.ts";
import { projectPath, projectRoot } from "../root.ts";
import { sheetState } from "../state.ts";
import { fetchStills, type Stills } from "../stills.ts";
import { allSteps } from "../words.ts";
import { printCoverage } from "./coverage.ts";
import { pictureName } from "./figure.ts";
import { fontFiles } from "./fonts.ts";
import type { PrintOrder } from "./order.ts";
import { print } from "./print.ts";
import { missingSign, printCleaner } from "./printable.ts";
import { qrCode } from "./qr.ts";
import { printSheet } from "./sheet.ts";

/** A print, and the standard it keeps. */
export interface PdfOutput extends Output {
  standard: "ua-1" | "tagged-1.7";
}

const sources = [
  "procedure.typ",
  "page.typ",
  "pieces.typ",
  "front.typ",
  "pictures.typ",
  "rows.typ",
  "step.typ",
  "pages.typ",
  "readings.typ",
  "lists.typ",
];

/**
 * The procedure as a print for the bench: `procedure.pdf`, tagged, PDF/UA-1 where its text allows it. Throws
 * an error that says what to do where it cannot be set.
 */
export async function toPdf(checked: CheckedProcedure, options: PublishOptions): Promise<PdfOutput> {
  const replaced: Replaced = new Map();
  const clean = printCleaner(printCoverage(), replaced);
  const procedure = cleanTree(checked.procedure, clean);
  const stills = await fetchStills(procedure, options);
  const sheet = {
    ...printSheet(procedure, cleanTree(sheetState(checked, options, contentHash(checked)), clean), {
      paper: options.paper ?? "a4",
      edition: options.edition,
      brief: cleanTree(options.brief ?? [], clean),
      stills: stills.found,
      history: options.history && cleanTree(options.history, clean),
      changedSteps: options.changedSteps,
    }),
    date: dateParts(options.release?.date ?? options.printedOn),
  };
  const result = await print(await order(sheet, stills.found));
  const lost = replacedSentence(replaced, missingSign, "the printed fonts have no sign for it");
  return {
    files: [{ name: "procedure.pdf", bytes: new Uint8Array(result.pdf) }],
    standard: result.standard,
    losses: [
      ...stills.losses,
      ...(lost ? [lost] : []),
      ...result.notes,
      ...longAddresses(checked),
      ...crowded(sheet),
      ...(result.why ? [`The PDF is tagged, but not PDF/UA-1: ${result.why}.`] : []),
    ],
  };
}

async function order(sheet: unknown, stills: Stills["found"]): Promise<PrintOrder> {
  const folder = projectPath("lib", "publish", "pdf", "template");
  const { words, readings, signs } = fontFiles();
  return {
    workspace: join(projectRoot(), "no-such-folder"),
    main: "procedure.typ",
    sources: await Promise.all(
      sources.map(async (name) => ({ name, text: await readFile(join(folder, name), "utf8") })),
    ),
    data: [
      { name: "sheet.json", bytes: new TextEncoder().encode(JSON.stringify(sheet)) },
      ...pictures(stills),
    ],
    fonts: [...words, ...readings, ...signs],
  };
}

/** The pictures of a print, each once. */
function pictures(stills: Stills["found"]): PrintOrder["data"] {
  const files = new Map([...stills.values()].map((still) => [pictureName(still), still.bytes]));
  return [...files].map(([name, bytes]) => ({ name, bytes }));
}

/** Pictures with more balloons than room for them: their numbers are smaller than the words beside them. */
function crowded({ stages }: Pick<ReturnType<typeof printSheet>, "stages">): string[] {
  return stages
    .flatMap(({ steps }) => steps)
    .filter(
      ({ pictures: [first, ...others] }) => first?.first[0]?.small || others.some(({ pair }) => pair.small),
    )
    .map(
      ({ number }) =>
        `Step ${number}: a picture has more balloons than room for them, so that their numbers are small. Show less of it, or make two views.`,
    );
}

/** Addresses that are too long for a code: the written time stands without one. */
function longAddresses({ procedure }: CheckedProcedure): string[] {
  return allSteps(procedure)
    .filter(({ moment }) => moment?.link && qrCode(moment.link) === null)
    .map(
      ({ number }) => `Step ${number}: the film's address is too long for a QR code; its time is written.`,
    );
}

function dateParts(iso: string): number[] | null {
  const date = new Date(iso);
  if (Number.isNaN(date.getTime())) return null;
  return [date.getUTCFullYear(), date.getUTCMonth() + 1, date.getUTCDate()];
}
