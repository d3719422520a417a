import { readFile } from "node:fs/promises";
import type { Root } from "hast";
import { h } from "hastscript";
import rehypeStringify from "rehype-stringify";
import { unified } from "unified";
import type { PictureOfFigure } from "#lib/figure/index.ts";
import type { CheckedProcedure } from "#lib/procedure/tree.ts";
import { type Replaced, replacedSentence, textCleaner } from "../clean.ts";
import { contentHash } from "../content-hash.ts";
import { jpegAddress } from "../figures.ts";
import { type Output, type PublishOptions, textFile } from "../output.ts";
import { projectPath } from "../root.ts";
import { sheetState } from "../state.ts";
import { fetchStills, type PublishedStill } from "../stills.ts";
import { titleOf } from "../words.ts";
import { languageOf, procedureBody } from "./body.ts";
import { keptBlock, readerBar, readerScript } from "./reader.ts";

/** Nothing fetched: pictures inside the file, its own style sheet and its own script are all it may use. */
const policy = (script: string) =>
  `default-src 'none'; img-src data:; style-src 'unsafe-inline'; script-src ${script}`;

/**
 * The procedure as one self-contained file that works offline and on a phone: `procedure.html`. The reader's ticks and
 * own readings persist in it, and a copy can be saved that carries them.
 */
export async function toHtml(checked: CheckedProcedure, options: PublishOptions): Promise<Output> {
  const replaced: Replaced = new Map();
  const stills = await fetchStills(checked.procedure, options);
  const hash = contentHash(checked);
  const script = await readerScript();
  const body = procedureBody(checked, {
    forReader: true,
    state: sheetState(checked, options, hash),
    brief: options.brief,
    replaced,
    history: options.history,
    changedSteps: options.changedSteps,
    notices: options.notices,
    still: ({ still }) => shownStill(stills.found.get(still)),
  });
  const css = await readFile(projectPath("lib", "publish", "html", "procedure.css"), "utf8");
  const page: Root = {
    type: "root",
    children: [
      { type: "doctype" },
      h("html.standalone", { lang: languageOf(checked.procedure), "data-procedure": hash }, [
        h("head", [
          h("meta", { charSet: "utf-8" }),
          h("meta", { httpEquiv: "Content-Security-Policy", content: policy(script.allowed) }),
          h("meta", { name: "viewport", content: "width=device-width, initial-scale=1" }),
          h("meta", { name: "color-scheme", content: "light dark" }),
          h("meta", { name: "referrer", content: "no-referrer" }),
          h("title", textCleaner(new Map())(titleOf(checked.procedure))),
          h("style", css),
        ]),
        h("body", [h("main", [readerBar(), body]), keptBlock(), h("script", script.text)]),
      ]),
    ],
  };
  const lost = replacedSentence(replaced, "U+FFFD", "they have no printed form");
  return {
    files: [textFile("procedure.html", `${unified().use(rehypeStringify).stringify(page)}\n`)],
    losses: [...stills.losses, ...(lost ? [lost] : [])],
  };
}

function shownStill(still: PublishedStill | undefined): PictureOfFigure | null {
  if (!still) return null;
  const { bytes, width, height } = still;
  return { address: jpegAddress(bytes), is: "shown", width, height };
}
